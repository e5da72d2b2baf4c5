import {
  directionAt,
  type Edge,
  line,
  moveBy,
  type Outline,
  scale,
  transformEdge,
} from '../../geometry/index.ts';
import { crossingOfRays, detour } from './detour.ts';
import type { UnroutedRun } from './find-runs.ts';
import {
  describe,
  hasLength,
  nameOf,
  type Passage,
  type PassageOptions,
  stripsPastCorner,
} from './passage.ts';
import { pointAhead, type Side, wasteStrip } from './side.ts';

/**
 * Each end of the run has its own run-on, as wide as the unrouted edge there; the rest of the run stays as it is. Where a
 * run-on would hit the part itself there is none, and the unrouted edges are taken along as if they were routed.
 */
export function goAround(run: UnroutedRun, a: Side, b: Side, options: PassageOptions): Passage {
  const { runOn, beyond } = options;
  const long = detour(run, a, b, options);
  if (run.edges.length === 1 || long === undefined) {
    const asDrawn = { short: run.edges, long: run.edges, passedOver: [], pastCorner: [], pastRunOn: [] };
    return { gap: describe(run, 'around', 0, a.corner), ...asDrawn };
  }
  const before = moveEnd(a, run.edges[1]!, runOn);
  const after = moveEnd(b, run.edges.at(-2)!, runOn);
  const aside = { id: `${nameOf(run.edges[0]!)}.side`, role: 'left' } as const;
  const bside = { id: `${nameOf(run.edges.at(-1)!)}.side`, role: 'left' } as const;
  const edges = [
    ...(a.runsOn
      ? [line(a.corner, before.from, a.routed.tag), before, line(before.to, a.end.to, aside)]
      : [a.end]),
    ...run.edges.slice(1, -1),
    ...(b.runsOn
      ? [line(b.end.from, after.from, bside), after, line(after.to, b.corner, b.routed.tag)]
      : [b.end]),
  ];
  const runsOn = [a, b].filter((side) => side.runsOn);
  const gap = describe(run, 'around', runsOn.length === 0 ? 0 : runOn, (runsOn[0] ?? a).corner);
  return {
    gap,
    short: edges.filter(hasLength),
    long,
    passedOver: run.edges.slice(1, -1),
    pastCorner: stripsPastCorner([a, b], beyond, runOn),
    pastRunOn: [
      stripPastEnd(a, run.edges[1]!, runOn, beyond),
      stripPastEnd(b, run.edges.at(-2)!, runOn, beyond),
    ],
  };
}

/**
 * The unrouted edge at a corner moved out by the run-on. Where it is straight it ends on the continuation of the edge after
 * it, so that a board is not asked for wood beyond an edge that stays as it came.
 */
function moveEnd({ along, end, endAlong, hand }: Side, next: Edge, runOn: number): Edge {
  const shift = scale(along, runOn);
  const moved: Edge = {
    ...transformEdge(end, moveBy(shift.x, shift.y)),
    tag: { id: nameOf(end), role: 'left' },
  };
  const back = hand === 1 ? scale(directionAt(next, 0), -1) : directionAt(next, 1);
  const corner = hand === 1 ? end.to : end.from;
  const start = hand === 1 ? moved.from : moved.to;
  const met =
    end.kind === 'line'
      ? crossingOfRays({ corner: start, along: endAlong }, { corner, along: back })
      : undefined;
  if (met === undefined || met.b > 2 * runOn) return moved;
  return hand === 1 ? { ...moved, to: met.at } : { ...moved, from: met.at };
}

/** The strip past a run-on, or, where there is none, past the far end of the unrouted edge that takes its place. */
function stripPastEnd(side: Side, next: Edge, runOn: number, beyond: number): Outline {
  const size = { long: 2 * beyond + runOn, wide: 2 * beyond, tuck: 'forwards' } as const;
  if (side.runsOn) return wasteStrip(side, pointAhead(side, runOn), scale(side.endAlong, -1), size);
  const { end, hand } = side;
  const along = hand === 1 ? directionAt(end, 1) : scale(directionAt(end, 0), -1);
  const slant = hand === 1 ? scale(directionAt(next, 0), -1) : directionAt(next, 1);
  return wasteStrip({ ...side, along }, hand === 1 ? end.to : end.from, slant, size);
}
