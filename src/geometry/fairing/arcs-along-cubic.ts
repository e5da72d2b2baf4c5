import type { Edge, EdgeTag, Vec } from '../api.ts';
import { line } from '../edge.ts';
import { distance, leftOf, norm, subtract } from '../vec.ts';
import { type Biarc, biarcBetween } from './biarc.ts';
import {
  type Cubic,
  curvatureOfCubic,
  directionOfCubic,
  extentOfCubic,
  pointOfCubic,
  stretchOfCubic,
  velocityOfCubic,
} from './cubic.ts';

/** Arcs that stand for a curve, and how far at most they lie from it, mm. */
export interface ArcFit {
  readonly edges: readonly Edge[];
  readonly deviation: number;
}

/** Directions that the arcs must leave and arrive in; without them the curve's own, eased where that saves arcs. */
export interface EndDirections {
  readonly leaving?: Vec;
  readonly arriving?: Vec;
}

/**
 * Tangent-continuous arcs along one cubic, in pairs, starting and ending exactly at its ends.
 *
 * Let curvature change at a rate k along the curve. A pair of arcs over a length 2ℓ that starts and ends tangent to the
 * curve strays from it by k ℓ³ / 40. Arcs that cross the curve at each joint by the small angle k ℓ² / 12 stray by
 * k ℓ³ / 125 only: a third fewer are needed. Where the end of the curve holds its direction, one arc of ℓ / √2 leads
 * from no angle to that one. So the breaks between pairs lie on the curve, at equal steps of ∫ ∛k ds, with the
 * directions eased by that angle; what each pair really strays by is measured, and the steps are corrected.
 * The smallest number of pairs that holds the tolerance wins. Where none does (a cusp), the curve is halved.
 */
export function arcsAlongCubic(cubic: Cubic, ends: EndDirections, tolerance: number, tag: EdgeTag): ArcFit {
  return fitOrHalve(cubic, ends, tolerance, tag, 0);
}

/** An evenly straying arc of length ℓ strays by k ℓ³ / 36√12 and crosses the curve at k ℓ² / 12 at both its joints. */
const EASED = 36 * Math.sqrt(12);
const EASING = 12;
/** Length of the arc between a held direction and the first crossing, in evenly straying arcs. */
const HELD = Math.SQRT1_2;
/** Steps in which the curve is surveyed, and places at which each pair of arcs is measured, at first and for proof. */
const SURVEY = 32;
const COARSE = 16;
const DENSE = 48;
/** Part of the tolerance that measured straying may use: between two samples it may be higher by less than the rest. */
const USED = 0.98;
/** How often the steps are corrected for one number of pairs. */
const ROUNDS = 3;
/** Easing beyond this angle (rad) is a sign that the curve is not followed at all. */
const MOST_EASING = 0.05;
/** How many pairs beyond the estimate are tried, and how many at most, before the curve is halved. */
const MORE = 5;
const MOST_PAIRS = 64;
/** At a cusp halving ends in a piece of no size; this only bounds it. */
const DEEPEST = 40;
/** A curve that leaves its chord by less than this share of its size is straight. */
const ROUNDING = 1e-12;

function fitOrHalve(
  cubic: Cubic,
  ends: EndDirections,
  tolerance: number,
  tag: EdgeTag,
  depth: number,
): ArcFit {
  const size = extentOfCubic(cubic);
  if (size === 0) return { edges: [], deviation: 0 };
  const flat = strayFromChord(cubic);
  const isFree = ends.leaving === undefined && ends.arriving === undefined;
  const isStraight = flat <= size * ROUNDING;
  if (isStraight || (size <= tolerance && (isFree || depth > 0)) || depth === DEEPEST) {
    return { edges: [line(cubic.p0, cubic.p3, tag)], deviation: flat };
  }
  const survey = surveyOf(cubic);
  const arcs = survey.total / Math.cbrt(EASED * tolerance);
  const least = Math.max(1, Math.floor(arcs / 2));
  for (let pairs = least; pairs <= least + MORE && pairs <= MOST_PAIRS; pairs++) {
    const found = fitPairs(cubic, survey.steps, pairs, ends, tolerance, tag);
    if (found !== undefined) return found;
  }
  const direction = directionOfCubic(cubic, 0.5);
  const { leaving, arriving } = ends;
  const before = leaving === undefined ? { arriving: direction } : { leaving, arriving: direction };
  const after = arriving === undefined ? { leaving: direction } : { leaving: direction, arriving };
  const a = fitOrHalve(stretchOfCubic(cubic, 0, 0.5), before, tolerance, tag, depth + 1);
  const b = fitOrHalve(stretchOfCubic(cubic, 0.5, 1), after, tolerance, tag, depth + 1);
  return { edges: [...a.edges, ...b.edges], deviation: Math.max(a.deviation, b.deviation) };
}

