import type { Vec } from '../api.ts';

/**
 * A projective transform of the plane, rows of its matrix one after another: a point (x, y) goes to
 * ((ax + by + c) / w, (dx + ey + f) / w) with w = gx + hy + i. The matrix is scaled so that its largest entry is 1 or −1,
 * and so that w > 0 where it was made from points.
 */
export type Projection = readonly [
  a: number,
  b: number,
  c: number,
  d: number,
  e: number,
  f: number,
  g: number,
  h: number,
  i: number,
];

/** The same place seen twice: before and after a transform. */
export interface PointPair {
  readonly from: Vec;
  readonly to: Vec;
}

/**
 * What four known points give. `together`: two of them lie in one place. `in-line`: three of them lie in one line. `crossed`: no
 * camera sees the four in the places given, as where two were named the wrong way round. All said of the nearly so, too.
 */
export type ProjectionFound =
  | { readonly kind: 'found'; readonly projection: Projection }
  | { readonly kind: 'together' | 'in-line' | 'crossed'; readonly pairs: readonly number[] };
