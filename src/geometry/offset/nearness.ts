import { narrowBoxes } from '../arrangement/narrow-boxes.ts';
import { type Pieces, SHAPE } from '../arrangement/pieces.ts';
import { buildBoxTree } from '../index-tree/box-tree.ts';
import { searchDiscs } from '../index-tree/search-discs.ts';

/** What can be asked of the source. */
export interface Nearness {
  /** Is anything of it nearer to (x, y) than `limit` (mm)? */
  readonly isCloser: (x: number, y: number, limit: number) => boolean;
  /**
   * Is one line of it, or one end of a piece, nearer than `limit` to both places? Then it is to all between them, being convex. May say no where an
   * arc is.
   */
  readonly areBothCloser: (x0: number, y0: number, x1: number, y1: number, limit: number) => boolean;
}

/** Up to this many pieces going through all boxes is quicker than a tree. */
const TREE_FROM = 48;

export function nearnessOf(source: Pieces): Nearness {
  return source.count < TREE_FROM ? nearnessOfFew(source) : nearnessInTree(source);
}

function nearnessOfFew(source: Pieces): Nearness {
  const { count, boxes } = source;
  return {
    isCloser: (x, y, limit) => {
      if (!(limit > 0)) return false;
      for (let i = 0, at = 0; i < count; i++, at += 4) {
        if (x - limit > boxes[at + 2]! || x + limit < boxes[at]!) continue;
        if (y - limit > boxes[at + 3]! || y + limit < boxes[at + 1]!) continue;
        if (isCloser(source, i, x, y, limit)) return true;
      }
      return false;
    },
    areBothCloser: (x0, y0, x1, y1, limit) => {
      for (let i = 0; i < count; i++) if (isBothCloser(source, i, x0, y0, x1, y1, limit)) return true;
      return false;
    },
  };
}

function nearnessInTree(source: Pieces): Nearness {
  const { count, boxes, owners, rings, x: atX, y: atY } = narrowBoxes(source);
  const tree = buildBoxTree(boxes, count, rings);
  const discs = { x0: 0, y0: 0, x1: 0, y1: 0, radius: 0, least: 0, most: 0 };
  const isOneCloser = (m: number): boolean => isCloser(source, owners[m]!, discs.x0, discs.y0, discs.radius);
  const isOneBothCloser = (m: number): boolean =>
    isBothCloser(source, owners[m]!, discs.x0, discs.y0, discs.x1, discs.y1, discs.radius);
  const search = (
    x0: number,
    y0: number,
    x1: number,
    y1: number,
    limit: number,
    visit: (m: number) => boolean,
  ): boolean => {
    if (!(limit > 0)) return false;
    const far = Math.sqrt((x0 - atX) * (x0 - atX) + (y0 - atY) * (y0 - atY));
    discs.x0 = x0;
    discs.y0 = y0;
    discs.x1 = x1;
    discs.y1 = y1;
    discs.radius = limit;
    discs.least = far - limit;
    discs.most = far + limit;
    return searchDiscs(tree, discs, visit);
  };
  return {
    isCloser: (x, y, limit) => search(x, y, x, y, limit, isOneCloser),
    areBothCloser: (x0, y0, x1, y1, limit) => search(x0, y0, x1, y1, limit, isOneBothCloser),
  };
}

/** Is piece i, if a line, or one end of it, nearer than the limit to both places? */
function isBothCloser(
  source: Pieces,
  i: number,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  limit: number,
): boolean {
  if (!(limit > 0)) return false;
  if (source.turn[i] === 0) return isCloser(source, i, x0, y0, limit) && isCloser(source, i, x1, y1, limit);
  const { shape } = source;
  const square = limit * limit;
  for (let at = SHAPE * i; at <= SHAPE * i + 2; at += 2) {
    const x = shape[at]!;
    const y = shape[at + 1]!;
    if ((x - x0) ** 2 + (y - y0) ** 2 < square && (x - x1) ** 2 + (y - y1) ** 2 < square) return true;
  }
  return false;
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
  const cx = shape[at + 4]!;
  const cy = shape[at + 5]!;
  const qx = x - cx;
  const qy = y - cy;
  const inSweep =
    turn * ((x0 - cx) * qy - (y0 - cy) * qx) >= 0 && turn * (qx * (y1 - cy) - qy * (x1 - cx)) >= 0;
  if (inSweep && Math.abs(Math.sqrt(qx * qx + qy * qy) - shape[at + 6]!) < limit) return true;
  return (x - x0) ** 2 + (y - y0) ** 2 < limit * limit || (x - x1) ** 2 + (y - y1) ** 2 < limit * limit;
}
