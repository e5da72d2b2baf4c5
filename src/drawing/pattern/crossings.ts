import {
  directionAt,
  dot,
  type Edge,
  intersectEdges,
  leftOf,
  POSITION_TOLERANCE,
  subtract,
  unit,
  type Vec,
} from '../../geometry/index.ts';
import { stroke } from '../layout/strokes.ts';

/** Where a straight line crosses an edge. */
export interface Crossing {
  readonly at: Vec;
  /** mm from the line's start. */
  readonly along: number;
  /** Sine of the angle between line and edge: 1 where they meet square. */
  readonly squareness: number;
  /** Does the line leave the material here? (It lies on the left of every edge.) */
  readonly leaves: boolean;
}

/** Every crossing of the line from `from` to `to` with the edges, in order along it; mere touches are left out. */
export function crossingsOf(edges: readonly Edge[], from: Vec, to: Vec): readonly Crossing[] {
  const ray = stroke(from, to);
  const direction = unit(subtract(to, from));
  const found: Crossing[] = [];
  for (const edge of edges) {
    const outcome = intersectEdges(ray, edge);
    if (outcome.kind !== 'points') continue;
    for (const { point, onB } of outcome.points) {
      const sine = dot(direction, leftOf(directionAt(edge, onB)));
      const along = dot(subtract(point, from), direction);
      // Two edges that meet on the line give the same crossing twice.
      if (found.some((other) => Math.abs(other.along - along) <= 2 * POSITION_TOLERANCE)) continue;
      found.push({ at: point, along, squareness: Math.abs(sine), leaves: sine < 0 });
    }
  }
  return found.sort((a, b) => a.along - b.along);
}
