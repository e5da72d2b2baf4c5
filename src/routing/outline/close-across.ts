import { line, scale, subtract, unit, type Vec } from '../../geometry/index.ts';
import { crossingOfRays } from './detour.ts';
import type { UnroutedRun } from './find-runs.ts';
import { liesWithin } from './lies-within.ts';
import {
  describe,
  hasLength,
  meeting,
  nameOf,
  type Passage,
  type PassageOptions,
  stripsPastCorner,
} from './passage.ts';
import { pointAhead, type Side, wasteStrip } from './side.ts';

/**
 * Both routed edges run on and a straight line closes them, or they meet before that. Nothing when the run would stand out
 * beyond.
 */
export function closeAcross(
  run: UnroutedRun,
  a: Side,
  b: Side,
  runOn: number,
  { beyond }: PassageOptions,
): Passage | undefined {
  if (!a.runsOn && !b.runsOn) return undefined;
  const met = a.runsOn && b.runsOn ? crossingOfRays(a, b) : undefined;
  if (met !== undefined && Math.min(met.a, met.b) <= runOn) {
    if (!liesWithin(run, [a.corner, met.at, b.corner])) return undefined;
    const edges = meeting(a, met.at, b);
    const gap = describe(run, 'meet', Math.min(met.a, met.b), met.a < met.b ? a.corner : b.corner);
    return {
      gap,
      short: edges,
      passedOver: [],
      long: edges,
      pastCorner: stripsPastCorner([a, b], beyond, runOn),
      pastRunOn: [],
    };
  }
  const ends = [a, b].map((side) => (side.runsOn ? pointAhead(side, runOn) : side.corner)) as [Vec, Vec];
  if (!liesWithin(run, [a.corner, ...ends, b.corner])) return undefined;
  const tag = { id: nameOf(run.edges[0]!), role: 'left' } as const;
  const short = [
    line(a.corner, ends[0], a.routed.tag),
    line(ends[0], ends[1], tag),
    line(ends[1], b.corner, b.routed.tag),
  ].filter(hasLength);
  const far = runOn + beyond;
  const meetsBeyond = met !== undefined && Math.min(met.a, met.b) <= far;
  const farEnds = [a, b].map((side) => (side.runsOn ? pointAhead(side, far) : side.corner)) as [Vec, Vec];
  const long = meetsBeyond
    ? meeting(a, met.at, b)
    : [
        line(a.corner, farEnds[0], a.routed.tag),
        line(farEnds[0], farEnds[1], tag),
        line(farEnds[1], b.corner, b.routed.tag),
      ].filter(hasLength);
  const out = unit(subtract(ends[0], ends[1]));
  return {
    gap: describe(run, 'end', runOn, a.runsOn ? a.corner : b.corner),
    short,
    long,
    passedOver: [],
    pastCorner: stripsPastCorner([a, b], beyond, runOn),
    pastRunOn: [a, b]
      .filter((side) => side.runsOn)
      .map((side) =>
        wasteStrip(side, pointAhead(side, runOn), scale(out, side.hand), {
          long: 2 * beyond,
          wide: 2 * beyond,
          tuck: 'forwards',
        }),
      ),
  };
}