function fitPairs(
  cubic: Cubic,
  survey: readonly number[],
  pairs: number,
  ends: EndDirections,
  tolerance: number,
  tag: EdgeTag,
): ArcFit | undefined {
  let steps = survey;
  const first = ends.leaving === undefined ? 1 : HELD;
  const last = ends.arriving === undefined ? 1 : HELD;
  // How many evenly straying arcs each pair is worth.
  const shares = Array.from(
    { length: pairs },
    (_, i) => (i === 0 ? first : 1) + (i === pairs - 1 ? last : 1),
  );
  for (let round = 0; round < ROUNDS; round++) {
    const breaks = breaksOf(steps, shares);
    const fits = pairsBetween(cubic, breaks, shares, ends, tag);
    if (fits === undefined) return undefined;
    if (fits.every(({ stray }) => stray <= USED * tolerance)) {
      const strays = fits.map((fit, i) => strayOf(fit, cubic, breaks[i]!, breaks[i + 1]!, DENSE));
      const deviation = Math.max(...strays);
      if (deviation <= USED * tolerance) {
        return { edges: fits.flatMap(({ pair }) => [pair.first, pair.second]), deviation };
      }
    }
    if (pairs === 1) return undefined;
    steps = corrected(steps, breaks, fits);
  }
  return undefined;
}

interface PairBetween {
  readonly pair: Biarc;
  readonly leaving: Vec;
  readonly arriving: Vec;
}

interface PairFit extends PairBetween {
  readonly stray: number;
}

function pairsBetween(
  cubic: Cubic,
  breaks: readonly number[],
  shares: readonly number[],
  ends: EndDirections,
  tag: EdgeTag,
): PairFit[] | undefined {
  const points = breaks.map((u) => pointOfCubic(cubic, u));
  const arcs = shares.map((share, i) => distance(points[i]!, points[i + 1]!) / share);
  const last = shares.length;
  const fits: PairFit[] = [];
  let leaving = ends.leaving ?? easedDirection(cubic, 0, arcs[0]!);
  for (let i = 0; i < last; i++) {
    const u = breaks[i + 1]!;
    const isEnd = i + 1 === last;
    const arc = isEnd ? arcs[i]! : (arcs[i]! + arcs[i + 1]!) / 2;
    const arriving = isEnd && ends.arriving !== undefined ? ends.arriving : easedDirection(cubic, u, arc);
    const first = i === 0 && ends.leaving !== undefined ? HELD : 1;
    const pair = biarcBetween(
      points[i]!,
      leaving,
      points[i + 1]!,
      arriving,
      first / (shares[i]! - first),
      tag,
    );
    if (pair === undefined) return undefined;
    const fit = { pair, leaving, arriving };
    fits.push({ ...fit, stray: strayOf(fit, cubic, breaks[i]!, u, COARSE) });
    leaving = arriving;
  }
  return fits;
}

/** The curve's direction, turned by the angle at which evenly straying arcs of a length cross it. */
function easedDirection(cubic: Cubic, u: number, arc: number): Vec {
  const direction = directionOfCubic(cubic, u);
  const { change } = curvatureOfCubic(cubic, u);
  if (!Number.isFinite(change)) return direction;
  const angle = Math.max(-MOST_EASING, Math.min(MOST_EASING, (change * arc * arc) / EASING));
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return { x: c * direction.x + s * direction.y, y: c * direction.y - s * direction.x };
}

/**
 * How far the curve between two parameters strays at most from the pair that stands for it, mm, by sampling: off its
 * circles, or beyond its ends. (Neither arc turns by a quarter, so that beyond an end means behind it.)
 */
