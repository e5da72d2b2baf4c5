import type { Edge, Outline, Region } from '../../../src/geometry/index.ts';
import { sweepOf } from '../../property/oracle.ts';

/** Corners x, y, x, y … of a loop whose arcs are chorded within `tolerance` mm. */
export function chordsOf({ edges }: Outline, tolerance: number): number[] {
  const flat: number[] = [];
  for (const edge of edges) {
    flat.push(edge.from.x, edge.from.y);
    if (edge.kind === 'arc') pushArc(flat, edge, tolerance);
  }
  return flat;
}

/** All loops of regions, outer ones and holes alike. */
export function chordedLoops(regions: readonly Region[], tolerance: number): number[][] {
  return regions.flatMap(({ outer, holes }) => [outer, ...holes].map((loop) => chordsOf(loop, tolerance)));
}

function pushArc(flat: number[], edge: Extract<Edge, { kind: 'arc' }>, tolerance: number): void {
  const { from, centre, radius, turn } = edge;
  const sweep = sweepOf(edge);
  // A chord over an angle a stands off its arc by r (1 − cos(a / 2)).
  const most = 2 * Math.acos(Math.max(0, 1 - tolerance / radius));
  const count = Math.max(1, Math.ceil(sweep / most));
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  for (let i = 1; i < count; i++) {
    const a = start + (turn * sweep * i) / count;
    flat.push(centre.x + radius * Math.cos(a), centre.y + radius * Math.sin(a));
  }
}
