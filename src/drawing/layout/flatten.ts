import { type Edge, pointAt, sweepOf, type Vec } from '../../geometry/index.ts';

/**
 * Points along an edge, both ends included, so close that straight pieces between them stay within `tolerance` (mm) of
 * it. For finding room for lettering only: what is drawn stays exact.
 */
export function flattenEdge(edge: Edge, tolerance: number): readonly Vec[] {
  if (edge.kind === 'line') return [edge.from, edge.to];
  const ratio = Math.min(1, tolerance / edge.radius);
  const step = 2 * Math.acos(1 - ratio);
  const count = Math.max(1, Math.min(720, Math.ceil(sweepOf(edge) / step)));
  return Array.from({ length: count + 1 }, (_, i) => pointAt(edge, i / count));
}
