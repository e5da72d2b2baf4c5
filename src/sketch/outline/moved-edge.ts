import {
  add,
  cross,
  directionAt,
  dot,
  type Edge,
  FIGURE_ROUNDING,
  leftOf,
  norm,
  scale,
  subtract,
  type Vec,
} from '../../geometry/index.ts';

/** What an edge lies on, moved to its left: a straight line or a circle, without ends. */
export type Moved =
  | { readonly kind: 'line'; readonly at: Vec; readonly direction: Vec }
  | { readonly kind: 'circle'; readonly centre: Vec; readonly radius: number };

/** The line or circle at a distance (mm) to the left of an edge; nothing where an arc would shrink past its centre. */
export function moveSideways(edge: Edge, left: number): Moved | undefined {
  if (edge.kind === 'line') {
    const direction = directionAt(edge, 0);
    return { kind: 'line', at: add(edge.from, scale(leftOf(direction), left)), direction };
  }
  // The centre of an arc that turns left is on its left.
  const radius = edge.radius - edge.turn * left;
  return radius > 0 ? { kind: 'circle', centre: edge.centre, radius } : undefined;
}

/** The points that both lie on, at most two; none when they coincide or do not meet. */
export function meetMoved(a: Moved | undefined, b: Moved | undefined): readonly Vec[] {
  if (a === undefined || b === undefined) return [];
  if (a.kind === 'line') return b.kind === 'line' ? meetLines(a, b) : meetLineAndCircle(a, b);
  return b.kind === 'line' ? meetLineAndCircle(b, a) : meetCircles(a, b);
}

type MovedLine = Extract<Moved, { kind: 'line' }>;
type MovedCircle = Extract<Moved, { kind: 'circle' }>;

function meetLines(a: MovedLine, b: MovedLine): readonly Vec[] {
  const turn = cross(a.direction, b.direction);
  if (turn === 0) return [];
  return [add(a.at, scale(a.direction, cross(subtract(b.at, a.at), b.direction) / turn))];
}

function meetLineAndCircle(line: MovedLine, circle: MovedCircle): readonly Vec[] {
  const way = subtract(circle.centre, line.at);
  const foot = dot(way, line.direction);
  const off = cross(line.direction, way);
  const half = halfChord(circle.radius, Math.abs(off));
  if (half === undefined) return [];
  return [foot - half, foot + half].map((t) => add(line.at, scale(line.direction, t)));
}

function meetCircles(a: MovedCircle, b: MovedCircle): readonly Vec[] {
  const way = subtract(b.centre, a.centre);
  const apart = norm(way.x, way.y);
  if (apart === 0) return [];
  const direction = scale(way, 1 / apart);
  // Distance from a's centre to the common chord; the product keeps figures when the radii are nearly equal.
  const along = (apart + ((a.radius - b.radius) * (a.radius + b.radius)) / apart) / 2;
  const half = halfChord(a.radius, Math.abs(along));
  if (half === undefined) return [];
  const foot = add(a.centre, scale(direction, along));
  const aside = leftOf(direction);
  return [add(foot, scale(aside, half)), add(foot, scale(aside, -half))];
}

/** Half the chord at a distance from the centre; 0 when it is beyond by rounding only. */
function halfChord(radius: number, off: number): number | undefined {
  const square = (radius - off) * (radius + off);
  if (square >= 0) return Math.sqrt(square);
  return off - radius <= FIGURE_ROUNDING * radius ? 0 : undefined;
}
