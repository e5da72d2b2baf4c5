import { narrowBoxes } from '../arrangement/narrow-boxes.ts';
import { type Pieces, SHAPE } from '../arrangement/pieces.ts';
import { type BoxTree, buildPassingTree } from '../index-tree/box-tree.ts';
import { CARRIER_TOLERANCE } from '../tolerance.ts';

/** What can be asked of the source. */
export interface Nearness {
  /** The number of some piece of it that is nearer to (x, y) than `limit` (mm), or NOBODY. */
  readonly nearerPiece: (x: number, y: number, limit: number) => number;
  /** How far (mm) rounding may put a distance off: CARRIER_TOLERANCE, and more where a circle is so large that its last digits are. */
  readonly slack: number;
}

export const NOBODY = -1;

/** Up to this many pieces going through all boxes is quicker than a tree. */
const TREE_FROM = 48;

export function nearnessOf(source: Pieces): Nearness {
  return source.count < TREE_FROM ? nearnessOfFew(source) : nearnessInTree(source);
}

function nearnessOfFew(source: Pieces): Nearness {
  const { count, boxes } = source;
  return {
    slack: slackOf(source),
    nearerPiece: (x, y, limit) => {
      if (!(limit > 0)) return NOBODY;
      for (let i = 0, at = 0; i < count; i++, at += 4) {
        if (x - limit > boxes[at + 2]! || x + limit < boxes[at]!) continue;
        if (y - limit > boxes[at + 3]! || y + limit < boxes[at + 1]!) continue;
        if (isCloser(source, i, x, y, limit)) return i;
      }
      return NOBODY;
    },
  };
}

function nearnessInTree(source: Pieces): Nearness {
  const { count, boxes, owners, rings, x: atX, y: atY } = narrowBoxes(source);
  const tree = buildPassingTree(boxes, count, rings);
  // What was near one place is likely to be near the next as well.
  let last = 0;
  return {
    slack: slackOf(source),
    nearerPiece: (x, y, limit) => {
      if (!(limit > 0)) return NOBODY;
      if (isCloser(source, last, x, y, limit)) return last;
      const far = rings.length === 0 ? 0 : Math.sqrt((x - atX) * (x - atX) + (y - atY) * (y - atY));
      const found = searchTree(tree, source, owners, x, y, limit, far);
      if (found !== NOBODY) last = found;
      return found;
    },
  };
}

/** Last digits of the largest radius: a place on a parallel is off by its circle's rounding, its centre's and its own. */
const LAST_DIGITS = 4 * Number.EPSILON;

function slackOf({ count, shape, turn }: Pieces): number {
  let largest = 0;
  for (let i = 0; i < count; i++) {
    const radius = shape[SHAPE * i + 6]!;
    if (turn[i] !== 0 && radius > largest) largest = radius;
  }
  return Math.max(CARRIER_TOLERANCE, LAST_DIGITS * largest);
}

/** Nodes still to be looked into; eight for each level at most. */
const STACK = new Int32Array(256);

/** Goes down to every box nearer than the limit until a piece is; `far` is the distance of the place from where rings are measured. */
function searchTree(
  { count, boxes, rings, children, stops }: BoxTree,
  source: Pieces,
  owners: Int32Array,
  x: number,
  y: number,
  limit: number,
  far: number,
): number {
  const square = limit * limit;
  const ringed = rings.length > 0;
  let depth = 0;
  STACK[depth++] = children.length - 1;
  while (depth > 0) {
    const node = STACK[--depth]!;
    const stop = stops[node - count]!;
    for (let i = children[node]!, at = 4 * i; i < stop; i++, at += 4) {
      const left = boxes[at]! - x;
      const right = x - boxes[at + 2]!;
      const dx = left > right ? left : right;
      const below = boxes[at + 1]! - y;
      const above = y - boxes[at + 3]!;
      const dy = below > above ? below : above;
      if (dx >= limit || dy >= limit || (dx > 0 && dy > 0 && dx * dx + dy * dy >= square)) continue;
      if (ringed && (rings[2 * i]! >= far + limit || rings[2 * i + 1]! <= far - limit)) continue;
      if (i >= count) STACK[depth++] = i;
      else if (isCloser(source, owners[children[i]!]!, x, y, limit)) return owners[children[i]!]!;
    }
  }
  return NOBODY;
}

/** Is piece i nearer to (x, y) than the limit? */
function isCloser(source: Pieces, i: number, x: number, y: number, limit: number): boolean {
  const { shape } = source;
  const at = SHAPE * i;
  const x0 = shape[at]!;
  const y0 = shape[at + 1]!;
  const x1 = shape[at + 2]!;
  const y1 = shape[at + 3]!;
  const turn = source.turn[i]!;
  if (turn === 0) {
    const ux = x1 - x0;
    const uy = y1 - y0;
    const px = x - x0;
    const py = y - y0;
    const along = ux * px + uy * py;
    const size = ux * ux + uy * uy;
    if (along <= 0) return px * px + py * py < limit * limit;
    if (along >= size) return (x - x1) ** 2 + (y - y1) ** 2 < limit * limit;
    const aside = ux * py - uy * px;
    return aside * aside < limit * limit * size;
  }
  if (isInSweep(source, i, x, y)) {
    const qx = x - shape[at + 4]!;
    const qy = y - shape[at + 5]!;
    if (Math.abs(Math.sqrt(qx * qx + qy * qy) - shape[at + 6]!) < limit) return true;
  }
  return (x - x0) ** 2 + (y - y0) ** 2 < limit * limit || (x - x1) ** 2 + (y - y1) ** 2 < limit * limit;
}

/** Distance of (x, y) from piece i, mm. */
export function distanceToPiece(source: Pieces, i: number, x: number, y: number): number {
  const { shape } = source;
  const at = SHAPE * i;
  const x0 = shape[at]!;
  const y0 = shape[at + 1]!;
  const x1 = shape[at + 2]!;
  const y1 = shape[at + 3]!;
  const px = x - x0;
  const py = y - y0;
  if (source.turn[i] === 0) {
    const ux = x1 - x0;
    const uy = y1 - y0;
    const along = ux * px + uy * py;
    const size = ux * ux + uy * uy;
    if (along > 0 && along < size) return Math.abs(ux * py - uy * px) / Math.sqrt(size);
  }
  const ends = Math.sqrt(Math.min(px * px + py * py, (x - x1) * (x - x1) + (y - y1) * (y - y1)));
  if (source.turn[i] === 0 || !isInSweep(source, i, x, y)) return ends;
  const qx = x - shape[at + 4]!;
  const qy = y - shape[at + 5]!;
  return Math.min(ends, Math.abs(Math.sqrt(qx * qx + qy * qy) - shape[at + 6]!));
}

/** Does an arc's centre see (x, y) between its ends? */
function isInSweep({ shape, turn }: Pieces, i: number, x: number, y: number): boolean {
  const at = SHAPE * i;
  const cx = shape[at + 4]!;
  const cy = shape[at + 5]!;
  const qx = x - cx;
  const qy = y - cy;
  return (
    turn[i]! * ((shape[at]! - cx) * qy - (shape[at + 1]! - cy) * qx) >= 0 &&
    turn[i]! * (qx * (shape[at + 3]! - cy) - qy * (shape[at + 2]! - cx)) >= 0
  );
}
