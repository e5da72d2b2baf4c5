import type { StrokeLoop } from '../../geometry/index.ts';

/** A shape of the maker's own, from which a form is written. */
export interface OwnShape {
  /** As printed. */
  readonly title: string;
  /** Round the part, then round each of its openings. */
  readonly loops: readonly StrokeLoop[];
  /** mm. */
  readonly thickness: number;
  /** Directions of the grain, and of what is up when the part stands, rad. */
  readonly grain: number;
  readonly up: number;
  /** How many are made. */
  readonly pieces: number;
}
