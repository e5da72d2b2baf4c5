import type { BoxTree } from './box-tree.ts';

/** How the boxes of a tree are joined with each other. */
export interface Joining {
  /** Boxes (and rings) no further apart than this (mm) touch. */
  readonly margin: number;
  /** Called with the numbers of every two boxes that touch, each pair once. */
  readonly visit: (item: number, other: number) => void;
  /** May the boxes at these places in the tree, up to eight, be left out of account when every one says so of both sides? */
  readonly isDone: (item: number) => boolean;
}

/**
 * Finds every two boxes of a tree that touch by going down from pairs of nodes that touch: what lies apart is told apart at once for
 * all that is in it, and the way down is not gone again for every box.
 */
export function joinTree(tree: BoxTree, how: Joining): void {
  if (tree.count > 1) joinWithin(tree, how, tree.children.length - 1);
}

/** Joins the boxes below one node. */
function joinWithin(tree: BoxTree, how: Joining, node: number): void {
  const { count, children, stops } = tree;
  const first = children[node]!;
  const stop = stops[node - count]!;
  const isLowest = first < count;
  for (let i = first; i < stop; i++) {
    if (!isLowest) joinWithin(tree, how, i);
    for (let j = i + 1; j < stop; j++) {
      if (!touch(tree, i, j, how.margin)) continue;
      if (isLowest) how.visit(children[i]!, children[j]!);
      else joinBetween(tree, how, i, j);
    }
  }
}

/** Joins the boxes below one node with those below another of the same level that it touches. */
function joinBetween(tree: BoxTree, how: Joining, a: number, b: number): void {
  const { count, children, stops, boxes } = tree;
  const first = children[a]!;
  const stop = stops[a - count]!;
  const from = children[b]!;
  const to = stops[b - count]!;
  const isLowest = first < count;
  if (isLowest && areDone(tree, how, first, stop) && areDone(tree, how, from, to)) return;
  const { margin } = how;
  for (let i = first; i < stop; i++) {
    if (!touch(tree, i, b, margin)) continue;
    const minX = boxes[4 * i]! - margin;
    const minY = boxes[4 * i + 1]! - margin;
    const maxX = boxes[4 * i + 2]! + margin;
    const maxY = boxes[4 * i + 3]! + margin;
    for (let j = from, at = 4 * from; j < to; j++, at += 4) {
      if (boxes[at]! > maxX || boxes[at + 2]! < minX || boxes[at + 1]! > maxY || boxes[at + 3]! < minY)
        continue;
      if (!ringsTouch(tree, i, j, margin)) continue;
      if (isLowest) how.visit(children[i]!, children[j]!);
      else joinBetween(tree, how, i, j);
    }
  }
}

function areDone({ children }: BoxTree, { isDone }: Joining, from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (!isDone(children[i]!)) return false;
  return true;
}

function touch(tree: BoxTree, i: number, j: number, margin: number): boolean {
  const { boxes } = tree;
  const p = 4 * i;
  const q = 4 * j;
  return (
    boxes[q]! <= boxes[p + 2]! + margin &&
    boxes[q + 2]! >= boxes[p]! - margin &&
    boxes[q + 1]! <= boxes[p + 3]! + margin &&
    boxes[q + 3]! >= boxes[p + 1]! - margin &&
    ringsTouch(tree, i, j, margin)
  );
}

function ringsTouch({ rings }: BoxTree, i: number, j: number, margin: number): boolean {
  if (rings.length === 0) return true;
  return rings[2 * i]! <= rings[2 * j + 1]! + margin && rings[2 * i + 1]! >= rings[2 * j]! - margin;
}
