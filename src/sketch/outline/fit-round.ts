/**
 * A round between two runs of edges that meet at a corner, exactly tangent to both.
 *
 * Its centre lies at the radius' distance from both runs, on the side to which the corner turns: at a crossing of the two runs
 * moved sideways by the radius. A line moved is a line; an arc moved is an arc about the same centre, its radius
 * changed. Each pair of edges gives at most two centres; those count whose points of touch lie on the two edges
 * themselves, and the one that takes least away is the round. Touch points come from the centre by projection, so that they
 * are exact to rounding.
 */
import {
  ANGLE_TOLERANCE,
  type Arc,
  add,
  arc,
  cross,
  directionAt,
  distance,
  dot,
  type Edge,
  type EdgeTag,
  leftOf,
  lengthOf,
  POSITION_TOLERANCE,
  scale,
  subtract,
  sweepOf,
  unit,
  type Vec,
} from '../../geometry/index.ts';
import { meetMoved, moveSideways } from './moved-edge.ts';
import { keepAfter, keepBefore } from './side.ts';

/** A round that fits: what is left of the two runs, and the arc between them. */
export interface FittedRound {
  readonly before: readonly Edge[];
  readonly round: Arc;
  readonly after: readonly Edge[];
}

/** To which side a corner turns: 1 left, −1 right, 0 when it runs on smoothly or back on itself. */
export function turnAtCorner(before: Edge, after: Edge): 1 | -1 | 0 {
  const turn = cross(directionAt(before, 1), directionAt(after, 0));
  if (Math.abs(turn) <= ANGLE_TOLERANCE) return 0;
  return turn > 0 ? 1 : -1;
}

/** The round of a radius (mm) between two runs; nothing when it does not fit. */
export function fitRound(
  before: readonly Edge[],
  after: readonly Edge[],
  radius: number,
  tag: EdgeTag,
): FittedRound | undefined {
  const turn = turnAtCorner(before.at(-1)!, after[0]!);
  if (turn === 0) return undefined;
  let best:
    | { readonly taken: number; readonly i: number; readonly j: number; readonly centre: Vec }
    | undefined;
  let takenBefore = 0;
  for (let i = before.length - 1; i >= 0; i -= 1) {
    let takenAfter = 0;
    for (let j = 0; j < after.length; j += 1) {
      if (best !== undefined && takenBefore + takenAfter >= best.taken) break;
      const [a, b] = [before[i]!, after[j]!];
      for (const centre of meetMoved(moveSideways(a, turn * radius), moveSideways(b, turn * radius))) {
        const onA = shareAt(a, centre);
        const onB = shareAt(b, centre);
        if (onA === undefined || onB === undefined) continue;
        const taken = takenBefore + (1 - onA) * lengthOf(a) + takenAfter + onB * lengthOf(b);
        if (best === undefined || taken < best.taken) best = { taken, i, j, centre };
      }
      takenAfter += lengthOf(after[j]!);
    }
    takenBefore += lengthOf(before[i]!);
  }
  if (best === undefined) return undefined;
  const { i, j, centre } = best;
  const from = touchOf(before[i]!, centre, before[i]!.from);
  const to = touchOf(after[j]!, centre, after[j]!.to);
  const kept = { before: keepBefore(before, i, from), after: keepAfter(after, j, to) };
  const exactFrom = kept.before.at(-1)?.to ?? before[0]!.from;
  const exactTo = kept.after[0]?.from ?? after.at(-1)!.to;
  if (distance(exactFrom, exactTo) <= POSITION_TOLERANCE) return undefined;
  return { ...kept, round: { ...arc(exactFrom, exactTo, centre, turn, tag), radius } };
}

/** The largest radius that fits, mm, to within POSITION_TOLERANCE; 0 when none does. `above` is a radius that does not. */
export function largestRound(
  before: readonly Edge[],
  after: readonly Edge[],
  above: number,
  tag: EdgeTag,
): number {
  let fits = 0;
  let fails = above;
  while (fails - fits > POSITION_TOLERANCE) {
    const radius = (fits + fails) / 2;
    if (fitRound(before, after, radius, tag) === undefined) fails = radius;
    else fits = radius;
  }
  return fits;
}

/** Where the perpendicular from a centre meets the edge, exactly at an end that is no farther than a position can be told. */
function touchOf(edge: Edge, centre: Vec, end: Vec): Vec {
  const touch = perpendicularFoot(edge, centre);
  return distance(touch, end) <= POSITION_TOLERANCE ? end : touch;
}

function perpendicularFoot(edge: Edge, centre: Vec): Vec {
  if (edge.kind === 'arc') return add(edge.centre, scale(unit(subtract(centre, edge.centre)), edge.radius));
  const along = directionAt(edge, 0);
  return add(edge.from, scale(along, dot(subtract(centre, edge.from), along)));
}

/** Share of the edge's length at which the round touches it; nothing when that is beyond its ends. */
function shareAt(edge: Edge, centre: Vec): number | undefined {
  if (edge.kind === 'line') {
    const along = directionAt(edge, 0);
    return within(dot(subtract(centre, edge.from), along) / lengthOf(edge), edge);
  }
  const arm = subtract(edge.from, edge.centre);
  const touch = subtract(perpendicularFoot(edge, centre), edge.centre);
  const turned = Math.atan2(dot(scale(leftOf(arm), edge.turn), touch), dot(arm, touch));
  const sweep = sweepOf(edge);
  const slack = POSITION_TOLERANCE / edge.radius;
  const ahead = turned < -slack ? turned + 2 * Math.PI : turned;
  return within(ahead / sweep, edge);
}

function within(share: number, edge: Edge): number | undefined {
  const slack = POSITION_TOLERANCE / lengthOf(edge);
  if (share < -slack || share > 1 + slack) return undefined;
  return Math.min(1, Math.max(0, share));
}
