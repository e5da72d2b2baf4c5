import {
  angleOf,
  type Edge,
  type Line,
  lengthOf,
  nearestOnEdges,
  norm,
  type Outline,
  subtract,
  type Vec,
} from '../../geometry/index.ts';
import type { SketchedPart } from '../../sketch/index.ts';
import { flattenEdge } from '../layout/flatten.ts';
import { toFrame } from '../layout/oriented-box.ts';
import { measuredLength } from './length-dimension.ts';

/** A size of an opening that no dimension of its part gives. */
export interface OpeningSize {
  readonly label: string;
  /** mm. */
  readonly size: number;
}

/** Lengths closer than this, mm, are one size. */
const SAME = 0.05;
/** mm; an arc's own extent is found by straight pieces so close to it. */
const CHORD = 0.005;

/**
 * Length and width of every opening, along and across its longest straight edge, or the diameter of a round one, where
 * no dimension between two points of its edge gives that length already. Nothing is said twice.
 */
export function openingSizes({ openings, region, dimensions }: SketchedPart): readonly OpeningSize[] {
  const sizes = openings.flatMap(({ label, hole }) => {
    const outline = region.holes[hole];
    if (outline === undefined) return [];
    const isAtEdge = (p: Vec): boolean => nearestOnEdges(outline.edges, p).distance < SAME;
    const given = dimensions.flatMap((dimension) =>
      dimension.kind === 'length' && isAtEdge(dimension.from) && isAtEdge(dimension.to)
        ? [measuredLength(dimension)]
        : [],
    );
    return sizesOf(outline)
      .filter(([, size]) => !given.some((length) => Math.abs(length - size) < SAME))
      .map(([words, size]) => ({ label: `${label}, ${words}`, size }));
  });
  return sizes.filter(
    ({ label, size }, i) =>
      !sizes.slice(0, i).some((other) => other.label === label && Math.abs(other.size - size) < SAME),
  );
}

function sizesOf({ edges }: Outline): readonly (readonly [string, number])[] {
  const [first] = edges;
  if (first === undefined) return [];
  const longest = edges
    .filter((edge): edge is Line => edge.kind === 'line')
    .reduce<Line | undefined>(
      (best, edge) => (best === undefined || lengthOf(edge) > lengthOf(best) ? edge : best),
      undefined,
    );
  if (longest === undefined && edges.every((edge) => isSameCircle(edge, first))) {
    return first.kind === 'arc' ? [['diameter', 2 * first.radius]] : [];
  }
  const angle = longest === undefined ? 0 : angleOf(subtract(longest.to, longest.from));
  const points = edges.flatMap((edge) => flattenEdge(edge, CHORD)).map((p) => toFrame(first.from, angle, p));
  const along = span(points, ({ x }) => x);
  const across = span(points, ({ y }) => y);
  return [
    ['length', Math.max(along, across)],
    ['width', Math.min(along, across)],
  ];
}

function isSameCircle(edge: Edge, first: Edge): boolean {
  return (
    edge.kind === 'arc' &&
    first.kind === 'arc' &&
    Math.abs(edge.radius - first.radius) < SAME &&
    norm(edge.centre.x - first.centre.x, edge.centre.y - first.centre.y) < SAME
  );
}

function span(points: readonly Vec[], of: (p: Vec) => number): number {
  const values = points.map(of);
  return values.reduce((a, b) => Math.max(a, b)) - values.reduce((a, b) => Math.min(a, b));
}
