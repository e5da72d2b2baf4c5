import type { Arc, Box, Edge, Region } from './api.ts';

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
  let { minX, minY, maxX, maxY } = EMPTY;
  for (const edge of edges) {
    const box = boundsOfEdge(edge);
    minX = Math.min(minX, box.minX);
    minY = Math.min(minY, box.minY);
    maxX = Math.max(maxX, box.maxX);
    maxY = Math.max(maxY, box.maxY);
  }
  return { minX, minY, maxX, maxY };
}

/** Smallest upright box round regions; none give an empty box. */
export function boundsOfRegions(regions: readonly Region[]): Box {
  return regions.map((region) => boundsOfEdges(region.outer.edges)).reduce(joinBoxes, EMPTY);
}

/**
 * Does the arc pass the quarter point (0 right, 1 top, 2 left, 3 bottom) of its circle: after its start and before
 * its end? Either is enough for an arc of more than half a turn.
 */
function passes(edge: Arc, quarter: 0 | 1 | 2 | 3): boolean {
  const { centre, turn } = edge;
  const [from, to] = turn === 1 ? [edge.from, edge.to] : [edge.to, edge.from];
  const ax = from.x - centre.x;
  const ay = from.y - centre.y;
  const bx = to.x - centre.x;
  const by = to.y - centre.y;
  const after = quarter === 0 ? -ay : quarter === 1 ? ax : quarter === 2 ? ay : -ax;
  const before = quarter === 0 ? by : quarter === 1 ? -bx : quarter === 2 ? -by : bx;
  const turned = ax * by - ay * bx;
  if (turned > 0) return after > 0 && before > 0;
  if (turned < 0) return after > 0 || before > 0;
  // Exactly half a turn, or a whole one.
  return ax * bx + ay * by > 0 || after > 0;
}
