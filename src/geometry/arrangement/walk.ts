import type { BoxTree } from '../index-tree/box-tree.ts';
import { zOrder } from '../index-tree/z-order.ts';
import { markLists, reals, releaseLists } from '../memory/lists.ts';

/**
 * Going from place to place along upright and level ways, and telling every wall passed. Where closed chains of walls wind so and so often round
 * one place, they wind round the next as often as the walls passed on the way say: no ray has to be followed to where all ends, and places visited in
 * an order in which neighbours follow each other cost little more than what lies between them.
 *
 * A way is crossed by a wall when rays from its two ends in its own direction are crossed differently (see `ray.ts`): what lies beyond both ends
 * cancels, and corners of chains count as they do for rays.
 */
export interface Walls {
  /** Over the walls. */
  readonly tree: BoxTree;
  /** What a wall adds to the winding round (x, y), by an upright ray or by one to the right. */
  readonly crossing: (wall: number, upright: boolean, x: number, y: number) => number;
}

/** Who counts on the way. */
export interface Counting {
  /** Told that a walk begins, outside everything. */
  readonly begin: () => void;
  /** Told of every wall passed, and of what it adds to the winding from there on. */
  readonly pass: (wall: number, change: number) => void;
  /** Told of every place once. */
  readonly arrive: (place: number) => void;
  /** Asked at the end of a walk, outside everything again, whether nothing is counted any more. */
  readonly isOut: () => boolean;
}

/** Numbers of a place: x, y, and 1 where the ways to and from it shall be upright, 0 where level. Such as do not run along a wall there. */
export const PLACE = 3;

/** Where a walk has come to, and how. */
interface Walk {
  x: number;
  y: number;
  upright: boolean;
  readonly turns: Turns;
  readonly pass: Counting['pass'];
}

/** Where a way turns: at a share of its length, plus a share of its breadth, plus a hair (mm) for ways of no length. */
interface Turns {
  readonly along: number;
  readonly aside: number;
  readonly off: number;
}

/** To be tried in turn. No outline has corners there: a turn exactly on a wall could be told to lie on either side. */
const TURNS: readonly Turns[] = [
  { along: 0.618034, aside: 0.0573193, off: 1.7e-5 },
  { along: 0.414214, aside: -0.0317113, off: 2.9e-5 },
  { along: 0.267949, aside: 0.0191732, off: -2.3e-5 },
];

/**
 * Walks from outside everything to every place once, those near each other in turn, and out again. Should not all that was counted be gone at its end, the walk
 * is made again by other ways; false when none came out.
 */
export function walkThrough(walls: Walls, places: Float64Array, counting: Counting): boolean {
  const mark = markLists();
  const { boxes, children } = walls.tree;
  const root = 4 * (children.length - 1);
  const startX = boxes[root]! - 1;
  const startY = boxes[root + 1]! - 1;
  const order = alongCurve(places);
  let out = false;
  for (let k = 0; !out && k < TURNS.length; k++) {
    const walk: Walk = { x: startX, y: startY, upright: true, turns: TURNS[k]!, pass: counting.pass };
    counting.begin();
    for (const place of order) {
      const at = PLACE * place;
      walkTo(walls, walk, places[at]!, places[at + 1]!, places[at + 2] === 1);
      counting.arrive(place);
    }
    walkTo(walls, walk, startX, startY, true);
    out = counting.isOut();
  }
  releaseLists(mark);
  return out;
}

function alongCurve(places: Float64Array): Int32Array {
  const count = places.length / PLACE;
  const boxes = reals(4 * count);
  for (let k = 0; k < count; k++) {
    boxes[4 * k] = places[PLACE * k]!;
    boxes[4 * k + 1] = places[PLACE * k + 1]!;
    boxes[4 * k + 2] = places[PLACE * k]!;
    boxes[4 * k + 3] = places[PLACE * k + 1]!;
  }
  return zOrder(boxes, count);
}

function walkTo(walls: Walls, walk: Walk, x: number, y: number, upright: boolean): void {
  const dx = x - walk.x;
  const dy = y - walk.y;
  if (dx === 0 && dy === 0 && walk.upright === upright) return;
  const { along, aside, off } = walk.turns;
  const turnX = walk.x + along * dx + aside * dy + off;
  const turnY = walk.y + along * dy + aside * dx + off;
  if (walk.upright) {
    goUpright(walls, walk, turnY);
    if (!upright) {
      goLevel(walls, walk, turnX);
      goUpright(walls, walk, y);
    }
    goLevel(walls, walk, x);
    if (upright) goUpright(walls, walk, y);
  } else {
    goLevel(walls, walk, turnX);
    if (upright) {
      goUpright(walls, walk, turnY);
      goLevel(walls, walk, x);
    }
    goUpright(walls, walk, y);
    if (!upright) goLevel(walls, walk, x);
  }
  walk.upright = upright;
}

function goUpright(walls: Walls, walk: Walk, y: number): void {
  const from = walk.y;
  walk.y = y;
  search(walls, walk, true, walk.x, Math.min(from, y), walk.x, Math.max(from, y), walk.x, from);
}

function goLevel(walls: Walls, walk: Walk, x: number): void {
  const from = walk.x;
  walk.x = x;
  search(walls, walk, false, Math.min(from, x), walk.y, Math.max(from, x), walk.y, from, walk.y);
}

/** Nodes still to be looked at. */
const STACK: number[] = [];

/** Tells of the walls passed on the way that came from (x, y) to where the walk is now, all of which lies in a box. Written out, since it is all that takes time. */
function search(
  { tree: { boxes, children, stops, count }, crossing }: Walls,
  walk: Walk,
  upright: boolean,
  minX: number,
  minY: number,
  maxX: number,
  maxY: number,
  x: number,
  y: number,
): void {
  let depth = 0;
  let node = children.length - 1;
  if (node < count) return;
  for (;;) {
    const last = stops[node - count]!;
    for (let i = children[node]!, at = 4 * i; i < last; i++, at += 4) {
      if (boxes[at]! > maxX || boxes[at + 2]! < minX || boxes[at + 1]! > maxY || boxes[at + 3]! < minY)
        continue;
      if (i >= count) {
        STACK[depth++] = i;
        continue;
      }
      const wall = children[i]!;
      const change = crossing(wall, upright, walk.x, walk.y) - crossing(wall, upright, x, y);
      if (change !== 0) walk.pass(wall, change);
    }
    if (depth === 0) return;
    node = STACK[--depth]!;
  }
}
