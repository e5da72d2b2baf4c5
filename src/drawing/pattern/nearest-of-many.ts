import { type Box, boundsOfEdge, type Edge, nearestOnEdge, type Vec } from '../../geometry/index.ts';

/** Which of the edges is nearest, where along it (share of its length), and how far away (mm). */
export interface NearestOfMany {
  readonly index: number;
  readonly t: number;
  readonly distance: number;
}

/**
 * Finds the place on any of many edges that is nearest to a point, as nearestOnEdges does, for hundreds of points: the
 * search begins with the edge that is likely to be the nearest (`guess`, the one that a neighbour found), which leaves
 * few others near enough to be looked at.
 */
export function createNearest(edges: readonly Edge[]): (p: Vec, guess: number) => NearestOfMany {
  const boxes = edges.map(boundsOfEdge);
  return (p, guess) => {
    let index = guess;
    let best = nearestOnEdge(edges[guess]!, p);
    for (let i = 0; i < edges.length; i++) {
      if (i === guess || isBeyond(boxes[i]!, p, best.distance)) continue;
      const found = nearestOnEdge(edges[i]!, p);
      // Of several equally near, the first.
      if (found.distance < best.distance || (found.distance === best.distance && i < index)) {
        index = i;
        best = found;
      }
    }
    return { index, t: best.t, distance: best.distance };
  };
}

function isBeyond({ minX, minY, maxX, maxY }: Box, { x, y }: Vec, reach: number): boolean {
  return minX - x > reach || x - maxX > reach || minY - y > reach || y - maxY > reach;
}
