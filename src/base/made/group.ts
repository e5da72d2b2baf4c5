import type { PlacedPart } from '../api.ts';
import type { Match } from './same-shape.ts';
import type { Shape } from './shape.ts';

/** Pieces made from one pattern: its shape, the same turned over, and which of the two each piece is. */
export interface MadeGroup {
  readonly shape: Shape;
  readonly over: () => Shape;
  readonly members: {
    readonly part: PlacedPart;
    readonly hand: 'left' | 'right';
    readonly match: Match;
  }[];
}
