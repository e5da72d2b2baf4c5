import {
  type Box,
  cross,
  directionAt,
  distance,
  dot,
  type Edge,
  line,
  moveBy,
  type Outline,
  POSITION_TOLERANCE,
  pointAt,
  scale,
  subtract,
  transformEdge,
  unit,
  type Vec,
} from '../../geometry/index.ts';
import type { Gap } from '../api.ts';
import { crossingOfRays, detour } from './detour.ts';
import type { UnroutedRun } from './find-runs.ts';
import { makeSide, pointAhead, type Side, wasteStrip } from './side.ts';

/** How a board's outline passes a run of unrouted edges. */
export interface Passage {
  readonly gap: Gap;
  /** Edges that take the run's place in the template: routed edges run on, then a line across. */
  readonly short: readonly Edge[];
  /** The same with all room beyond, so that only routed edges feel an offset. */
  readonly long: readonly Edge[];
  /** Unrouted edges that have neither a run-on beyond them nor a routed neighbour whose offset carries on along them. */
  readonly passedOver: readonly Edge[];
  /** On the waste's side of each run-on: from the wood's corner, and from the template's end. Anticlockwise. */
  readonly pastCorner: readonly Outline[];
  readonly pastRunOn: readonly Outline[];
}

export interface PassageOptions {
  /** mm past the wood's corner. */
  readonly runOn: number;
  /** Room that `long` has beyond the template's end, and strips across, mm. */
  readonly beyond: number;
  /** Edges of the whole loop, none of which a run-on may hit. */
  readonly loop: readonly Edge[];
  /** Round the whole loop with room for run-on and more. */
  readonly box: Box;
}

/** Cosine of the angle to the straight way across within which two edges face each other. */
const FACING = 0.9;

/**
 * How the template passes a run of unrouted edges (see Gap for the kinds). Straight continuations of the routed
 * neighbours keep their tags; an edge across is `run-on.<edge>`.
 */
export function passGap(run: UnroutedRun, options: PassageOptions): Passage {
  const { runOn } = options;
  const first = run.edges[0]!;
  const last = run.edges.at(-1)!;
  const a = makeSide({
    corner: first.from,
    along: directionAt(run.before, 1),
    routed: run.before,
    end: first,
    endAlong: directionAt(first, 0),
    hand: 1,
  });
  const b = makeSide({
    corner: last.to,
    along: scale(directionAt(run.after, 0), -1),
    routed: run.after,
    end: last,
    endAlong: scale(directionAt(last, 1), -1),
    hand: -1,
  });
  return (
    bridge(run, a, b) ??
    closeAcross(run, a, b, runOn, options) ??
    closeAcross(run, a, b, runOn + protrusion(run), options) ??
    goAround(run, a, b, options)
  );
}

/** The edges on both sides face each other: straight across, or through the crossing of their continuations. */
function bridge(run: UnroutedRun, a: Side, b: Side): Passage | undefined {
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

function closeAcross(
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

/** Each end of the run has its own run-on, as wide as the unrouted edge there; the rest of the run stays as it is. */
function goAround(run: UnroutedRun, a: Side, b: Side, options: PassageOptions): Passage {
  const { runOn, beyond } = options;
  if (run.edges.length === 1) {
    const asDrawn = {
      short: run.edges,
      long: run.edges,
      passedOver: run.edges,
      pastCorner: [],
      pastRunOn: [],
    };
    return { gap: describe(run, 'around', 0, a.corner), ...asDrawn };
  }
  const before = moveEnd(a, run.edges[1]!, runOn);
  const after = moveEnd(b, run.edges.at(-2)!, runOn);
  const aside = { id: `${nameOf(run.edges[0]!)}.side`, role: 'left' } as const;
  const bside = { id: `${nameOf(run.edges.at(-1)!)}.side`, role: 'left' } as const;
  const short = [
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
  const long = detour(run, a, b, options) ?? run.edges;
  return {
    gap,
    short,
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

function stripsPastCorner(sides: readonly Side[], beyond: number, runOn: number): Outline[] {
  return sides
    .filter((side) => side.runsOn)
    .map((side) =>
      wasteStrip(side, side.corner, scale(side.endAlong, -1), {
        long: runOn + 2 * beyond,
        wide: 2 * beyond,
        tuck: 'backwards',
      }),
    );
}

function meeting(a: Side, at: Vec, b: Side): Edge[] {
  return [line(a.corner, at, a.routed.tag), line(at, b.corner, b.routed.tag)];
}

function describe(run: UnroutedRun, kind: Gap['kind'], runOn: number, at: Vec): Gap {
  return { edges: [...new Set(run.edges.map((edge) => edge.tag.id))], kind, runOn, at };
}

function nameOf(edge: Edge): string {
  return `run-on.${edge.tag.id}`;
}

function hasLength(edge: Edge): boolean {
  return distance(edge.from, edge.to) > 0;
}

/** How far the run stands out beyond the straight line across it, mm; no more than that line is long. */
function protrusion(run: UnroutedRun): number {
  const from = run.edges[0]!.from;
  const across = subtract(run.edges.at(-1)!.to, from);
  const wide = Math.hypot(across.x, across.y);
  if (wide === 0) return 0;
  const heights = samples(run).map((p) => -cross(across, subtract(p, from)) / wide);
  return Math.min(wide, Math.max(0, ...heights));
}

/** Does the run lie on the wood's side (left) of every leg of a path? */
function liesWithin(run: UnroutedRun, path: readonly Vec[]): boolean {
  const points = samples(run);
  return path.slice(1).every((to, at) => {
    const from = path[at]!;
    const leg = subtract(to, from);
    const long = Math.hypot(leg.x, leg.y);
    return points.every((p) => cross(leg, subtract(p, from)) >= -POSITION_TOLERANCE * long);
  });
}

function samples(run: UnroutedRun): Vec[] {
  return run.edges.flatMap((edge) =>
    edge.kind === 'line' ? [edge.from, edge.to] : [0, 0.25, 0.5, 0.75, 1].map((t) => pointAt(edge, t)),
  );
}
