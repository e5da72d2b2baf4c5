import type { Edge, Outline, Region } from '../api.ts';
import { sweepOf } from '../edge.ts';

/**
 * Area within a loop, mm²: positive when it runs anticlockwise, negative when clockwise, and counted as often as
 * the loop winds round. Green's theorem: the polygon of the chords, and the segment between each arc and its chord.
 */
export function areaOfOutline(outline: Outline): number {
  const origin = outline.edges[0]?.from;
  if (origin === undefined) return 0;
  let twice = 0;
  for (const edge of outline.edges) {
    const ax = edge.from.x - origin.x;
    const ay = edge.from.y - origin.y;
    twice += ax * (edge.to.y - edge.from.y) - ay * (edge.to.x - edge.from.x) + twiceSegmentArea(edge);
  }
  return twice / 2;
}

/** Area of regions, holes taken out, mm². */
export function areaOfRegions(regions: readonly Region[]): number {
  let total = 0;
  for (const { outer, holes } of regions) {
    total += areaOfOutline(outer);
    for (const hole of holes) total += areaOfOutline(hole);
  }
  return total;
}

function twiceSegmentArea(edge: Edge): number {
  if (edge.kind === 'line') return 0;
  return edge.turn * edge.radius * edge.radius * angleLessSine(sweepOf(edge));
}

/** a − sin a without the cancellation that would cost a flat arc of large radius its area. */
function angleLessSine(a: number): number {
  if (a > 0.3) return a - Math.sin(a);
  const q = a * a;
  return ((a * q) / 6) * (1 - (q / 20) * (1 - (q / 42) * (1 - (q / 72) * (1 - q / 110))));
}
