import type { Edge, EdgeTag, Vec } from '../api.ts';
import { FAIRING_TOLERANCE, POSITION_TOLERANCE } from '../tolerance.ts';
import { cross, distance, dot, length, scale, subtract } from '../vec.ts';
import { arcsAlongCubic, type EndDirections } from './arcs-along-cubic.ts';
import { battenSpline } from './batten-spline.ts';
import { type Cubic, directionOfCubic, velocityOfCubic } from './cubic.ts';

/** Why nails cannot be faired: fewer than two; two in one place; the batten would have to turn back on itself. */
export type BattenFault = 'too-few-nails' | 'coincident-nails' | 'reversal';

export type BattenResult =
  | {
      readonly ok: true;
      /** Tangent-continuous arcs and lines from the first nail to the last. */
      readonly edges: readonly Edge[];
      /** How far at most the arcs lie from the spline, mm, as measured. */
      readonly deviation: number;
    }
  | {
      readonly ok: false;
      readonly reason: BattenFault;
      /** Where, when a place is meant. */
      readonly at?: Vec;
      /** The nail, counted from 0: the first of two that coincide, or the one at or after which the batten turns back. */
      readonly nail: number;
    };

/** A batten that turns by more than this at a nail, or from nail to nail, is turned back on itself, not bent (rad). */
const SHARPEST_TURN = (150 / 180) * Math.PI;
const MOST_BETWEEN_NAILS = Math.PI * 1.25;
/** Speed of the spline (1 is that of its chords) below which it forms a cusp. */
const LEAST_SPEED = 0.02;
const LOOKS = 16;

/**
 * A batten curve: tangent-continuous arcs within a tolerance (mm) of the C2 interpolating spline through the nails by chord
 * length (see battenSpline), passing exactly through every nail and leaving and arriving exactly in the directions of travel
 * given (of any length). Two nails without directions give a line. Throws a RangeError for numbers that are not finite, for a
 * direction of no length and for a tolerance that is not positive.
 */
export function fairBatten(
  nails: readonly Vec[],
  directions: EndDirections,
  tag: EdgeTag,
  tolerance: number = FAIRING_TOLERANCE,
): BattenResult {
  if (!(tolerance > 0)) throw new RangeError(`the tolerance of a batten must be positive, not ${tolerance}`);
  for (const { x, y } of nails) {
    if (!Number.isFinite(x) || !Number.isFinite(y))
      throw new RangeError(`a nail at (${x}, ${y}) has no place`);
  }
  const ends = normalised(directions);
  const fault = faultOfNails(nails, ends);
  if (fault !== undefined) return fault;
  const cubics = battenSpline(nails, ends);
  for (const [nail, cubic] of cubics.entries()) {
    const at = turningBack(cubic);
    if (at !== undefined) return { ok: false, reason: 'reversal', at, nail };
  }
  // At a nail the change of curvature jumps, so the arcs keep the spline's own direction there.
  const held = [ends.leaving, ...cubics.slice(1).map((cubic) => directionOfCubic(cubic, 0)), ends.arriving];
  const edges: Edge[] = [];
  let deviation = 0;
  for (const [i, cubic] of cubics.entries()) {
    const leaving = held[i];
    const arriving = held[i + 1];
    const span = { ...(leaving && { leaving }), ...(arriving && { arriving }) };
    const fit = arcsAlongCubic(cubic, span, tolerance, tag);
    edges.push(...fit.edges);
    deviation = Math.max(deviation, fit.deviation);
  }
  return { ok: true, edges, deviation };
}

function normalised({ leaving, arriving }: EndDirections): EndDirections {
  return {
    ...(leaving && { leaving: unitOf(leaving) }),
    ...(arriving && { arriving: unitOf(arriving) }),
  };
}

function unitOf(direction: Vec): Vec {
  const long = length(direction);
  if (!(long > 0 && Number.isFinite(long)))
    throw new RangeError(`(${direction.x}, ${direction.y}) is no direction`);
  return scale(direction, 1 / long);
}

function faultOfNails(nails: readonly Vec[], ends: EndDirections): BattenResult | undefined {
  if (nails.length < 2)
    return { ok: false, reason: 'too-few-nails', nail: 0, ...(nails[0] && { at: nails[0] }) };
  for (let i = 1; i < nails.length; i++) {
    const [a, b] = [nails[i - 1]!, nails[i]!];
    if (distance(a, b) <= POSITION_TOLERANCE)
      return { ok: false, reason: 'coincident-nails', at: b, nail: i - 1 };
  }
  const ways = nails.slice(1).map((nail, i) => subtract(nail, nails[i]!));
  const all = [ends.leaving ?? ways[0]!, ...ways, ends.arriving ?? ways.at(-1)!];
  for (const [nail, at] of nails.entries()) {
    if (Math.abs(turnBetween(all[nail]!, all[nail + 1]!)) > SHARPEST_TURN) {
      return { ok: false, reason: 'reversal', at, nail };
    }
  }
  return undefined;
}

/** Where a span between two nails forms a cusp or a loop. */
function turningBack(cubic: Cubic): Vec | undefined {
  const chord = distance(cubic.p0, cubic.p3);
  let before = velocityOfCubic(cubic, 0);
  let turned = 0;
  for (let i = 0; i <= LOOKS; i++) {
    const velocity = velocityOfCubic(cubic, i / LOOKS);
    const turn = turnBetween(before, velocity);
    turned += turn;
    const isTooFar = Math.abs(turn) > Math.PI / 2 || Math.abs(turned) > MOST_BETWEEN_NAILS;
    if (isTooFar || length(velocity) < LEAST_SPEED * chord) return cubic.p0;
    before = velocity;
  }
  return undefined;
}

function turnBetween(a: Vec, b: Vec): number {
  return Math.atan2(cross(a, b), dot(a, b));
}
