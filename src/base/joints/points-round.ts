import {
  type Edge,
  pointAt,
  type Region,
  SECTION_TOLERANCE,
  sweepOf,
  type Vec,
} from '../../geometry/index.ts';

/** Points round a region so close that chords between them lie within SECTION_TOLERANCE of its arcs. */
export const pointsRound = ({ outer }: Region): readonly Vec[] => outer.edges.flatMap(pointsAlong);

function pointsAlong(edge: Edge): readonly Vec[] {
  if (edge.kind === 'line') return [edge.from];
  const most = 2 * Math.acos(Math.max(0, 1 - SECTION_TOLERANCE / edge.radius));
  const count = Math.max(1, Math.ceil(sweepOf(edge) / most));
  return Array.from({ length: count }, (_, at) => pointAt(edge, at / count));
}
