import type { Region, Vec } from '../api.ts';
import { boundsOfRegions } from '../bounds.ts';
import { line } from '../edge.ts';
import { intersectEdges } from '../intersect/intersect-edges.ts';
import { POSITION_TOLERANCE } from '../tolerance.ts';
import { length } from '../vec.ts';
import { locate } from './locate.ts';

/** A straight stretch of material through a place. */
export interface Chord {
  readonly from: Vec;
  readonly to: Vec;
  /** mm. */
  readonly length: number;
}

/**
 * The chord of the regions through p along a direction: how far the material runs on both ways before it ends, as the grain does
 * through a limb. Along an edge counts as within; a mere touch of an edge on the way does not end it. Undefined when p lies
 * outside, or on an edge with nothing along the direction on either side. Throws a RangeError for a direction of no length.
 */
export function chordAlong(regions: readonly Region[], p: Vec, direction: Vec): Chord | undefined {
  const long = length(direction);
  if (!(long > 0 && Number.isFinite(long)))
    throw new RangeError(`(${direction.x}, ${direction.y}) is no direction`);
  const box = boundsOfRegions(regions);
  const width = Math.max(box.maxX, p.x) - Math.min(box.minX, p.x);
  const height = Math.max(box.maxY, p.y) - Math.min(box.minY, p.y);
  const reach = 2 * (width + height) + 1;
  if (!Number.isFinite(reach) || locate(regions, p) === 'outside') return undefined;
  const at = (s: number): Vec => ({ x: p.x + (s * direction.x) / long, y: p.y + (s * direction.y) / long });
  const ahead = runOf(regions, p, at, reach);
  const behind = runOf(regions, p, (s) => at(-s), reach);
  return ahead + behind > 0 ? { from: at(-behind), to: at(ahead), length: ahead + behind } : undefined;
}

/** How far from p one way the material runs on. */
function runOf(regions: readonly Region[], p: Vec, at: (s: number) => Vec, reach: number): number {
  const ray = line(p, at(reach), { id: 'chord', role: 'left' });
  const stops: number[] = [];
  for (const { outer, holes } of regions) {
    for (const loop of [outer, ...holes]) {
      for (const edge of loop.edges) {
        const met = intersectEdges(ray, edge);
        if (met.kind === 'tangent') stops.push(met.at.onA * reach);
        else if (met.kind !== 'none') for (const { onA } of met.points) stops.push(onA * reach);
        if (met.kind === 'overlap')
          for (const { from, to } of met.stretches) stops.push(from.onA * reach, to.onA * reach);
      }
    }
  }
  let run = 0;
  for (const stop of stops.sort((a, b) => a - b)) {
    if (stop - run <= POSITION_TOLERANCE) continue;
    if (locate(regions, at((run + stop) / 2)) === 'outside') return run;
    run = stop;
  }
  return run;
}
