import { markLists, reals, releaseLists, unfilled } from '../memory/lists.ts';
import { zOrder } from './z-order.ts';

/**
 * A packed tree of upright boxes: sixteen to a node, nodes of one level side by side, leaves first. Small sets keep
 * the order in which they come (edges of a loop lie near their neighbours); large ones are ordered along a
 * Z-order curve through their middles, so that spirals and scattered loops stay apart in the tree too.
 *
 * Boxes of long edges that wind round one place all lie upon each other. Where `rings` are given (the least and greatest distance of each
 * item from one place that all share), a search may ask for those as well.
 */
export interface BoxTree {
  /** Number of boxes. */
  readonly count: number;
  /** minX, minY, maxX, maxY of every node, level by level. */
  readonly boxes: Float64Array;
  /** Least and greatest distance from the shared place of every node; empty without rings. */
  readonly rings: Float64Array;
  /** Leaves: number of the box. Nodes above: place of the first child in this order. */
  readonly children: Int32Array;
  /** Place after the last child of each node above the leaves, counted from the first such node. */
  readonly stops: Int32Array;
}

const NODE_SIZE = 8;
const ORDER_FROM = 256;
const NO_RINGS: readonly number[] = [];

/** Tree over `count` boxes given as minX, minY, maxX, maxY one after another. */
export function buildBoxTree(items: ArrayLike<number>, count: number): BoxTree {
  return treeOf(
    items,
    count,
    NO_RINGS,
    (size) => new Float64Array(size),
    (size) => new Int32Array(size),
  );
}

/** The same in memory that is used again, good until it is released, and with rings given likewise where there are any. */
export function buildPassingTree(
  items: ArrayLike<number>,
  count: number,
  itemRings: ArrayLike<number> = NO_RINGS,
): BoxTree {
  return treeOf(items, count, itemRings, reals, unfilled);
}

function treeOf(
  items: ArrayLike<number>,
  count: number,
  itemRings: ArrayLike<number>,
  realList: (size: number) => Float64Array,
  wholeList: (size: number) => Int32Array,
): BoxTree {
  let total = count;
  const levelEnds = [count];
  for (let size = count; size > 1; ) {
    size = Math.ceil(size / NODE_SIZE);
    total += size;
    levelEnds.push(total);
  }
  const boxes = realList(total * 4);
  const children = wholeList(total);
  const stops = wholeList(total - count);
  const ringed = itemRings.length > 0;
  const rings = realList(ringed ? total * 2 : 0);
  const mark = markLists();
  const order = count >= ORDER_FROM ? zOrder(items, count) : undefined;
  for (let i = 0; i < count; i++) {
    const item = order === undefined ? i : order[i]!;
    children[i] = item;
    boxes[4 * i] = items[4 * item]!;
    boxes[4 * i + 1] = items[4 * item + 1]!;
    boxes[4 * i + 2] = items[4 * item + 2]!;
    boxes[4 * i + 3] = items[4 * item + 3]!;
    if (!ringed) continue;
    rings[2 * i] = itemRings[2 * item]!;
    rings[2 * i + 1] = itemRings[2 * item + 1]!;
  }
  releaseLists(mark);
  let from = 0;
  let place = count;
  for (const end of levelEnds) {
    if (place >= total) break;
    for (; from < end; from += NODE_SIZE, place++) {
      let minX = Infinity;
      let minY = Infinity;
      let maxX = -Infinity;
      let maxY = -Infinity;
      const stop = Math.min(from + NODE_SIZE, end);
      for (let i = 4 * from; i < 4 * stop; i += 4) {
        if (boxes[i]! < minX) minX = boxes[i]!;
        if (boxes[i + 1]! < minY) minY = boxes[i + 1]!;
        if (boxes[i + 2]! > maxX) maxX = boxes[i + 2]!;
        if (boxes[i + 3]! > maxY) maxY = boxes[i + 3]!;
      }
      boxes[4 * place] = minX;
      boxes[4 * place + 1] = minY;
      boxes[4 * place + 2] = maxX;
      boxes[4 * place + 3] = maxY;
      children[place] = from;
      stops[place - count] = stop;
      if (ringed) joinRings(rings, from, stop, place);
    }
    from = end;
  }
  return { count, boxes, rings, children, stops };
}

function joinRings(rings: Float64Array, from: number, stop: number, place: number): void {
  let least = Infinity;
  let most = -Infinity;
  for (let i = 2 * from; i < 2 * stop; i += 2) {
    if (rings[i]! < least) least = rings[i]!;
    if (rings[i + 1]! > most) most = rings[i + 1]!;
  }
  rings[2 * place] = least;
  rings[2 * place + 1] = most;
}

/**
 * Calls `visit` with the number of every box that touches the given one, until it returns true.
 * Tells whether it did. With rings, only those that reach from `least` to `most` (mm) or into it.
 */
export function searchBoxTree(
  tree: BoxTree,
  minX: number,
  minY: number,
  maxX: number,
  maxY: number,
  visit: (item: number) => boolean,
  least = Number.NEGATIVE_INFINITY,
  most = Number.POSITIVE_INFINITY,
): boolean {
  const { boxes, rings, children, stops, count } = tree;
  const ringed = rings.length > 0;
  if (count === 0) return false;
  const stack: number[] = [children.length - 1];
  while (stack.length > 0) {
    const node = stack.pop()!;
    if (node < count) {
      if (hits(boxes, node, minX, minY, maxX, maxY) && visit(children[node]!)) return true;
      continue;
    }
    const last = stops[node - count]!;
    for (let i = children[node]!; i < last; i++) {
      if (!hits(boxes, i, minX, minY, maxX, maxY)) continue;
      if (ringed && (rings[2 * i]! > most || rings[2 * i + 1]! < least)) continue;
      if (i >= count) stack.push(i);
      else if (visit(children[i]!)) return true;
    }
  }
  return false;
}

function hits(
  boxes: Float64Array,
  i: number,
  minX: number,
  minY: number,
  maxX: number,
  maxY: number,
): boolean {
  const at = 4 * i;
  return boxes[at]! <= maxX && boxes[at + 2]! >= minX && boxes[at + 1]! <= maxY && boxes[at + 3]! >= minY;
}
