import { type Box, type Edge, norm, pointAt, sweepOf, type Vec } from '../../geometry/index.ts';
import type { Content } from './content.ts';

/** Angle between the points that stand for an arc, rad: the arc bulges beyond them by less than a tenth of a percent of its radius. */
const ARC_STEP = Math.PI / 32;
/** Points no farther from the line between two corners, mm, are no corners. */
const ON_LINE = 1e-9;

/** How far points of the content reach at a turn about its centre: never farther than the content itself does. */
export type ExtentsAt = (turn: number) => Box;

export function extentsOf({ edges, centre }: Content): ExtentsAt {
  const corners = Float64Array.from(
    cornersOf(pointsOf(edges)).flatMap(({ x, y }) => [x - centre.x, y - centre.y]),
  );
  return (turn) => {
    const c = Math.cos(turn);
    const s = Math.sin(turn);
    let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
    for (let k = 0; k < corners.length; k += 2) {
      const x = c * corners[k]! - s * corners[k + 1]!;
      const y = s * corners[k]! + c * corners[k + 1]!;
      if (x < minX) minX = x;
      if (x > maxX) maxX = x;
      if (y < minY) minY = y;
      if (y > maxY) maxY = y;
    }
    return { minX, minY, maxX, maxY };
  };
}

function pointsOf(edges: readonly Edge[]): Vec[] {
  const points: Vec[] = [];
  for (const edge of edges) {
    points.push(edge.from, edge.to);
    if (edge.kind === 'line') continue;
    const count = Math.ceil(sweepOf(edge) / ARC_STEP);
    for (let i = 1; i < count; i++) points.push(pointAt(edge, i / count));
  }
  return points;
}

/** The corners of the convex hull of points (quickhull). */
function cornersOf(points: readonly Vec[]): readonly Vec[] {
  let [left, right] = [points[0], points[0]];
  if (left === undefined || right === undefined) return [];
  for (const point of points) {
    if (point.x < left.x) left = point;
    if (point.x > right.x) right = point;
  }
  return [left, ...cornersBeside(points, left, right), right, ...cornersBeside(points, right, left)];
}

/** Those on the left of the way from one corner to another. */
function cornersBeside(points: readonly Vec[], from: Vec, to: Vec): readonly Vec[] {
  const x = to.x - from.x;
  const y = to.y - from.y;
  const beside: Vec[] = [];
  let farthest: Vec | undefined;
  let most = ON_LINE * norm(x, y);
  const least = most;
  for (const point of points) {
    const away = x * (point.y - from.y) - y * (point.x - from.x);
    if (away > least) beside.push(point);
    if (away > most) [most, farthest] = [away, point];
  }
  if (farthest === undefined) return [];
  return [...cornersBeside(beside, from, farthest), farthest, ...cornersBeside(beside, farthest, to)];
}
