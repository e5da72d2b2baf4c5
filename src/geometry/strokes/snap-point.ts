import type { Edge, Vec } from '../api.ts';
import { nearestOnEdges } from '../measure/nearest.ts';
import { add, distance, dot, scale, subtract } from '../vec.ts';

/** What a drawn point is held to: a point, a line level or plumb with one, the direction of the stroke before, an edge. */
export interface Snap {
  readonly at: Vec;
  /** What held it, none when nothing was near; two where it lies where two lines cross. */
  readonly held: readonly Hold[];
}

/** `from` is the point that the guide comes from, to be drawn. */
export interface Hold {
  readonly by: 'point' | 'level' | 'plumb' | 'tangent' | 'edge';
  readonly from: Vec;
}

export interface SnapTo {
  /** Points drawn so far, the one that the new stroke leaves from last. */
  readonly points: readonly Vec[];
  /** Edges drawn so far, and those of another outline underneath. */
  readonly edges: readonly Edge[];
  /** Unit direction in which the stroke before arrived, where a smooth continuation is wanted. */
  readonly arriving?: Vec;
  /** How near is near, mm: what a finger or a pointer covers on the screen. */
  readonly reach: number;
}

interface Guide extends Hold {
  /** Unit direction of the line. */
  readonly along: Vec;
}

const LEVEL = { x: 1, y: 0 };
const PLUMB = { x: 0, y: 1 };

/**
 * Where a point goes that is drawn near others: onto a point; where two lines of level, plumb and tangent cross; onto the nearest of them; onto an
 * edge; otherwise where it is. Lines of the last point go before those of earlier ones.
 */
export function snapPoint(p: Vec, { points, edges, arriving, reach }: SnapTo): Snap {
  const nearest = points.toSorted((a, b) => distance(a, p) - distance(b, p))[0];
  if (nearest !== undefined && distance(nearest, p) <= reach) {
    return { at: nearest, held: [{ by: 'point', from: nearest }] };
  }
  const last = points.at(-1);
  const guides: readonly Guide[] = [
    ...(last === undefined || arriving === undefined
      ? []
      : [{ by: 'tangent' as const, from: last, along: arriving }]),
    ...points.toReversed().flatMap((from): readonly Guide[] => [
      { by: 'level', from, along: LEVEL },
      { by: 'plumb', from, along: PLUMB },
    ]),
  ].filter((guide) => distance(dropOnto(p, guide), p) <= reach);
  const [first] = guides;
  if (first !== undefined) {
    const second = guides.find((guide) => Math.abs(across(first.along, guide.along)) > LEAST_CROSSING);
    const crossing = second && crossingOf(first, second);
    if (second !== undefined && crossing !== undefined && distance(crossing, p) <= 2 * reach) {
      return { at: crossing, held: [bare(first), bare(second)] };
    }
    return { at: dropOnto(p, first), held: [bare(first)] };
  }
  if (edges.length === 0) return { at: p, held: [] };
  const { point, distance: off } = nearestOnEdges(edges, p);
  return off <= reach ? { at: point, held: [{ by: 'edge', from: point }] } : { at: p, held: [] };
}

/** Sine of the flattest angle at which two guides make a crossing. */
const LEAST_CROSSING = 0.1;

const bare = ({ by, from }: Guide): Hold => ({ by, from });
const across = (a: Vec, b: Vec): number => a.x * b.y - a.y * b.x;

function dropOnto(p: Vec, { from, along }: Guide): Vec {
  return add(from, scale(along, dot(subtract(p, from), along)));
}

function crossingOf(a: Guide, b: Guide): Vec {
  const way = subtract(b.from, a.from);
  return add(a.from, scale(a.along, across(way, b.along) / across(a.along, b.along)));
}
