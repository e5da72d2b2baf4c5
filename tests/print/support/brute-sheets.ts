import type { Pattern } from '../../../src/drawing/index.ts';
import { lengthOf, pointAt, type Vec } from '../../../src/geometry/index.ts';

/**
 * The fewest sheets by trying everything: each turn of a list and each shift on a square lattice, content taken as
 * a cloud of points. Shares nothing with the search it checks but the sizes of a sheet.
 */
export interface BruteTile {
  readonly stepX: number;
  readonly stepY: number;
  readonly overlap: number;
}

/** Distance between points of the cloud, mm. */
const SAMPLING = 0.5;

export function cloudOf(pattern: Pattern): Vec[] {
  return pattern.scene.marks.flatMap((mark) =>
    mark.kind === 'text'
      ? []
      : mark.edges.flatMap((edge) => {
          const pieces = Math.ceil(lengthOf(edge) / SAMPLING);
          return Array.from({ length: pieces + 1 }, (_, i) => pointAt(edge, i / pieces));
        }),
  );
}

/** Does some turn and some shift of the lattice need fewer than `count` sheets? Where, if so. */
export function findsFewer(
  cloud: readonly Vec[],
  tile: BruteTile,
  count: number,
  turns: readonly number[],
  lattice: number,
): { turn: number; x: number; y: number; sheets: number } | undefined {
  for (const turn of turns) {
    const points = turned(cloud, turn);
    const sums = sumsOf(points);
    for (let y = 0; y < tile.stepY; y += lattice) {
      for (let x = 0; x < tile.stepX; x += lattice) {
        if (ownSheets(sums, tile, x, y, count) >= count) continue;
        const sheets = sheetsNeeded(points, tile, x, y, count - 1);
        if (sheets !== undefined) return { turn, x, y, sheets };
      }
    }
  }
  return undefined;
}

/** The cloud turned and moved into the positive quadrant. */
function turned(cloud: readonly Vec[], turn: number): Vec[] {
  const c = Math.cos(turn);
  const s = Math.sin(turn);
  const points = cloud.map(({ x, y }) => ({ x: c * x - s * y, y: s * x + c * y }));
  const left = Math.min(...points.map((p) => p.x));
  const low = Math.min(...points.map((p) => p.y));
  return points.map((p) => ({ x: p.x - left, y: p.y - low }));
}

interface Sums {
  readonly width: number;
  readonly height: number;
  readonly table: Int32Array;
}

/** Summed-area table of occupied square millimetres. */
function sumsOf(points: readonly Vec[]): Sums {
  const width = Math.ceil(Math.max(...points.map((p) => p.x))) + 1;
  const height = Math.ceil(Math.max(...points.map((p) => p.y))) + 1;
  const table = new Int32Array((width + 1) * (height + 1));
  for (const { x, y } of points) table[(Math.floor(y) + 1) * (width + 1) + Math.floor(x) + 1] = 1;
  for (let row = 1; row <= height; row++) {
    let sum = 0;
    for (let column = 1; column <= width; column++) {
      const at = row * (width + 1) + column;
      sum += table[at]!;
      table[at] = sum + table[at - width - 1]!;
    }
  }
  return { width, height, table };
}

/** Sheets that show something alone, counted from whole square millimetres only: never too many. */
function ownSheets(
  { width, height, table }: Sums,
  tile: BruteTile,
  x: number,
  y: number,
  enough: number,
): number {
  const half = tile.overlap / 2;
  let count = 0;
  for (let bottom = y - tile.stepY; bottom < height; bottom += tile.stepY) {
    const low = Math.max(0, Math.ceil(bottom + half));
    const high = Math.min(height, Math.floor(bottom + tile.stepY - half));
    if (high <= low) continue;
    for (let left = x - tile.stepX; left < width; left += tile.stepX) {
      const from = Math.max(0, Math.ceil(left + half));
      const to = Math.min(width, Math.floor(left + tile.stepX - half));
      if (to <= from) continue;
      const stride = width + 1;
      const held =
        table[high * stride + to]! -
        table[low * stride + to]! -
        table[high * stride + from]! +
        table[low * stride + from]!;
      if (held > 0 && ++count >= enough) return count;
    }
  }
  return count;
}

/** The fewest sheets joined by sides that show every point, if at most so many do; every set of sheets is tried. */
function sheetsNeeded(
  points: readonly Vec[],
  tile: BruteTile,
  x: number,
  y: number,
  most: number,
): number | undefined {
  const columns = Math.ceil((Math.max(...points.map((p) => p.x)) + tile.stepX - x) / tile.stepX) + 1;
  const rows = Math.ceil((Math.max(...points.map((p) => p.y)) + tile.stepY - y) / tile.stepY) + 1;
  const half = tile.overlap / 2;
  const needs = new Map<string, number[]>();
  for (const p of points) {
    const seen: number[] = [];
    for (let row = 0; row < rows; row++) {
      for (let column = 0; column < columns; column++) {
        const left = x + (column - 1) * tile.stepX;
        const bottom = y + (row - 1) * tile.stepY;
        const isIn =
          p.x >= left - half &&
          p.x <= left + tile.stepX + half &&
          p.y >= bottom - half &&
          p.y <= bottom + tile.stepY + half;
        if (isIn) seen.push(row * columns + column);
      }
    }
    needs.set(seen.join(), seen);
  }
  const all = [...needs.values()].sort((a, b) => a.length - b.length);
  for (let size = 1; size <= most; size++) {
    if (hasSet(all, [], size, columns, rows)) return size;
  }
  return undefined;
}

function hasSet(needs: number[][], chosen: number[], size: number, columns: number, rows: number): boolean {
  const open = needs.find((need) => !need.some((sheet) => chosen.includes(sheet)));
  if (open === undefined && isJoined(chosen, columns)) return true;
  if (chosen.length === size) return false;
  const next = open ?? Array.from({ length: columns * rows }, (_, i) => i).filter((i) => !chosen.includes(i));
  return next.some((sheet) => hasSet(needs, [...chosen, sheet], size, columns, rows));
}

function isJoined(chosen: number[], columns: number): boolean {
  const reached = [chosen[0]!];
  for (const at of reached) {
    for (const other of chosen) {
      const apart =
        Math.abs(Math.floor(at / columns) - Math.floor(other / columns)) +
        Math.abs((at % columns) - (other % columns));
      if (apart === 1 && !reached.includes(other)) reached.push(other);
    }
  }
  return reached.length === chosen.length;
}
