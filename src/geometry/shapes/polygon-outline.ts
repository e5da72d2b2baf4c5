import type { EdgeTag, Outline, Vec } from '../api.ts';
import { line } from '../edge.ts';

/**
 * The loop of lines through points, closed from the last to the first and run in the order given. One tag for all its
 * edges, or one for each (edge i starts at point i).
 */
export function polygonOutline(points: readonly Vec[], tags: EdgeTag | readonly EdgeTag[]): Outline {
  const each = Array.isArray(tags) ? (tags as readonly EdgeTag[]) : points.map(() => tags as EdgeTag);
  if (each.length !== points.length)
    throw new RangeError(`${points.length} edges need as many tags, not ${each.length}`);
  return { edges: points.map((from, at) => line(from, points[(at + 1) % points.length]!, each[at]!)) };
}
