import {
  add,
  angleOf,
  type EdgeTag,
  type Line,
  leftOf,
  line,
  polar,
  scale,
  unit,
  type Vec,
} from '../../geometry/index.ts';
import type { LineRole, PathMark } from '../api.ts';

/** Tag of lines that are no edge of the part: marks, arrows, dimensions. */
export const DRAWN: EdgeTag = { id: 'drawn', role: 'left' };

export function stroke(from: Vec, to: Vec): Line {
  return line(from, to, DRAWN);
}

/** Straight lines through points, in turn. */
export function strokes(points: readonly Vec[]): readonly Line[] {
  return points.slice(1).map((to, i) => stroke(points[i]!, to));
}

export function polygon(points: readonly Vec[]): readonly Line[] {
  return strokes([...points, points[0]!]);
}

/** p moved so far along a unit direction and so far to its left. */
export function step(p: Vec, direction: Vec, ahead: number, left = 0): Vec {
  return add(add(p, scale(direction, ahead)), scale(leftOf(direction), left));
}

/** A filled narrow arrowhead (ISO 129-1: 15° between its sides) with its tip at `tip`, pointing along `direction`. */
export function narrowHead(role: LineRole, tip: Vec, direction: Vec, size = 3): PathMark {
  const half = size * Math.tan((7.5 * Math.PI) / 180);
  const d = unit(direction);
  return {
    kind: 'path',
    role,
    closed: true,
    fill: 'solid',
    edges: polygon([tip, step(tip, d, -size, half), step(tip, d, -size, -half)]),
  };
}

/** Two barbs of an open arrowhead. */
export function openHead(tip: Vec, direction: Vec, size: number, halfAngle = 0.4): readonly Line[] {
  const back = angleOf(scale(direction, -1));
  return [
    stroke(add(tip, polar(back - halfAngle, size)), tip),
    stroke(tip, add(tip, polar(back + halfAngle, size))),
  ];
}

/** Lettering leans over to the left by no more than this past upright (rad): a line a hair off plumb still reads from the right. */
const PAST_UPRIGHT = 0.18;

/** The angle, turned by half a turn where needed, at which lettering reads from below or from the right. */
export function readable(angle: number): number {
  const turns = Math.round(angle / Math.PI);
  const rest = angle - turns * Math.PI;
  return rest <= -Math.PI / 2 + PAST_UPRIGHT ? rest + Math.PI : rest;
}
