import {
  directionAt,
  directionToFrame,
  type Edge,
  type Frame,
  norm,
  type Outline,
  type Plane3,
  pointToFrame,
  type Region,
  SMOOTH_TURN,
  type Vec,
} from '../../../geometry/index.ts';
import { flattenEdge } from '../../layout/flatten.ts';

/** A flat wall of a prism, over one straight piece of its outline; the wood lies to the left of the piece. */
export interface Facet {
  readonly from: Vec;
  readonly to: Vec;
  /** Out of the wood, a unit vector. */
  readonly out: Vec;
  readonly source: Edge;
  /** Does the outline go on here, from the facet before, without a corner? */
  readonly smooth: boolean;
}

/** A prism whose curved walls are flat facets: bounded by z = 0, z = −thickness, its facets and cutting planes. */
export interface FlatPrism {
  readonly thickness: number;
  readonly loops: readonly (readonly Facet[])[];
  /** In the prism's frame. */
  readonly cuts: readonly { readonly name: string; readonly plane: Plane3 }[];
}

/** The prism of a region whose arcs became chords within a tolerance (mm). */
export function flattenPrism(
  region: Region,
  thickness: number,
  cuts: FlatPrism['cuts'],
  tolerance: number,
): FlatPrism {
  const loops = [region.outer, ...region.holes].map((loop) => facetsOf(loop, tolerance));
  return { thickness, loops, cuts };
}

function facetsOf({ edges }: Outline, tolerance: number): readonly Facet[] {
  return edges.flatMap((edge, at) => {
    const before = edges[(at + edges.length - 1) % edges.length]!;
    // However coarse the picture, a whole circle keeps ten sides or so.
    const points = flattenEdge(edge, edge.kind === 'arc' ? Math.min(tolerance, edge.radius / 20) : tolerance);
    return points.slice(1).flatMap((to, i) => {
      const from = points[i]!;
      const length = norm(to.x - from.x, to.y - from.y);
      if (length === 0) return [];
      const out = { x: (to.y - from.y) / length, y: (from.x - to.x) / length };
      return [{ from, to, out, source: edge, smooth: i > 0 || goesOn(before, edge) }];
    });
  });
}

function goesOn(before: Edge, after: Edge): boolean {
  const [a, b] = [directionAt(before, 1), directionAt(after, 0)];
  return Math.abs(Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y)) < SMOOTH_TURN;
}

/** A frame of the world (or of another frame) seen from another frame. */
export function frameWithin(outer: Frame, inner: Frame): Frame {
  return {
    origin: pointToFrame(outer, inner.origin),
    x: directionToFrame(outer, inner.x),
    y: directionToFrame(outer, inner.y),
    z: directionToFrame(outer, inner.z),
  };
}
