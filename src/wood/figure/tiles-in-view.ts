import {
  invertProjection,
  type Projection,
  project,
  projectTwice,
  stretchAt,
  type Vec,
} from '../../geometry/index.ts';
import { TILE, type TileLevel } from './tile-plan.ts';

/** One tile to show. */
export interface TileInView {
  readonly level: number;
  readonly column: number;
  readonly row: number;
  /** From the tile's own pixels to those of the view. */
  readonly toView: Projection;
}

/**
 * Which tiles of a photograph a view needs: of the coarsest level that is still as fine as the view's pixels, those of which something is
 * seen. `toView` takes the photograph's pixels to the view's, from (0, 0) to (width, height). Seen square on that is at most four pixels
 * for one of the view, and a row of tiles round it, however large the photograph; seen slantwise its nearest part decides.
 */
export function tilesInView(
  levels: readonly TileLevel[],
  toView: Projection,
  view: { readonly width: number; readonly height: number },
): readonly TileInView[] {
  const corners = [
    { x: 0, y: 0 },
    { x: view.width, y: 0 },
    { x: view.width, y: view.height },
    { x: 0, y: view.height },
  ];
  const back = invertProjection(toView);
  const seen = corners.map((corner) => project(corner, back));
  // Where the view looks past the horizon nothing bounds what is seen: all of a coarse level is shown.
  if (seen.some((corner) => corner === undefined)) return tilesOf(levels.at(-1)!, toView, () => true);
  const quad = seen as readonly Vec[];
  const level = levels[levelFor(levels, toView, quad)]!;
  const size = TILE * 2 ** level.level;
  return tilesOf(level, toView, (column, row) => meets(quad, column * size, row * size, size));
}

/** The coarsest level at which no pixel of the photograph that is seen covers more than one of the view. */
function levelFor(levels: readonly TileLevel[], toView: Projection, quad: readonly Vec[]): number {
  const { width, height } = levels[0]!;
  const within = quad.map(({ x, y }) => ({ x: clamp(x, width), y: clamp(y, height) }));
  const middle = {
    x: within.reduce((sum, { x }) => sum + x, 0) / 4,
    y: within.reduce((sum, { y }) => sum + y, 0) / 4,
  };
  const finest = Math.max(...[...within, middle].map((p) => stretchAt(p, toView)?.most ?? 0));
  const level = finest > 0 ? Math.floor(Math.log2(1 / finest)) : levels.length - 1;
  return Math.min(levels.length - 1, Math.max(0, level));
}

function tilesOf(
  level: TileLevel,
  toView: Projection,
  isSeen: (column: number, row: number) => boolean,
): TileInView[] {
  const tiles: TileInView[] = [];
  const scale = 2 ** level.level;
  for (let row = 0; row < level.rows; row++) {
    for (let column = 0; column < level.columns; column++) {
      if (!isSeen(column, row)) continue;
      const own: Projection = [scale, 0, column * TILE * scale, 0, scale, row * TILE * scale, 0, 0, 1];
      tiles.push({ level: level.level, column, row, toView: projectTwice(own, toView) });
    }
  }
  return tiles;
}

/** Does a convex quadrilateral have anything in common with a square? No, where a side of either has the other wholly beyond it. */
function meets(quad: readonly Vec[], x: number, y: number, size: number): boolean {
  const square = [
    { x, y },
    { x: x + size, y },
    { x: x + size, y: y + size },
    { x, y: y + size },
  ];
  return !parts(quad, square) && !parts(square, quad);
}

function parts(a: readonly Vec[], b: readonly Vec[]): boolean {
  return a.some((from, i) => {
    const to = a[(i + 1) % a.length]!;
    const inside = Math.sign(sideOf(from, to, a[(i + 2) % a.length]!));
    return b.every((p) => sideOf(from, to, p) * inside <= 0);
  });
}

function sideOf(from: Vec, to: Vec, p: Vec): number {
  return (to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x);
}

function clamp(value: number, most: number): number {
  return Math.min(most, Math.max(0, value));
}
