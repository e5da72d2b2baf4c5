import { distance, dot, line, scale, subtract } from '../../geometry/index.ts';
import { crossingOfRays } from './detour.ts';
import type { UnroutedRun } from './find-runs.ts';
import { liesWithin } from './lies-within.ts';
import { describe, meeting, nameOf, type Passage } from './passage.ts';
import type { Side } from './side.ts';

/** Cosine of the angle to the straight way across within which two edges face each other. */
const FACING = 0.9;

/** The edges on both sides face each other: straight across, or through the crossing of their continuations. */
export function bridge(run: UnroutedRun, a: Side, b: Side): Passage | undefined {
  const wide = distance(a.corner, b.corner);
  if (!a.runsOn || !b.runsOn || wide === 0) return undefined;
  const across = scale(subtract(b.corner, a.corner), 1 / wide);
  if (dot(a.along, across) < FACING || dot(b.along, across) > -FACING) return undefined;
  const met = crossingOfRays(a, b);
  const path = met === undefined ? [a.corner, b.corner] : [a.corner, met.at, b.corner];
  if (!liesWithin(run, path)) return undefined;
  const edges =
    met === undefined
      ? [line(a.corner, b.corner, { ...a.routed.tag, id: nameOf(run.edges[0]!) })]
      : meeting(a, met.at, b);
  return {
    gap: describe(run, 'bridge', wide / 2, a.corner),
    short: edges,
    passedOver: [],
    long: edges,
    pastCorner: [],
    pastRunOn: [],
  };
}
