/**
 * The shapes that every layer speaks. Millimetres and radians; y up; angles anticlockwise from +x.
 * All of it is plain readonly data.
 */

export interface Vec {
  readonly x: number;
  readonly y: number;
}

/**
 * What makes an edge: `routed` by the cutter, `sawn` (an end cut), `joint` (mates another part),
 * `left` (as the board came).
 */
export type EdgeRole = 'routed' | 'sawn' | 'joint' | 'left';

/** Which edge of the form this is. Carried through every offset, boolean, trim and drawing. */
export interface EdgeTag {
  /** Unique within its part: `inner`, `window.top`. A round on corner `knee` is `knee`. */
  readonly id: string;
  readonly role: EdgeRole;
}

export interface Line {
  readonly kind: 'line';
  readonly from: Vec;
  readonly to: Vec;
  readonly tag: EdgeTag;
}

/**
 * Part of a circle from `from` to `to`, anticlockwise when `turn` is 1, clockwise when −1.
 * Both ends lie on the circle to within POSITION_TOLERANCE. Ends that are exactly equal make a whole circle.
 */
export interface Arc {
  readonly kind: 'arc';
  readonly from: Vec;
  readonly to: Vec;
  readonly centre: Vec;
  readonly radius: number;
  readonly turn: 1 | -1;
  readonly tag: EdgeTag;
}

export type Edge = Line | Arc;

/** A closed loop: each edge ends exactly where the next begins, the last where the first begins. */
export interface Outline {
  readonly edges: readonly Edge[];
}

/** An outer outline (anticlockwise) with its holes (clockwise), which do not cross it and touch it at single points at most. */
export interface Region {
  readonly outer: Outline;
  readonly holes: readonly Outline[];
}

export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}
