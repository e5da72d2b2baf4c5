import {
  type Edge,
  type Frame,
  pointAt,
  pointToWorld,
  type Region,
  SECTION_TOLERANCE,
  sweepOf,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import type { Bore } from './api.ts';

/** Points round a region so close that chords between them lie within SECTION_TOLERANCE of its arcs. */
export const pointsRound = ({ outer }: Region): readonly Vec[] => outer.edges.flatMap(pointsAlong);

function pointsAlong(edge: Edge): readonly Vec[] {
  if (edge.kind === 'line') return [edge.from];
  const most = 2 * Math.acos(Math.max(0, 1 - SECTION_TOLERANCE / edge.radius));
  const count = Math.max(1, Math.ceil(sweepOf(edge) / most));
  return Array.from({ length: count }, (_, at) => pointAt(edge, at / count));
}

/** The corners of a bore's mouth and of its bottom, in the part's frame: their hull is the bore. */
export function pointsOfBore({ own, outline, depth }: Pick<Bore, 'own' | 'outline' | 'depth'>): {
  readonly mouth: readonly Vec3[];
  readonly bottom: readonly Vec3[];
} {
  const round = pointsRound(outline);
  return { mouth: atDepth(own, round, 0), bottom: atDepth(own, round, depth) };
}

const atDepth = (own: Frame, points: readonly Vec[], z: number): readonly Vec3[] =>
  points.map((p) => pointToWorld(own, { ...p, z }));
