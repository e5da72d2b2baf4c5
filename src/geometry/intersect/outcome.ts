import type { Vec } from '../api.ts';

/** A place that two edges share. `onA` and `onB` are shares of each edge's length, 0 at its start, 1 at its end. */
export interface Meeting {
  readonly point: Vec;
  readonly onA: number;
  readonly onB: number;
}

/** A stretch that two edges share, ordered along the first. */
export interface SharedStretch {
  readonly from: Meeting;
  readonly to: Meeting;
  /** Both edges travel it in the same direction. */
  readonly sameWay: boolean;
}

/** Every way in which two edges can meet. */
export type EdgeIntersection =
  | { readonly kind: 'none' }
  /** One touch, inside both edges, without crossing. */
  | { readonly kind: 'tangent'; readonly at: Meeting }
  /** Crossings, and touches at an end of either edge, ordered along the first edge. */
  | { readonly kind: 'points'; readonly points: readonly Meeting[] }
  /** The edges run along each other; `points` are touches apart from the stretches (arcs of one circle). */
  | {
      readonly kind: 'overlap';
      readonly stretches: readonly SharedStretch[];
      readonly points: readonly Meeting[];
    };
