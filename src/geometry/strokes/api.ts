import type { EdgeRole, Vec } from '../api.ts';

/** One stroke of an outline drawn by hand: it begins where the one before it ends. Lengths in mm, y up. */
export type Stroke = {
  readonly to: Vec;
  readonly role: EdgeRole;
} & (
  | { readonly kind: 'line' }
  /** The arc that passes through a point on its way. */
  | { readonly kind: 'arc'; readonly through: Vec }
  /** A batten bent round nails; `smooth` where it leaves as the stroke before it arrives. */
  | { readonly kind: 'batten'; readonly nails: readonly Vec[]; readonly smooth: boolean }
);

/** A closed run of strokes: the last one ends at the start. */
export interface StrokeLoop {
  readonly start: Vec;
  readonly strokes: readonly Stroke[];
}
