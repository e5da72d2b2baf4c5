import { narrowBoxes } from '../arrangement/narrow-boxes.ts';
import { type Pieces, SHAPE } from '../arrangement/pieces.ts';
import { type BoxTree, buildBoxTree, searchBoxTree } from '../index-tree/box-tree.ts';

/** Is anything of the source nearer to (x, y) than `limit` (mm)? */
export type CloserThan = (x: number, y: number, limit: number) => boolean;

/** Up to this many pieces going through all boxes is quicker than a tree. */
const TREE_FROM = 48;

export function closerThanSource(source: Pieces): CloserThan {
  const { count, boxes } = source;
  if (count >= TREE_FROM) {
    const narrow = narrowBoxes(source);
    const tree = buildBoxTree(narrow.boxes, narrow.owners.length);
    return (x, y, limit) => isCloserInTree(source, tree, narrow.owners, x, y, limit);
  }
  return (x, y, limit) => {
    if (!(limit > 0)) return false;
    for (let i = 0, at = 0; i < count; i++, at += 4) {
      if (x - limit > boxes[at + 2]! || x + limit < boxes[at]!) continue;
      if (y - limit > boxes[at + 3]! || y + limit < boxes[at + 1]!) continue;
      if (isCloser(source, i, x, y, limit)) return true;
    }
    return false;
  };
}

function isCloserInTree(
  source: Pieces,
  tree: BoxTree,
  owners: readonly number[],
  x: number,
  y: number,
  limit: number,
): boolean {
  if (!(limit > 0)) return false;
  return searchBoxTree(tree, x - limit, y - limit, x + limit, y + limit, (i) =>
    isCloser(source, owners[i]!, x, y, limit),
  );
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
