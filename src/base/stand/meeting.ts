import { distance, dot, type Edge, POSITION_TOLERANCE, type Region, type Vec } from '../../geometry/index.ts';
import type { SketchedPart } from '../../sketch/index.ts';
import type { Cut } from '../api.ts';
import { type HalfPlane, halfPlaneAt } from './section.ts';

/** What the cuts have left of a part at a depth of its frame. */
export interface CutFace {
  readonly regions: readonly Region[];
  readonly z: number;
}

/** Of planes flatter to the length than this the wood would have to be longer without end. */
const FLATTEST = 1e-3;

/**
 * Whether a cut makes an edge on both faces of its part, and by how much (mm, along the length) the wood falls short of being cut all
 * over: where the plane passes beyond it, or leaves part of the end that was drawn.
 */
export function meetingOf(
  cut: Omit<Cut, 'meets' | 'short'>,
  drawn: SketchedPart,
  faces: readonly CutFace[],
): Pick<Cut, 'meets' | 'short'> {
  const ends = drawn.region.outer.edges.filter(({ tag }) => tag.role === 'sawn' && tag.id !== cut.name);
  const along = Math.max(Math.abs(cut.plane.normal.y), FLATTEST);
  const found = faces.map(({ regions, z }) => {
    const edges = regions.flatMap(({ outer }) => outer.edges);
    const plane = halfPlaneAt(cut, z);
    const made = edges.filter((edge) => edge.tag.id === cut.name && liesOn(edge, plane));
    const points = made.length === 0 ? drawn.region.outer.edges.map(({ from }) => from) : [];
    const beside = edges.filter(
      (edge) => ends.some(({ tag }) => tag.id === edge.tag.id) && touches(edge, made),
    );
    return {
      meets: made.length > 0,
      gap:
        made.length === 0
          ? Math.min(...points.map((p) => behind(plane, p)))
          : Math.max(0, ...beside.flatMap(({ from, to }) => [behind(plane, from), behind(plane, to)])),
    };
  });
  return {
    meets: found.every(({ meets }) => meets),
    short: Math.max(0, ...found.map(({ gap }) => gap)) / along,
  };
}

/** How far a point lies behind the plane's line, times the length of its normal. */
const behind = ({ normal, offset }: HalfPlane, p: Vec): number => offset - dot(normal, p);

const liesOn = ({ from, to }: Edge, plane: HalfPlane): boolean =>
  [from, to].every((p) => Math.abs(behind(plane, p)) <= POSITION_TOLERANCE);

const touches = (edge: Edge, others: readonly Edge[]): boolean =>
  others.some(({ from, to }) =>
    [from, to].some((p) => Math.min(distance(p, edge.from), distance(p, edge.to)) <= POSITION_TOLERANCE),
  );
