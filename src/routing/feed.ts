import {
  type Arc,
  add,
  angleOf,
  directionAt,
  distance,
  type Edge,
  intersectEdges,
  line,
  pointAt,
  reverseEdge,
  scale,
  subtract,
  sweepOf,
} from '../geometry/index.ts';
import { grainAt, type SketchedPart } from '../sketch/index.ts';
import type { FeedRun, Tooling } from './api.ts';
import { isRouted } from './outline/find-runs.ts';

const DEGREE = Math.PI / 180;

/** Within this of parallel to the grain a cut is neutral (rad). */
const NEUTRAL = 2 * DEGREE;

/** From this on, within 15° of square to the grain, it is end grain (rad). */
const END = 75 * DEGREE;

/**
 * Every routed edge in the direction of feed, split where the cut meets the grain in another way: lines whole, arcs at
 * the exact turning places. Hand-held, an outside edge is fed anticlockwise and an inside edge clockwise as seen from
 * above, which is the way that outlines and holes run; on a table both are reversed. The cut runs with the grain where the
 * grain, taken in the direction of feed, leads out of the wood. In a part of several pieces each has its own grain.
 */
export function feedRuns(
  part: Pick<SketchedPart, 'region' | 'grain' | 'pieces'>,
  machine: Tooling['machine'],
): FeedRun[] {
  const { region } = part;
  return [region.outer, ...region.holes].flatMap(({ edges }) => {
    const inOrder = machine === 'hand-held' ? edges : [...edges].reverse().map(reverseEdge);
    // The wood lies left of edges as they are stored, so right of them once they are reversed.
    const wood = machine === 'hand-held' ? 1 : -1;
    return inOrder.filter(isRouted).flatMap((edge) =>
      splitAtPieces(edge, part).flatMap((stretch) => {
        const grain = grainAt(part, pointAt(stretch, 0.5));
        return splitAtTurns(stretch, grain).map((path) => ({
          edge: edge.tag.id,
          path,
          grain: meets(path, grain, wood),
        }));
      }),
    );
  });
}

function meets(path: Edge, grain: number, wood: 1 | -1): FeedRun['grain'] {
  const lean = leanOfGrain(angleOf(directionAt(path, 0.5)), grain);
  const away = Math.abs(lean);
  if (away <= NEUTRAL) return 'neutral';
  if (away >= END) return 'end';
  // Grain that leans away from the wood's side leads out of it.
  return lean * wood < 0 ? 'with' : 'against';
}

/** Angle from the direction of feed to the grain line, in (−π/2, π/2]: anticlockwise positive. */
function leanOfGrain(feed: number, grain: number): number {
  const lean = (grain - feed) % Math.PI;
  if (lean > Math.PI / 2) return lean - Math.PI;
  if (lean <= -Math.PI / 2) return lean + Math.PI;
  return lean;
}

/** Cut where the lines between pieces cross it. */
function splitAtPieces(edge: Edge, { pieces = [] }: Pick<SketchedPart, 'pieces'>): Edge[] {
  const shares = pieces
    .flatMap(({ leftOf: { from, to } }) => {
      const reach = scale(subtract(to, from), LINE_REACH / distance(from, to));
      const cut = line(subtract(from, reach), add(to, reach), edge.tag);
      const meeting = intersectEdges(edge, cut);
      // Along the line, or touching it, the edge stays in one piece.
      return meeting.kind === 'points' ? meeting.points.map(({ onA }) => onA) : [];
    })
    .filter((share) => share > SHORTEST && share < 1 - SHORTEST)
    .sort((a, b) => a - b);
  const stops = [0, ...shares, 1];
  return stops.slice(1).map((stop, i) => ({
    ...edge,
    from: pointAt(edge, stops[i]!),
    to: pointAt(edge, stop),
  }));
}

/** A line between pieces has no ends: so far beyond its two points, mm, lies no part. */
const LINE_REACH = 1e4;

function splitAtTurns(edge: Edge, grain: number): Edge[] {
  if (edge.kind === 'line') return [edge];
  const start = angleOf(directionAt(edge, 0));
  const sweep = sweepOf(edge);
  const shares = [-END, -NEUTRAL, NEUTRAL, END]
    .flatMap((lean) => sharesAtDirection(edge, start, sweep, grain - lean))
    .sort((a, b) => a - b);
  const stops = [0, ...shares, 1];
  const pieces: Arc[] = [];
  for (let at = 0; at + 1 < stops.length; at++) {
    pieces.push({ ...edge, from: pointAt(edge, stops[at]!), to: pointAt(edge, stops[at + 1]!) });
  }
  return pieces;
}

/** Shares of an arc's length, strictly inside it, at which it runs along a line of this direction, either way. */
function sharesAtDirection(edge: Arc, start: number, sweep: number, direction: number): number[] {
  const ahead = (edge.turn * (direction - start)) % Math.PI;
  const shares: number[] = [];
  for (let turned = ahead < 0 ? ahead + Math.PI : ahead; turned < sweep; turned += Math.PI) {
    const share = turned / sweep;
    if (share > SHORTEST && share < 1 - SHORTEST) shares.push(share);
  }
  return shares;
}

/** Share of an arc below which a run of its own would be rounding only. */
const SHORTEST = 1e-9;
