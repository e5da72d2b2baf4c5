import type { BoxTree } from './box-tree.ts';

/** Two discs of one radius (mm), which may be the same, and the rings (least and greatest distance from the tree's place) they fill together. */
export interface Discs {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly radius: number;
  readonly least: number;
  readonly most: number;
}

/** Calls `visit` with the number of every box that reaches into both discs, until it returns true. Tells whether it did. */
export function searchDiscs(tree: BoxTree, discs: Discs, visit: (item: number) => boolean): boolean {
  const { count, children, stops } = tree;
  if (count === 0) return false;
  const stack: number[] = [children.length - 1];
  while (stack.length > 0) {
    const node = stack.pop()!;
    if (node < count) {
      if (reachesInto(tree, node, discs) && visit(children[node]!)) return true;
      continue;
    }
    const last = stops[node - count]!;
    for (let i = children[node]!; i < last; i++) {
      if (!reachesInto(tree, i, discs)) continue;
      if (i >= count) stack.push(i);
      else if (visit(children[i]!)) return true;
    }
  }
  return false;
}

function reachesInto({ boxes, rings }: BoxTree, i: number, discs: Discs): boolean {
  if (rings.length > 0 && (rings[2 * i]! > discs.most || rings[2 * i + 1]! < discs.least)) return false;
  const at = 4 * i;
  const minX = boxes[at]!;
  const minY = boxes[at + 1]!;
  const maxX = boxes[at + 2]!;
  const maxY = boxes[at + 3]!;
  const square = discs.radius * discs.radius;
  const dx = Math.max(0, minX - discs.x0, discs.x0 - maxX);
  const dy = Math.max(0, minY - discs.y0, discs.y0 - maxY);
  if (dx * dx + dy * dy >= square) return false;
  const ex = Math.max(0, minX - discs.x1, discs.x1 - maxX);
  const ey = Math.max(0, minY - discs.y1, discs.y1 - maxY);
  return ex * ex + ey * ey < square;
}
