/** Loops that cross themselves and each other in proportion to their number of edges, or far more often, and lattices of many loops. */
import {
  circleOutline,
  type EdgeTag,
  type Outline,
  polygonOutline,
  type Region,
  type Vec,
} from '../../../src/geometry/index.ts';
import { loopThrough } from './pen.ts';
import type { Random } from './random.ts';

export const TAG: EdgeTag = { id: 'edge', role: 'routed' };

/** A ring as large as it has edges whose corners go to and fro over so many neighbours: it crosses itself in proportion to both. */
export function scribbledRing(r: Random, count: number, reach: number, arcs: boolean): Outline {
  const points = Array.from({ length: count }, (_, i): Vec => {
    const angle = (2 * Math.PI * (i + reach * (r.next() - 0.5))) / count;
    const radius = count + 20 * (r.next() - 0.5);
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
  const bulges = points.map(() =>
    arcs && r.next() < 0.7 ? r.between(0.05, 0.6) * (r.next() < 0.5 ? 1 : -1) : 0,
  );
  return loopThrough(points, bulges);
}

/** A ring in which every fourth two corners have changed places. */
export function ringOfBowTies(r: Random, count: number): Outline {
  const points = Array.from({ length: count }, (_, i): Vec => {
    const angle = (2 * Math.PI * i) / count;
    const radius = count + 2 * (r.next() - 0.5);
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
  for (let i = 0; i + 3 < count; i += 4) [points[i + 1], points[i + 2]] = [points[i + 2]!, points[i + 1]!];
  return polygonOutline(points, TAG);
}

/** Corners anywhere: almost every edge crosses a quarter of all. */
export function randomChords(r: Random, count: number): Outline {
  return polygonOutline(
    Array.from({ length: count }, () => ({ x: r.between(0, 1000), y: r.between(0, 1000) })),
    TAG,
  );
}

/** Bars across bars, so many each way. */
export function latticeOfBars(count: number): Outline[] {
  const bar = (minX: number, minY: number, maxX: number, maxY: number): Outline =>
    polygonOutline(
      [
        { x: minX, y: minY },
        { x: maxX, y: minY },
        { x: maxX, y: maxY },
        { x: minX, y: maxY },
      ],
      TAG,
    );
  return Array.from({ length: count }, (_, i) => 3 * i + 0.125).flatMap((at) => [
    bar(-1, at, 3 * count, at + 1),
    bar(at, -1, at + 1, 3 * count),
  ]);
}

/** Circles in a square lattice of 2 mm. */
export function latticeOfCircles(across: number, radius: number, turn: 1 | -1 = 1): Outline[] {
  return Array.from({ length: across * across }, (_, k) =>
    circleOutline({ x: 2 * (k % across), y: 2 * Math.floor(k / across) }, radius, TAG, turn),
  );
}

/** A plate with a lattice of round holes. */
export function sieve(across: number, radius: number): Region {
  const outer = polygonOutline(
    [
      { x: -2, y: -2 },
      { x: 2 * across, y: -2 },
      { x: 2 * across, y: 2 * across },
      { x: -2, y: 2 * across },
    ],
    TAG,
  );
  return { outer, holes: latticeOfCircles(across, radius, -1) };
}
