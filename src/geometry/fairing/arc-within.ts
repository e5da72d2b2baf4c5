import type { Edge, EdgeTag, Vec } from '../api.ts';
import { line } from '../edge.ts';
import { nearestOnEdge } from '../measure/nearest.ts';
import { STRAIGHT_RADIUS } from '../tolerance.ts';
import { add, cross, distance, dot, leftOf, middle, norm, scale, subtract } from '../vec.ts';

/**
 * A line, or else an arc, from the first of a run of points to the last that passes within a tolerance (mm) of all between;
 * undefined when there is none. The arcs through two points are ordered by the angle of their chord, and each point between lets
 * through those of an interval; the middle of what all let through is taken, and proved by distance.
 */
export function arcWithin(points: readonly Vec[], tolerance: number, tag: EdgeTag): Edge | undefined {
  const a = points[0]!;
  const b = points.at(-1)!;
  const between = points.slice(1, -1).filter((p) => distance(p, a) > tolerance && distance(p, b) > tolerance);
  if (distance(a, b) === 0) return undefined;
  let least = -Math.PI;
  let most = Math.PI;
  for (const p of between) {
    // The tangent there of the circle through all three.
    const out = subtract(p, a);
    const on = subtract(b, p);
    const tangent = add(scale(out, 1 / dot(out, out)), scale(on, 1 / dot(on, on)));
    const aside = scale(leftOf(tangent), tolerance / norm(tangent.x, tangent.y));
    least = Math.max(least, turnThrough(a, add(p, aside), b));
    most = Math.min(most, turnThrough(a, subtract(p, aside), b));
    if (!(least <= most)) return undefined;
  }
  const edge = least <= 0 && most >= 0 ? line(a, b, tag) : arcTurning(a, b, (least + most) / 2, tag);
  return points.every((p) => nearestOnEdge(edge, p).distance <= tolerance) ? edge : undefined;
}

/** Half the sweep of the arc from a through p to b, positive to the left. */
function turnThrough(a: Vec, p: Vec, b: Vec): number {
  const u = subtract(p, a);
  const v = subtract(b, p);
  return Math.atan2(cross(u, v), dot(u, v));
}

function arcTurning(a: Vec, b: Vec, half: number, tag: EdgeTag): Edge {
  const chord = subtract(b, a);
  const rise = 1 / (2 * Math.tan(half));
  const centre = add(middle(a, b), scale(leftOf(chord), rise));
  const radius = distance(a, centre);
  if (!(radius < STRAIGHT_RADIUS)) return line(a, b, tag);
  return { kind: 'arc', from: a, to: b, centre, radius, turn: half > 0 ? 1 : -1, tag };
}
