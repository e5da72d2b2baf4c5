import type { Arc, Edge, Line, Vec } from '../api.ts';
import { sweepOf } from '../edge.ts';
import { cross, distance, dot, norm, subtract } from '../vec.ts';

/** The place of an edge that is nearest to a point. */
export interface Nearest {
  /** Which edge of the list. */
  readonly index: number;
  /** Share of that edge's length, in [0, 1]. */
  readonly t: number;
  readonly point: Vec;
  /** mm. */
  readonly distance: number;
}

/**
 * The place on any of the edges that is nearest to p; of several equally near, the first. Seen from the centre
 * of an arc, its start. Throws a RangeError when there is no edge.
 */
export function nearestOnEdges(edges: readonly Edge[], p: Vec): Nearest {
  let best: Nearest | undefined;
  for (const [index, edge] of edges.entries()) {
    if (best !== undefined && isBeyond(edge, p, best.distance)) continue;
    const found = nearestOnEdge(edge, p);
    if (best === undefined || found.distance < best.distance) best = { index, ...found };
  }
  if (best === undefined) throw new RangeError('nearestOnEdges needs at least one edge');
  return best;
}

/** The place on one edge that is nearest to p. */
export function nearestOnEdge(edge: Edge, p: Vec): Omit<Nearest, 'index'> {
  return edge.kind === 'line' ? nearestOnLine(edge, p) : nearestOnArc(edge, p);
}

function nearestOnLine({ from, to }: Line, p: Vec): Omit<Nearest, 'index'> {
  const along = subtract(to, from);
  const squared = dot(along, along);
  const t = squared === 0 ? 0 : dot(subtract(p, from), along) / squared;
  if (!(t > 0)) return { t: 0, point: from, distance: distance(from, p) };
  if (t >= 1) return { t: 1, point: to, distance: distance(to, p) };
  const point = { x: from.x + t * along.x, y: from.y + t * along.y };
  return { t, point, distance: Math.abs(cross(along, subtract(p, from))) / Math.sqrt(squared) };
}

function nearestOnArc(edge: Arc, p: Vec): Omit<Nearest, 'index'> {
  const { from, to, centre, radius, turn } = edge;
  const out = subtract(p, centre);
  const far = norm(out.x, out.y);
  if (far > 0) {
    const start = subtract(from, centre);
    const turned = turn * Math.atan2(cross(start, out), dot(start, out));
    const ahead = turned < 0 ? turned + 2 * Math.PI : turned;
    const sweep = sweepOf(edge);
    if (ahead < sweep) {
      const point = { x: centre.x + (out.x / far) * radius, y: centre.y + (out.y / far) * radius };
      return { t: ahead / sweep, point, distance: Math.abs(far - radius) };
    }
  }
  const a = distance(from, p);
  const b = distance(to, p);
  return b < a ? { t: 1, point: to, distance: b } : { t: 0, point: from, distance: a };
}

/** Is every point of the edge surely farther than `reach`? A cheap bound by a disc round the edge. */
function isBeyond(edge: Edge, p: Vec, reach: number): boolean {
  const { from, to } = edge;
  if (edge.kind === 'arc') {
    return Math.abs(distance(edge.centre, p) - edge.radius) > reach;
  }
  const half = (Math.abs(to.x - from.x) + Math.abs(to.y - from.y)) / 2;
  const dx = Math.abs(p.x - (from.x + to.x) / 2);
  const dy = Math.abs(p.y - (from.y + to.y) / 2);
  return Math.max(dx, dy) > reach + half;
}
