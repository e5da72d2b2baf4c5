import type { Pattern } from '../../drawing/index.ts';
import { boundsOfEdges, type Vec } from '../../geometry/index.ts';
import type { Content } from './content.ts';
import { type Cell, isSame } from './cover.ts';
import type { Tile } from './forced.ts';
import type { TurnedContent } from './pieces.ts';

/** A text cut by a seam can still be read when taped: it weighs little beside a corner on a seam, which weighs 1. */
const TEXT_CUT = 0.05;

/** A seam on the turned pattern: along x or along y. */
interface SeamLine {
  readonly from: Vec;
  readonly to: Vec;
}

/** Points and boxes of the turned pattern that seams should keep away from. */
export interface KeepOff {
  readonly points: readonly { readonly at: Vec; readonly clearance: number }[];
  readonly boxes: readonly { minX: number; minY: number; maxX: number; maxY: number }[];
}

export function keepOffAt(pattern: Pattern, content: Content, turn: number): KeepOff {
  const c = Math.cos(turn);
  const s = Math.sin(turn);
  const move = (p: Vec): Vec => {
    const x = p.x - content.centre.x;
    const y = p.y - content.centre.y;
    return { x: c * x - s * y, y: s * x + c * y };
  };
  return {
    points: pattern.keepOffSeams.map(({ at, clearance }) => ({ at: move(at), clearance })),
    boxes: content.textBoxes.map((box) =>
      boundsOfEdges(box.map((edge) => ({ ...edge, from: move(edge.from), to: move(edge.to) }))),
    ),
  };
}

/**
 * How badly seams disturb: for each point too near a seam the share of its clearance that is missing, and something
 * for each text cut. 0 when nothing is disturbed. Once it is more than `worth` the rest is not counted.
 */
export function disturbance(
  keepOff: KeepOff,
  cells: readonly Cell[],
  tile: Tile,
  shift: Vec,
  worth = Infinity,
): number {
  let sum = 0;
  for (const seam of seamsOf(cells, tile, shift)) {
    if (sum > worth) return sum;
    for (const { at, clearance } of keepOff.points) {
      if (at.x < seam.from.x - clearance || at.x > seam.to.x + clearance) continue;
      if (at.y < seam.from.y - clearance || at.y > seam.to.y + clearance) continue;
      const apart = distanceTo(seam, at);
      if (apart < clearance) sum += 1 - apart / clearance;
    }
    for (const box of keepOff.boxes) {
      const { from, to } = seam;
      const crosses = from.x <= box.maxX && to.x >= box.minX && from.y <= box.maxY && to.y >= box.minY;
      if (crosses) sum += TEXT_CUT;
    }
  }
  return sum;
}

function seamsOf(cells: readonly Cell[], { stepX, stepY }: Tile, shift: Vec): SeamLine[] {
  const seams: SeamLine[] = [];
  for (const { column, row } of cells) {
    const right = shift.x + (column + 1) * stepX;
    const top = shift.y + (row + 1) * stepY;
    const left = right - stepX;
    const bottom = top - stepY;
    if (cells.some((cell) => isSame(cell, { column: column + 1, row }))) {
      seams.push({ from: { x: right, y: bottom }, to: { x: right, y: top } });
    }
    if (cells.some((cell) => isSame(cell, { column, row: row + 1 }))) {
      seams.push({ from: { x: left, y: top }, to: { x: right, y: top } });
    }
  }
  return seams;
}

function distanceTo({ from, to }: SeamLine, p: Vec): number {
  const x = Math.max(from.x - p.x, 0, p.x - to.x);
  const y = Math.max(from.y - p.y, 0, p.y - to.y);
  return Math.hypot(x, y);
}

/**
 * How far the content lies from the middle of its sheets, as a share of a step: 0 when the room left over is the same on
 * opposite sides.
 */
export function offCentre(content: TurnedContent, cells: readonly Cell[], tile: Tile, shift: Vec): number {
  const columns = cells.map((cell) => cell.column);
  const rows = cells.map((cell) => cell.row);
  const middleX = shift.x + ((Math.min(...columns) + Math.max(...columns) + 1) / 2) * tile.stepX;
  const middleY = shift.y + ((Math.min(...rows) + Math.max(...rows) + 1) / 2) * tile.stepY;
  const { box } = content;
  return (
    Math.abs((box.minX + box.maxX) / 2 - middleX) / tile.stepX +
    Math.abs((box.minY + box.maxY) / 2 - middleY) / tile.stepY
  );
}
