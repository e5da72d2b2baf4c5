import type { Box, Edge, Region } from './api.ts';
import { sweepOf } from './edge.ts';

const EMPTY: Box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };

/** Smallest upright box round both; an empty box (min > max) is the neutral element. */
export function joinBoxes(a: Box, b: Box): Box {
  return {
    minX: Math.min(a.minX, b.minX),
    minY: Math.min(a.minY, b.minY),
    maxX: Math.max(a.maxX, b.maxX),
    maxY: Math.max(a.maxY, b.maxY),
  };
}

/** Smallest upright box round an edge, arcs by their true extremes. */
export function boundsOfEdge(edge: Edge): Box {
  const { from, to } = edge;
  let minX = Math.min(from.x, to.x);
  let minY = Math.min(from.y, to.y);
  let maxX = Math.max(from.x, to.x);
  let maxY = Math.max(from.y, to.y);
  if (edge.kind === 'arc') {
    const { centre, radius } = edge;
    if (passes(edge, 0)) maxX = centre.x + radius;
    if (passes(edge, 1)) maxY = centre.y + radius;
    if (passes(edge, 2)) minX = centre.x - radius;
    if (passes(edge, 3)) minY = centre.y - radius;
  }
  return { minX, minY, maxX, maxY };
}

/** Smallest upright box round edges; none give an empty box. */
export function boundsOfEdges(edges: Iterable<Edge>): Box {
  let box = EMPTY;
  for (const edge of edges) box = joinBoxes(box, boundsOfEdge(edge));
  return box;
}

/** Smallest upright box round regions; none give an empty box. */
export function boundsOfRegions(regions: readonly Region[]): Box {
  return regions.map((region) => boundsOfEdges(region.outer.edges)).reduce(joinBoxes, EMPTY);
}

/** Does the arc pass the quarter point (0 right, 1 top, 2 left, 3 bottom) of its circle? */
function passes(edge: Extract<Edge, { kind: 'arc' }>, quarter: 0 | 1 | 2 | 3): boolean {
  const { from, centre, turn } = edge;
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const ahead = turn * (quarter * (Math.PI / 2) - start);
  const wrapped = ahead - 2 * Math.PI * Math.floor(ahead / (2 * Math.PI));
  return wrapped < sweepOf(edge);
}
