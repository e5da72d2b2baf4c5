import { dot3, length3, scale3, subtract3, type Vec3 } from '../../geometry/index.ts';

/** A point of the hull of the differences, with its share in the nearest point found so far. */
interface Corner {
  readonly point: Vec3;
  readonly share: number;
}

const ENOUGH = 1e-7;
const MOST_STEPS = 200;

/**
 * Distance between the hulls of two sets of points, mm: 0 where they meet. The nearest point of the hull of all differences to the origin,
 * by P. Wolfe's method (Finding the nearest point in a polytope, Mathematical Programming 11, 1976): go to the corner farthest ahead, then to the
 * nearest point of the simplex so spanned, dropping corners that lie on its far side.
 */
export function distanceBetweenBodies(a: readonly Vec3[], b: readonly Vec3[]): number {
  const ahead = (towards: Vec3): Vec3 =>
    subtract3(farthest(a, towards), farthest(b, { x: -towards.x, y: -towards.y, z: -towards.z }));
  let corners: readonly Corner[] = [{ point: subtract3(a[0]!, b[0]!), share: 1 }];
  let nearest = corners[0]!.point;
  for (let step = 0; step < MOST_STEPS; step++) {
    const long = length3(nearest);
    if (long < ENOUGH) return 0;
    const next = ahead(scale3(nearest, -1));
    if (dot3(nearest, subtract3(nearest, next)) <= ENOUGH * long) return long;
    corners = nearestSimplex([...corners, { point: next, share: 0 }]);
    nearest = pointOf(corners);
  }
  return length3(nearest);
}

/** The corners that hold the nearest point of their hull to the origin, with its shares. */
function nearestSimplex(start: readonly Corner[]): readonly Corner[] {
  let corners = start;
  for (;;) {
    const flat = affineShares(corners.map(({ point }) => point));
    if (flat === undefined) return corners.slice(0, -1);
    if (flat.every((share) => share > 1e-12)) {
      return corners.map(({ point }, at) => ({ point, share: flat[at]! }));
    }
    // As far towards the flat's nearest point as the hull goes; whoever's share runs out there is dropped.
    const steps = corners.map(({ share }, at) =>
      flat[at]! < share ? share / (share - flat[at]!) : Infinity,
    );
    const go = Math.min(1, ...steps.filter((_, at) => flat[at]! <= 1e-12));
    corners = corners
      .map(({ point, share }, at) => ({ point, share: share + go * (flat[at]! - share) }))
      .filter(({ share }) => share > 1e-12);
  }
}

/** Shares (summing to 1) of the point nearest to the origin in the plane, line or space through points; none where they are not independent. */
function affineShares(points: readonly Vec3[]): readonly number[] | undefined {
  // Least |Σ share · p|² under Σ share = 1, by Lagrange's multiplier.
  const rows = points.map((p) => [...points.map((q) => dot3(p, q)), 1, 0]);
  return solve([...rows, [...points.map(() => 1), 0, 1]])?.slice(0, points.length);
}

/** Gauss elimination with pivoting of rows [matrix | right side]. */
function solve(rows: readonly (readonly number[])[]): readonly number[] | undefined {
  const n = rows.length;
  const m = rows.map((row) => [...row]);
  const size = Math.max(...m.flat().map(Math.abs));
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(m[i]![k]!) > Math.abs(m[best]![k]!)) best = i;
    if (Math.abs(m[best]![k]!) < 1e-13 * size) return undefined;
    [m[k], m[best]] = [m[best]!, m[k]!];
    for (let i = 0; i < n; i++) {
      if (i === k) continue;
      const by = m[i]![k]! / m[k]![k]!;
      for (let j = k; j <= n; j++) m[i]![j] = m[i]![j]! - by * m[k]![j]!;
    }
  }
  return m.map((row, k) => row[n]! / row[k]!);
}

const pointOf = (corners: readonly Corner[]): Vec3 =>
  corners.reduce(
    (sum, { point, share }) => ({
      x: sum.x + share * point.x,
      y: sum.y + share * point.y,
      z: sum.z + share * point.z,
    }),
    { x: 0, y: 0, z: 0 },
  );

const farthest = (points: readonly Vec3[], towards: Vec3): Vec3 =>
  points.reduce((best, p) => (dot3(p, towards) > dot3(best, towards) ? p : best));
