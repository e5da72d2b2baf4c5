import { type Edge, lengthOf, pointAt, type Vec } from '../../../src/geometry/index.ts';

/** Distance between places at which lines are compared, mm. */
const SAMPLING = 0.5;

/** How far printed lines stray from the computed edges at the most, and the other way round; mm. */
export function compareOutlines(
  printed: readonly (readonly Vec[])[],
  computed: readonly Edge[],
): { readonly printedOff: number; readonly computedMissing: number } {
  const drawn = segmentsOf(printed);
  const wanted = segmentsOf(computed.map((edge) => divided(edge, 0.05)));
  return {
    printedOff: farthest(printed.flatMap(samplesOf), wanted),
    computedMissing: farthest(
      computed.flatMap((edge) => divided(edge, SAMPLING)),
      drawn,
    ),
  };
}

type Segment = readonly [Vec, Vec];

/** Points along an edge no farther apart than so many mm; chords of 0.05 mm stray from an arc of 10 mm by 3e-5 mm. */
function divided(edge: Edge, apart: number): Vec[] {
  const count = edge.kind === 'line' && apart < SAMPLING ? 1 : Math.max(1, Math.ceil(lengthOf(edge) / apart));
  return Array.from({ length: count + 1 }, (_, i) => pointAt(edge, i / count));
}

function samplesOf(line: readonly Vec[]): Vec[] {
  return line.slice(1).flatMap((b, i) => {
    const a = line[i]!;
    const count = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / SAMPLING));
    return Array.from({ length: count + 1 }, (_, k) => ({
      x: a.x + (k / count) * (b.x - a.x),
      y: a.y + (k / count) * (b.y - a.y),
    }));
  });
}

const CELL = 4;

function segmentsOf(lines: readonly (readonly Vec[])[]): Map<string, Segment[]> {
  const cells = new Map<string, Segment[]>();
  for (const line of lines) {
    line.slice(1).forEach((b, i) => {
      const a = line[i]!;
      const count = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / CELL));
      const seen = new Set<string>();
      for (let k = 0; k <= count; k++) {
        const x = Math.floor((a.x + (k / count) * (b.x - a.x)) / CELL);
        const y = Math.floor((a.y + (k / count) * (b.y - a.y)) / CELL);
        for (let dx = -1; dx <= 1; dx++) for (let dy = -1; dy <= 1; dy++) seen.add(`${x + dx},${y + dy}`);
      }
      for (const cell of seen) {
        const known = cells.get(cell);
        if (known === undefined) cells.set(cell, [[a, b]]);
        else known.push([a, b]);
      }
    });
  }
  return cells;
}

/** The greatest distance from a point to the nearest segment; no segment within a cell counts as one cell. */
function farthest(points: readonly Vec[], cells: ReadonlyMap<string, Segment[]>): number {
  let most = 0;
  for (const p of points) {
    const near = cells.get(`${Math.floor(p.x / CELL)},${Math.floor(p.y / CELL)}`) ?? [];
    let least = CELL;
    for (const [a, b] of near) least = Math.min(least, distanceToSegment(p, a, b));
    most = Math.max(most, least);
  }
  return most;
}

function distanceToSegment(p: Vec, a: Vec, b: Vec): number {
  const x = b.x - a.x;
  const y = b.y - a.y;
  const size = x * x + y * y;
  const t = size === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * x + (p.y - a.y) * y) / size));
  return Math.hypot(p.x - a.x - t * x, p.y - a.y - t * y);
}
