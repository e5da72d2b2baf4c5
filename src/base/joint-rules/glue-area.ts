import { distance, type Vec3 } from '../../geometry/index.ts';
import type { GlueArea, InsertPlace } from './api.ts';

/** Steps round the rounded ends: the share that is end grain comes out to half a degree. */
const STEPS = 720;

/**
 * Walls of the mortises of one part, and how much of them is long grain, mm². The tenon's own fibres run along it, so that what counts is
 * how the fibres of the part meet each wall: within 45° of it they are long grain. Bottoms do not count.
 */
export function glueArea(places: readonly InsertPlace[], depth: number, grain: Vec3): GlueArea {
  const size = Math.hypot(grain.x, grain.y, grain.z);
  if (size === 0) throw new RangeError('fibres need a direction');
  const [gx, gy] = [grain.x / size, grain.y / size];
  const longRound = 2 * Math.PI * shareOfRound(gx, gy);
  let [total, long] = [0, 0];
  for (const { from, to, radius } of places) {
    const swept = distance(from, to);
    const [x, y] = swept === 0 ? [1, 0] : [(to.x - from.x) / swept, (to.y - from.y) / swept];
    const across = Math.abs(gy * x - gx * y);
    total += 2 * swept + 2 * Math.PI * radius;
    long += (across <= Math.SQRT1_2 ? 2 * swept : 0) + radius * longRound;
  }
  return { total: total * depth, longGrain: long * depth };
}

const TURNS = Array.from({ length: STEPS }, (_, k) => {
  const turn = ((k + 0.5) * 2 * Math.PI) / STEPS;
  return { x: Math.cos(turn), y: Math.sin(turn) };
});

/** The share of a round wall within 45° of which the fibres run. */
function shareOfRound(gx: number, gy: number): number {
  let long = 0;
  for (const { x, y } of TURNS) if (Math.abs(gx * x + gy * y) <= Math.SQRT1_2) long++;
  return long / STEPS;
}
