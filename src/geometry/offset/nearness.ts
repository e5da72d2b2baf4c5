import { narrowBoxes } from '../arrangement/narrow-boxes.ts';
import { type Pieces, SHAPE } from '../arrangement/pieces.ts';
import { buildBoxTree, searchBoxTree } from '../index-tree/box-tree.ts';

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
  const { boxes, owners, rings, x: atX, y: atY } = narrowBoxes(source);
  const tree = buildBoxTree(boxes, owners.length, rings);
  const search = (x: number, y: number, limit: number, visit: (item: number) => boolean): boolean => {
    if (!(limit > 0)) return false;
    const far = Math.sqrt((x - atX) * (x - atX) + (y - atY) * (y - atY));
    return searchBoxTree(tree, x - limit, y - limit, x + limit, y + limit, visit, far - limit, far + limit);
  };
  return {
    isCloser: (x, y, limit) => search(x, y, limit, (m) => isCloser(source, owners[m]!, x, y, limit)),
    areBothCloser: (x0, y0, x1, y1, limit) =>
      search(x0, y0, limit, (m) => isBothCloser(source, owners[m]!, x0, y0, x1, y1, limit)),
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
