import {
  boundsOfEdges,
  nearestOnEdges,
  offsetRegions,
  POSITION_TOLERANCE,
  type Region,
  type Vec,
} from '../../geometry/index.ts';

/**
 * A point of a region as far from its boundary as any, and how far (mm): shrinks the region by halving steps until
 * nothing is left.
 */
export function deepestPoint(region: Region): { at: Vec; reach: number } {
  const { minX, minY, maxX, maxY } = boundsOfEdges(region.outer.edges);
  let holds = 0;
  let fails = Math.min(maxX - minX, maxY - minY) / 2 + POSITION_TOLERANCE;
  let at = region.outer.edges[0]!.from;
  const edges = [region.outer, ...region.holes].flatMap((loop) => loop.edges);
  while (fails - holds > PRECISION) {
    const by = (holds + fails) / 2;
    const core = offsetRegions([region], -by)[0]?.outer.edges[0]?.from;
    if (core === undefined) {
      fails = by;
    } else {
      holds = by;
      at = core;
    }
  }
  return { at, reach: nearestOnEdges(edges, at).distance };
}

/** mm: a place for a screw, or how deep a window stands uncut, is not asked for more closely. */
const PRECISION = 0.05;
