import type { Edge, EdgeTag, Vec } from '../api.ts';
import { line } from '../edge.ts';
import { nearestOnEdge, nearestOnEdges } from '../measure/nearest.ts';
import { POSITION_TOLERANCE } from '../tolerance.ts';
import { distance } from '../vec.ts';
import { arcWithin } from './arc-within.ts';
import { biarcBetween } from './biarc.ts';
import { fewestPieces, type Piece, type State } from './fewest-pieces.ts';
import { localFit } from './local-fit.ts';

export interface FitPointsOptions {
  /** How far any point may lie from the arcs, mm. */
  readonly tolerance: number;
  /** Arcs join without a kink (the default); otherwise each begins and ends at a point, with kinks between. */
  readonly smooth?: boolean;
  /** The last point leads back to the first. */
  readonly closed?: boolean;
  /** Points (counted from 0) that are corners: the arcs meet exactly there, with a kink. */
  readonly corners?: readonly number[];
}

export type FitPointsResult =
  | {
      readonly ok: true;
      readonly edges: readonly Edge[];
      /** Largest distance of a point from the arcs, mm. */
      readonly deviation: number;
    }
  | { readonly ok: false; readonly reason: 'too-few-points' };

/** Points at which arcs may join; of more, every so many are taken. */
const MOST_NODES = 96;
/** Directions tried at each: the fitted one, and turned by this many times tolerance over reach. */
const TURNS = [0, -1, 1, -2, 2];

/**
 * Few lines and arcs along a sequence of points, such as a tracing: every point lies within the tolerance of them.
 *
 * Between corners a single line or arc is tried first. Otherwise joints are chosen among the points. Sharp: arcs from point
 * to point. Smooth: pairs of arcs between places and directions that a local fit gives, with the tremor taken out, the directions
 * also turned a little either way. The fewest pieces are found by search, level by level; they are the fewest among these
 * choices. The first and last point and the corners are met exactly. Points closer than POSITION_TOLERANCE count as one.
 * Where smooth arcs cannot follow (points sparser than their bends) sharp ones stand in, and lines from point to point
 * at the very worst. Throws a RangeError for a tolerance that is not positive and for numbers that are not finite.
 */
export function fitArcsToPoints(
  points: readonly Vec[],
  tag: EdgeTag,
  options: FitPointsOptions,
): FitPointsResult {
  const { tolerance, smooth = true, closed = false, corners = [] } = options;
  if (!(tolerance > 0)) throw new RangeError(`the tolerance of a fit must be positive, not ${tolerance}`);
  for (const { x, y } of points) {
    if (!Number.isFinite(x) || !Number.isFinite(y)) throw new RangeError(`(${x}, ${y}) is no point`);
  }
  const isCorner = new Set(corners);
  const kept = apart(
    points.map((at, i) => ({ at, isCorner: isCorner.has(i) })),
    closed,
  );
  if (kept.length < (closed ? 3 : 2)) return { ok: false, reason: 'too-few-points' };
  const first = closed ? kept.findIndex((point) => point.isCorner) : 0;
  const isRound = closed && first === -1;
  const turned = first > 0 ? [...kept.slice(first), ...kept.slice(0, first)] : kept;
  const loop = closed ? [...turned, turned[0]!] : turned;
  const edges: Edge[] = [];
  for (let from = 0, i = 1; i < loop.length; i++) {
    if (!loop[i]!.isCorner && i < loop.length - 1) continue;
    const run = loop.slice(from, i + 1).map(({ at }) => at);
    edges.push(...fitRun(run, isRound, smooth, tolerance, tag));
    from = i;
  }
  const deviation = Math.max(...kept.map(({ at }) => nearestOnEdges(edges, at).distance));
  return { ok: true, edges, deviation };
}

interface TracedPoint {
  readonly at: Vec;
  readonly isCorner: boolean;
}

/** Points of one place made one, a corner if any of them is. */
function apart(points: readonly TracedPoint[], closed: boolean): TracedPoint[] {
  const kept: TracedPoint[] = [];
  for (const point of points) {
    const last = kept.at(-1);
    if (last === undefined || distance(last.at, point.at) > POSITION_TOLERANCE) kept.push(point);
    else if (point.isCorner) kept[kept.length - 1] = { at: last.at, isCorner: true };
  }
  const [first, last] = [kept[0], kept.at(-1)];
  const meets =
    first !== undefined && last !== undefined && distance(first.at, last.at) <= POSITION_TOLERANCE;
  if (closed && kept.length > 1 && meets) {
    kept.pop();
    if (last.isCorner) kept[0] = { at: first.at, isCorner: true };
  }
  return kept;
}

