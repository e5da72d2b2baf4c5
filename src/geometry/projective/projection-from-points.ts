import type { Vec } from '../api.ts';
import { FLATTEST_CORNER } from '../tolerance.ts';
import { cross, distance, norm, subtract } from '../vec.ts';
import type { PointPair, Projection, ProjectionFound } from './api.ts';
import { invertProjection, projectTwice } from './matrix.ts';
import { solveLinear } from './solve-linear.ts';

/**
 * The projective transform that takes four known points to four others, as a photograph of a flat thing is made true from four
 * points whose places are known. Eight unknowns, two equations a pair: x'(gx + hy + 1) = ax + by + c and the like for y'.
 * Both sets are first moved and scaled to lie round the origin at distance √2 in the mean, so that pixels and millimetres
 * weigh alike (common practice since R. Hartley, In Defense of the Eight-Point Algorithm, 1997).
 *
 * Throws a RangeError unless there are exactly four pairs of finite points.
 */
export function projectionFromPoints(pairs: readonly PointPair[]): ProjectionFound {
  const numbers = pairs.flatMap(({ from, to }) => [from.x, from.y, to.x, to.y]);
  if (pairs.length !== 4 || !numbers.every(Number.isFinite))
    throw new RangeError(`a projection needs four pairs of points: ${JSON.stringify(pairs)}`);
  const fault = faultOf(pairs);
  if (fault !== undefined) return fault;
  const before = centred(pairs.map(({ from }) => from));
  const after = centred(pairs.map(({ to }) => to));
  const rows = before.points.flatMap((p, i) => {
    const q = after.points[i]!;
    return [
      [p.x, p.y, 1, 0, 0, 0, -p.x * q.x, -p.y * q.x, q.x],
      [0, 0, 0, p.x, p.y, 1, -p.x * q.y, -p.y * q.y, q.y],
    ];
  });
  const [a, b, c, d, e, f, g, h] = solveLinear(rows) as unknown as Projection;
  const middle: Projection = [a, b, c, d, e, f, g, h, 1];
  const projection = projectTwice(projectTwice(before.centring, middle), invertProjection(after.centring));
  return { kind: 'found', projection };
}

function faultOf(pairs: readonly PointPair[]): ProjectionFound | undefined {
  const sides = [pairs.map(({ from }) => from), pairs.map(({ to }) => to)];
  for (const points of sides) {
    const size = Math.max(...points.map((p) => distance(p, points[0]!)));
    for (let i = 0; i < 4; i++) {
      for (let j = 0; j < i; j++) {
        if (!(distance(points[i]!, points[j]!) > FLATTEST_CORNER * size)) {
          return { kind: 'together', pairs: [j, i] };
        }
      }
    }
    for (let left = 0; left < 4; left++) {
      const three = OTHERS[left]!;
      if (Math.abs(turnOf(points, three)) < FLATTEST_CORNER) return { kind: 'in-line', pairs: three };
    }
  }
  // A camera before the plane turns every three points the same way, or, seen in a mirror or with y downwards, every three the other way.
  const kept = OTHERS.map((three) => Math.sign(turnOf(sides[0]!, three) * turnOf(sides[1]!, three)));
  const few = kept.filter((sign) => sign === kept[0]).length;
  return few === 4 ? undefined : { kind: 'crossed', pairs: [0, 1, 2, 3] };
}

const OTHERS = [
  [1, 2, 3],
  [0, 2, 3],
  [0, 1, 3],
  [0, 1, 2],
] as const;

/** Sine of the smallest corner of a triangle of three of the points: twice its area by its two longer sides; positive anticlockwise. */
function turnOf(points: readonly Vec[], [i, j, k]: readonly [number, number, number]): number {
  const a = points[i]!;
  const b = points[j]!;
  const c = points[k]!;
  const sides = [distance(a, b), distance(b, c), distance(c, a)].sort((p, q) => q - p);
  return cross(subtract(b, a), subtract(c, a)) / (sides[0]! * sides[1]!);
}

interface Centred {
  readonly points: readonly Vec[];
  readonly centring: Projection;
}

function centred(points: readonly Vec[]): Centred {
  const x = points.reduce((sum, p) => sum + p.x, 0) / points.length;
  const y = points.reduce((sum, p) => sum + p.y, 0) / points.length;
  const far = points.reduce((sum, p) => sum + norm(p.x - x, p.y - y), 0) / points.length;
  const s = Math.SQRT2 / far;
  return {
    points: points.map((p) => ({ x: s * (p.x - x), y: s * (p.y - y) })),
    centring: [s, 0, -s * x, 0, s, -s * y, 0, 0, 1],
  };
}
