import type { Arc, Edge, EdgeTag, Line, Vec } from './api.ts';
import { add, angleOf, between, distance, leftOf, polar, scale, subtract, unit } from './vec.ts';

export function line(from: Vec, to: Vec, tag: EdgeTag): Line {
  return { kind: 'line', from, to, tag };
}

export function arc(from: Vec, to: Vec, centre: Vec, turn: 1 | -1, tag: EdgeTag): Arc {
  return { kind: 'arc', from, to, centre, radius: distance(from, centre), turn, tag };
}

/** Angle swept by an arc: in (0, 2π], always positive; whole circles (ends equal) give 2π. */
export function sweepOf(edge: Arc): number {
  const { from, to, centre, turn } = edge;
  if (from.x === to.x && from.y === to.y) return 2 * Math.PI;
  const ax = from.x - centre.x;
  const ay = from.y - centre.y;
  const bx = to.x - centre.x;
  const by = to.y - centre.y;
  const turned = turn * Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  return turned > 0 ? turned : turned + 2 * Math.PI;
}

/** Length along the edge, mm. */
export function lengthOf(edge: Edge): number {
  return edge.kind === 'line' ? distance(edge.from, edge.to) : edge.radius * sweepOf(edge);
}

/** Point at a share t of the edge's length, t in [0, 1]; the ends are returned exactly. */
export function pointAt(edge: Edge, t: number): Vec {
  if (t === 0) return edge.from;
  if (t === 1) return edge.to;
  if (edge.kind === 'line') return between(edge.from, edge.to, t);
  const start = angleOf(subtract(edge.from, edge.centre));
  return add(edge.centre, polar(start + edge.turn * t * sweepOf(edge), edge.radius));
}

/** Unit direction of travel at a share t of the edge's length. A line of no length gives NaN. */
export function directionAt(edge: Edge, t: number): Vec {
  if (edge.kind === 'line') return unit(subtract(edge.to, edge.from));
  return scale(leftOf(unit(subtract(pointAt(edge, t), edge.centre))), edge.turn);
}

/** The same edge travelled the other way. */
export function reverseEdge(edge: Edge): Edge {
  if (edge.kind === 'line') return { ...edge, from: edge.to, to: edge.from };
  return { ...edge, from: edge.to, to: edge.from, turn: edge.turn === 1 ? -1 : 1 };
}

/** Signed curvature in 1/mm: positive when the edge turns left. */
export function curvatureOf(edge: Edge): number {
  return edge.kind === 'line' ? 0 : edge.turn / edge.radius;
}