function strayOf(
  { pair, leaving, arriving }: PairBetween,
  cubic: Cubic,
  from: number,
  to: number,
  samples: number,
): number {
  const { first, second, direction } = pair;
  let most = 0;
  for (let i = 1; i < samples; i++) {
    const p = pointOfCubic(cubic, from + ((to - from) * i) / samples);
    const isFirst = ahead(first.to, direction, p) < 0;
    const beyond = isFirst ? -ahead(first.from, leaving, p) : ahead(second.to, arriving, p);
    const off = Math.max(distanceToCarrier(isFirst ? first : second, p), beyond);
    if (!(off <= most)) most = off;
  }
  return most;
}

function ahead(at: Vec, direction: Vec, p: Vec): number {
  return (p.x - at.x) * direction.x + (p.y - at.y) * direction.y;
}

function distanceToCarrier(edge: Edge, p: Vec): number {
  if (edge.kind === 'arc') return Math.abs(norm(p.x - edge.centre.x, p.y - edge.centre.y) - edge.radius);
  const dx = edge.to.x - edge.from.x;
  const dy = edge.to.y - edge.from.y;
  return Math.abs(dx * (p.y - edge.from.y) - dy * (p.x - edge.from.x)) / norm(dx, dy);
}

/** ∛(change of curvature) · length over each step of the parameter, and in all. */
function surveyOf(cubic: Cubic): { readonly steps: readonly number[]; readonly total: number } {
  const steps: number[] = [];
  for (let i = 0; i < SURVEY; i++) {
    const u = (i + 0.5) / SURVEY;
    const { change } = curvatureOfCubic(cubic, u);
    const v = velocityOfCubic(cubic, u);
    const weight = (Math.cbrt(Math.abs(change)) * norm(v.x, v.y)) / SURVEY;
    steps.push(Number.isFinite(weight) ? weight : 0);
  }
  const total = steps.reduce((sum, step) => sum + step, 0);
  // A floor, so that stretches of steady curvature do not fall to a single endless step.
  const floor = total > 0 ? (0.1 * total) / SURVEY : 1;
  return { steps: steps.map((step) => step + floor), total };
}

/** Parameters that part the survey into sums in proportion to the shares. */
function breaksOf(steps: readonly number[], shares: readonly number[]): number[] {
  const whole = steps.reduce((sum, step) => sum + step, 0) / shares.reduce((sum, share) => sum + share, 0);
  const breaks = [0];
  let sum = 0;
  let next = whole * shares[0]!;
  for (const [i, step] of steps.entries()) {
    while (breaks.length < shares.length && sum + step >= next) {
      breaks.push((i + (next - sum) / step) / steps.length);
      next += whole * shares[breaks.length - 1]!;
    }
    sum += step;
  }
  breaks.push(1);
  return breaks;
}

/** The survey weighted by what each pair was found to stray, so that the next breaks even it out. */
function corrected(steps: readonly number[], breaks: readonly number[], fits: readonly PairFit[]): number[] {
  const mean = fits.reduce((sum, { stray }) => sum + Math.cbrt(stray), 0) / fits.length;
  return steps.map((step, i) => {
    const u = (i + 0.5) / steps.length;
    const at = breaks.findIndex((end, k) => k > 0 && u <= end) - 1;
    const share = Math.cbrt(fits[at]?.stray ?? 0) / mean;
    return step * Math.max(0.5, Math.min(2, share));
  });
}

/** No point of the curve is farther than this from its chord, mm (its control points are not). */
function strayFromChord({ p0, p1, p2, p3 }: Cubic): number {
  const chord = subtract(p3, p0);
  const long = norm(chord.x, chord.y);
  if (long === 0) return Math.max(distance(p0, p1), distance(p0, p2));
  const normal = leftOf(chord);
  const off = (p: Vec): number => Math.abs((p.x - p0.x) * normal.x + (p.y - p0.y) * normal.y) / long;
  const past = (p: Vec): number => {
    const along = ((p.x - p0.x) * chord.x + (p.y - p0.y) * chord.y) / long;
    return Math.max(0, -along, along - long);
  };
  return Math.max(off(p1), off(p2), past(p1), past(p2));
}
