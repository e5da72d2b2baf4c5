import type { Pattern } from '../../drawing/index.ts';
import { type Box, norm, type Vec } from '../../geometry/index.ts';
import type { Content } from './content.ts';
import type { Cell } from './cover.ts';
import { type Tile, TOUCH } from './forced.ts';
import { layInStrips, type Strips, stripAt } from './strips.ts';

/** A text cut by a seam can still be read when taped: it weighs little beside a corner on a seam, which weighs 1. */
const TEXT_CUT = 0.05;

/** Points and boxes of the turned pattern that seams should keep away from. */
export interface KeepOff {
  /** Of each its least x and y, its greatest, and its clearance: 0 for the box round a text. All mm. */
  readonly items: Float64Array;
  /** What a seam up or down at some x may be too near to, and a level one at some y. */
  readonly alongX: Strips;
  readonly alongY: Strips;
}

/** Numbers that each item has. */
const STRIDE = 5;

export function keepOffAt(pattern: Pattern, content: Content, turn: number): KeepOff {
  const c = Math.cos(turn);
  const s = Math.sin(turn);
  const { centre, textBoxes } = content;
  const items = new Float64Array(STRIDE * (pattern.keepOffSeams.length + textBoxes.length));
  let at = 0;
  const put = (points: readonly Vec[], clearance: number): void => {
    let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
    for (const p of points) {
      const px = p.x - centre.x;
      const py = p.y - centre.y;
      const x = c * px - s * py;
      const y = s * px + c * py;
      minX = Math.min(minX, x);
      minY = Math.min(minY, y);
      maxX = Math.max(maxX, x);
      maxY = Math.max(maxY, y);
    }
    items.set([minX, minY, maxX, maxY, clearance], at);
    at += STRIDE;
  };
  for (const { at: point, clearance } of pattern.keepOffSeams) put([point], clearance);
  for (const box of textBoxes)
    put(
      box.map(({ from }) => from),
      0,
    );
  const side = (low: 0 | 1): { low: number; high: number }[] =>
    Array.from({ length: items.length / STRIDE }, (_, i) => {
      const clearance = items[STRIDE * i + 4]!;
      return { low: items[STRIDE * i + low]! - clearance, high: items[STRIDE * i + low + 2]! + clearance };
    });
  return { items, alongX: layInStrips(side(0)), alongY: layInStrips(side(1)) };
}

/** Where cells meet: the upper border of a cell, or its right one. */
export interface CellSeam extends Cell {
  readonly isUpright: boolean;
}

export function seamsBetween(cells: readonly Cell[]): CellSeam[] {
  const seams: CellSeam[] = [];
  for (const { column, row } of cells) {
    for (const cell of cells) {
      if (cell.column === column + 1 && cell.row === row) seams.push({ column, row, isUpright: true });
      if (cell.column === column && cell.row === row + 1) seams.push({ column, row, isUpright: false });
    }
  }
  return seams;
}

/**
 * How badly seams disturb: for each point too near a seam the share of its clearance that is missing, and something
 * for each text cut. 0 when nothing is disturbed. Once it is more than `worth` the rest is not counted.
 */
export function disturbance(
  keepOff: KeepOff,
  seams: readonly CellSeam[],
  { stepX, stepY }: Tile,
  shift: Vec,
  worth = Infinity,
): number {
  let sum = 0;
  for (const { column, row, isUpright } of seams) {
    if (sum > worth) return sum;
    const right = shift.x + (column + 1) * stepX;
    const top = shift.y + (row + 1) * stepY;
    sum += isUpright
      ? disturbanceBy(keepOff, stripAt(keepOff.alongX, right), right, top - stepY, right, top)
      : disturbanceBy(keepOff, stripAt(keepOff.alongY, top), right - stepX, top, right, top);
  }
  return sum;
}

function disturbanceBy(
  { items }: KeepOff,
  near: readonly number[],
  minX: number,
  minY: number,
  maxX: number,
  maxY: number,
): number {
  let sum = 0;
  for (const item of near) {
    const at = STRIDE * item;
    const clearance = items[at + 4]!;
    const x = Math.max(minX - items[at + 2]!, 0, items[at]! - maxX);
    const y = Math.max(minY - items[at + 3]!, 0, items[at + 1]! - maxY);
    if (clearance === 0) {
      if (x === 0 && y === 0) sum += TEXT_CUT;
    } else if (x < clearance && y < clearance) {
      const apart = norm(x, y);
      if (apart < clearance) sum += 1 - apart / clearance;
    }
  }
  return sum;
}

/**
 * The least that the level seams of a single column of sheets disturb for one shift in y, wherever the column may lie along x:
 * what it shows of `box`, it shows all over but for the overlaps.
 */
export function leastOfColumn(
  keepOff: KeepOff,
  box: Box,
  { minY, maxY }: Box,
  tile: Tile,
  shiftY: number,
): number {
  const inset = tile.halfX + TOUCH;
  let sum = 0;
  for (let row = minY; row < maxY; row++) {
    const top = shiftY + (row + 1) * tile.stepY;
    const near = stripAt(keepOff.alongY, top);
    sum += disturbanceBy(keepOff, near, box.minX + inset, top, box.maxX - inset, top);
  }
  return sum;
}

/**
 * How far content lies from the middle of its sheets, as a share of a step: 0 when the room left over is the same on
 * opposite sides.
 */
export function offCentre(box: Box, cells: Box, { stepX, stepY }: Tile, shift: Vec): number {
  const middleX = shift.x + ((cells.minX + cells.maxX + 1) / 2) * stepX;
  const middleY = shift.y + ((cells.minY + cells.maxY + 1) / 2) * stepY;
  return (
    Math.abs((box.minX + box.maxX) / 2 - middleX) / stepX +
    Math.abs((box.minY + box.maxY) / 2 - middleY) / stepY
  );
}
