import {
  add3,
  dot3,
  FIGURE_ROUNDING,
  length3,
  POSITION_TOLERANCE,
  scale3,
  subtract3,
  type Vec3,
} from '../../geometry/index.ts';
import { solveLinear } from '../statics/solve-linear.ts';

/** The point of a convex body that lies farthest in a direction. */
export type Support = (direction: Vec3) => Vec3;

export interface Apart {
  /** mm; 0 when they meet. */
  readonly distance: number;
  /** Where they are nearest, on each; anywhere in common when they meet. */
  readonly on: readonly [Vec3, Vec3];
}

/** A point of both bodies and their difference. */
interface Corner {
  readonly a: Vec3;
  readonly b: Vec3;
  readonly p: Vec3;
}

/** More than bodies with round sides take to come within a nanometre. */
const MOST_STEPS = 500;

/**
 * Least distance of two convex bodies, by Gilbert, Johnson and Keerthi (1988): the point of their difference nearest to nothing, searched with a
 * simplex of its outermost points. Stops when the bound from below is within POSITION_TOLERANCE.
 */
export function convexDistance(a: Support, b: Support, towards: Vec3): Apart {
  const corner = (direction: Vec3): Corner => {
    const [onA, onB] = [a(direction), b(scale3(direction, -1))];
    return { a: onA, b: onB, p: subtract3(onA, onB) };
  };
  let simplex: readonly Corner[] = [corner(towards)];
  let near = weigh(simplex, [1]);
  for (let step = 0; step < MOST_STEPS; step++) {
    const distance = length3(near.p);
    if (distance <= POSITION_TOLERANCE) return { distance: 0, on: [near.a, near.b] };
    const next = corner(scale3(near.p, -1));
    const bound = dot3(next.p, near.p) / distance;
    if (distance - bound <= POSITION_TOLERANCE) break;
    const found = nearestOfSimplex([...simplex, next]);
    // Rounding has the last word where the simplex is as thin as it.
    if (length3(found.near.p) >= distance) break;
    ({ simplex, near } = found);
  }
  return { distance: length3(near.p), on: [near.a, near.b] };
}

function weigh(corners: readonly Corner[], weights: readonly number[]): Corner {
  const sum = (of: (corner: Corner) => Vec3): Vec3 =>
    corners.reduce<Vec3>((total, corner, i) => add3(total, scale3(of(corner), weights[i]!)), {
      x: 0,
      y: 0,
      z: 0,
    });
  return { a: sum(({ a }) => a), b: sum(({ b }) => b), p: sum(({ p }) => p) };
}

/** The point of a simplex nearest to the origin, and the corners that it lies between: the best of all its faces. */
function nearestOfSimplex(corners: readonly Corner[]): {
  readonly simplex: readonly Corner[];
  readonly near: Corner;
} {
  let best: { readonly simplex: readonly Corner[]; readonly near: Corner } | undefined;
  for (let mask = 1; mask < 1 << corners.length; mask++) {
    const face = corners.filter((_, i) => mask & (1 << i));
    const weights = weightsOfNearest(face);
    if (weights === undefined || weights.some((weight) => weight < -FIGURE_ROUNDING)) continue;
    const near = weigh(face, weights);
    if (best === undefined || length3(near.p) < length3(best.near.p)) best = { simplex: face, near };
  }
  return best!;
}

/** Weights of the point nearest to the origin on the flat through the corners; nothing when they do not span it. */
function weightsOfNearest(face: readonly Corner[]): readonly number[] | undefined {
  const [first, ...rest] = face as [Corner, ...Corner[]];
  const ways = rest.map(({ p }) => subtract3(p, first.p));
  const found = solveLinear(
    ways.map((u) => ways.map((v) => dot3(u, v))),
    ways.map((u) => -dot3(u, first.p)),
  );
  if (found === undefined) return undefined;
  return [1 - found.reduce((a, b) => a + b, 0), ...found];
}