function fitRun(
  run: readonly Vec[],
  isRound: boolean,
  smooth: boolean,
  tolerance: number,
  tag: EdgeTag,
): Edge[] {
  const single = isRound ? undefined : arcWithin(run, tolerance, tag);
  if (single !== undefined) return [single];
  const fits =
    (smooth ? smoothArcs(run, isRound, tolerance, tag) : undefined) ?? sharpArcs(run, tolerance, tag);
  return fits ?? run.slice(1).map((to, i) => line(run[i]!, to, tag));
}

/** Every point, or of many every so many, the ends among them. */
function nodesOf(count: number): number[] {
  const nodes = Math.min(count, MOST_NODES);
  return Array.from({ length: nodes }, (_, i) => Math.round((i * (count - 1)) / (nodes - 1)));
}

function sharpArcs(run: readonly Vec[], tolerance: number, tag: EdgeTag): Edge[] | undefined {
  const nodes = nodesOf(run.length);
  const pieceBetween = (from: State, to: State): Piece<Edge> | undefined => {
    const points = run.slice(nodes[from.node]!, nodes[to.node]! + 1);
    const edge = arcWithin(points, tolerance, tag);
    if (edge === undefined) return undefined;
    return { shape: edge, stray: Math.max(...points.map((p) => nearestOnEdge(edge, p).distance)) };
  };
  return fewestPieces(nodes.length, 1, [{ node: 0, way: 0 }], () => true, pieceBetween);
}

function smoothArcs(
  run: readonly Vec[],
  isRound: boolean,
  tolerance: number,
  tag: EdgeTag,
): Edge[] | undefined {
  const last = run.length - 1;
  const nodes = nodesOf(run.length);
  const round = isRound ? run.slice(0, -1) : run;
  const places = nodes.map((i) => {
    const fit = localFit(round, i % round.length, isRound, tolerance / 2);
    const isEnd = (i === 0 || i === last) && !isRound;
    const at = isEnd || distance(fit.at, run[i]!) > tolerance / 2 ? run[i]! : fit.at;
    const turns = TURNS.map((turn) => turned(fit.direction, (turn * tolerance) / fit.reach));
    return { at, turns };
  });
  const pieceBetween = (from: State, to: State): Piece<Edge[]> | undefined => {
    const a = places[from.node]!;
    const b = places[to.node]!;
    const pair = biarcBetween(a.at, a.turns[from.way]!, b.at, b.turns[to.way]!, 1, tag);
    if (pair === undefined) return undefined;
    const shape = [pair.first, pair.second];
    const stray = strayOf(run, nodes[from.node]!, nodes[to.node]!, shape, tolerance);
    return stray <= tolerance ? { shape, stray } : undefined;
  };
  const solve = (starts: readonly State[], isEnd: (state: State) => boolean): Edge[] | undefined =>
    fewestPieces(nodes.length, TURNS.length, starts, isEnd, pieceBetween)?.flat();
  const all = TURNS.map((_, way) => ({ node: 0, way }));
  if (!isRound) return solve(all, () => true);
  // Round and round: it ends in the direction in which it began.
  const rings = all.map((start) => solve([start], ({ way }) => way === start.way));
  return rings.filter((ring) => ring !== undefined).sort((a, b) => a.length - b.length)[0];
}

/** How far the points between two of a run stray from edges; the middle one first, and no further once it is too far. */
function strayOf(
  run: readonly Vec[],
  from: number,
  to: number,
  edges: readonly Edge[],
  most: number,
): number {
  const middle = run[(from + to) >> 1]!;
  let stray = nearestOnEdges(edges, middle).distance;
  for (let i = from; i <= to && stray <= most; i++)
    stray = Math.max(stray, nearestOnEdges(edges, run[i]!).distance);
  return stray;
}

function turned({ x, y }: Vec, angle: number): Vec {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return { x: c * x - s * y, y: s * x + c * y };
}
