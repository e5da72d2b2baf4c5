import type { Box } from '../../geometry/index.ts';
import type { Cell } from './cover.ts';
import { type Tile, TOUCH } from './forced.ts';

/**
 * The first and last column and row without which the ends of the content are not shown. A last that comes before its
 * first: the content lies within an overlap, and either sheet will do.
 */
export function cellsReached(
  box: Box,
  { stepX, stepY, halfX, halfY }: Tile,
  shiftX: number,
  shiftY: number,
): Box {
  const insetX = halfX + TOUCH;
  const insetY = halfY + TOUCH;
  return {
    minX: Math.floor((box.minX - shiftX + insetX) / stepX),
    maxX: Math.ceil((box.maxX - shiftX - insetX) / stepX) - 1,
    minY: Math.floor((box.minY - shiftY + insetY) / stepY),
    maxY: Math.ceil((box.maxY - shiftY - insetY) / stepY) - 1,
  };
}

/** Sheets that hang together and reach over a columns and b rows are a + b − 1 or more. */
export function leastToReach({ minX, minY, maxX, maxY }: Box): number {
  return Math.max(1, maxX - minX + 1) + Math.max(1, maxY - minY + 1) - 1;
}

/** The same wherever the columns lie, and with the rows at `shiftY`, give or take `slack`, mm. */
export function leastToReachAt(box: Box, tile: Tile, shiftY: number, slack: number): number {
  const columns = leastInRow(box.maxX - box.minX, tile.stepX, tile.halfX);
  const rows = leastInRow(box.maxY - box.minY, tile.stepY, tile.halfY);
  const room = tile.halfY + 2 * TOUCH + slack;
  const first = Math.floor((box.minY - shiftY + room) / tile.stepY);
  const after = Math.ceil((box.maxY - shiftY - room) / tile.stepY);
  return columns + Math.max(rows, after - first) - 1;
}

/** Wherever columns and rows lie. */
export function leastToReachAnywhere(box: Box, tile: Tile): number {
  return leastToReachAt(box, tile, 0, Infinity);
}

/** Sheets in a row that show so long a thing wherever they lie. */
function leastInRow(length: number, step: number, half: number): number {
  return Math.max(1, Math.ceil((length - 2 * (half + 2 * TOUCH)) / step));
}

/** All the cells reached where they are one row or one column: no fewer show everything. */
export function straightLine({ minX, minY, maxX, maxY }: Box): Cell[] | undefined {
  if (minX > maxX || minY > maxY || (minX < maxX && minY < maxY)) return undefined;
  const cells: Cell[] = [];
  for (let row = minY; row <= maxY; row++) {
    for (let column = minX; column <= maxX; column++) cells.push({ column, row });
  }
  return cells;
}
