import type { Edge, Vec } from '../api.ts';
import { lengthOf, pointAt } from '../edge.ts';

/** A place inside the longest edge of a loop, away from corners where it might touch another. */
export function placeClearOfCorners(edges: readonly Edge[]): Vec {
  return pointAt(longestEdge(edges), CLEAR);
}

/** Share of an edge's length where no corner lies. */
export const CLEAR = 0.4142;

export function longestEdge(edges: readonly Edge[]): Edge {
  let longest = edges[0]!;
  let most = 0;
  for (const edge of edges) {
    const long = lengthOf(edge);
    if (long <= most) continue;
    most = long;
    longest = edge;
  }
  return longest;
}
