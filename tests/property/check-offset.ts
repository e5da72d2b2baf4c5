import { findFaults, type Region, type Vec } from '../../src/geometry/index.ts';
import type { Random } from '../cases/outlines/random.ts';
import { boxOf, distanceTo, edgesOf, placeOn, rightAt, signedDistanceTo, turnsRound } from './oracle.ts';

/** How near to the boundary a point must not lie to be told inside from outside, mm. */
const BAND = 2e-6;
const BOUNDARY_ERROR = 1e-6;

/** What is wrong with `result` as the offset of `source` by `by`; empty when nothing is. */
export function faultsOfOffset(
  source: readonly Region[],
  by: number,
  result: readonly Region[],
  r: Random,
): string[] {
  const faults = findFaults(result).map(({ kind, message }) => `${kind}: ${message}`);
  const sourceEdges = edgesOf(source);
  const resultEdges = edgesOf(result);
  const tags = new Set(sourceEdges.map(({ tag }) => tag));
  const say = ({ x, y }: Vec): string => `(${x}, ${y})`;
  for (const edge of resultEdges) {
    if (!tags.has(edge.tag))
      faults.push(`an edge has the tag ${edge.tag.id}, which is not one of the source's`);
    for (const t of [0, 0.31, 0.5, 0.83, 1]) {
      const p = t === 0 ? edge.from : t === 1 ? edge.to : placeOn(edge, t);
      const off = distanceTo(sourceEdges, p) - Math.abs(by);
      if (Math.abs(off) > BOUNDARY_ERROR) faults.push(`boundary ${off} mm off at ${say(p)}`);
    }
  }
  for (const p of probes(source, by, result, r)) {
    const d = signedDistanceTo(sourceEdges, p);
    // Inside the offset when no further out than `by`.
    if (Math.abs(d - by) < BAND || distanceTo(resultEdges, p) < BAND) continue;
    const expected = d < by;
    if (turnsRound(resultEdges, p) > 0 !== expected) {
      faults.push(`${say(p)} at ${d} should be ${expected ? 'inside' : 'outside'}`);
    }
  }
  return faults;
}

/** Places at random, close to either side of the result's boundary, and close to where the boundary should be. */
function probes(source: readonly Region[], by: number, result: readonly Region[], r: Random): Vec[] {
  const { minX, minY, maxX, maxY } = boxOf(source);
  const grow = Math.max(0, by) + 0.05 * (maxX - minX + maxY - minY);
  const found: Vec[] = [];
  for (let i = 0; i < 24; i++) {
    found.push({ x: r.between(minX - grow, maxX + grow), y: r.between(minY - grow, maxY + grow) });
  }
  const beside = (edges: ReturnType<typeof edgesOf>, distance: number, most: number): void => {
    for (let i = 0; i < Math.min(most, edges.length); i++) {
      const edge = edges.length <= most ? edges[i]! : r.pick(edges);
      const t = r.between(0.02, 0.98);
      const p = placeOn(edge, t);
      const n = rightAt(edge, t);
      const step = r.pick([4e-6, 1e-4, 1e-2]);
      for (const d of [distance - step, distance + step]) found.push({ x: p.x + n.x * d, y: p.y + n.y * d });
    }
  };
  beside(edgesOf(result), 0, 16);
  beside(edgesOf(source), by, 16);
  return found.filter(({ x, y }) => Number.isFinite(x) && Number.isFinite(y));
}
