import type { Vec3 } from '../../geometry/index.ts';

/**
 * Words of end cuts. Part frame: x along the part's width, y along its length, z out of the face side; the part is a
 * prism with its face side at z = 0 and its back at z = −thickness. Millimetres and radians.
 *
 * Saw frame, as the sawyer sees it who faces the fence: X to the right along the fence, Y away through the fence, Z up.
 */

/** A plane that cuts the part: unit normal out of the wood into the waste, and a point on it (mm), in the part frame. */
export interface CutPlane {
  readonly normal: Vec3;
  readonly point: Vec3;
}

/** The end at larger y is far from the reference corner, the other near. */
export type End = 'far' | 'near';

/** Long edges of the blank, seen with the face side up and y pointing away: left at smaller x. */
export type EdgeSide = 'left' | 'right';

/** The four long surfaces of a blank. */
export type Side = 'face' | 'back' | EdgeSide;

/** Where the part's length is counted from: a square end of the blank at y, or another cut. */
export type Reference =
  | { readonly kind: 'square'; readonly y: number }
  | { readonly kind: 'cut'; readonly plane: CutPlane };

/** The blank that lies on the saw: its two long straight edges, and what may lie against fence and table. */
export interface Blank {
  /** Places of the long edges on the face side, mm, counted square to the fence line; at π/2 they are values of x. */
  readonly left: number;
  readonly right: number;
  readonly thickness: number;
  /** The face edge: against the fence when the part lies on its back, on the table when it stands on edge. */
  readonly faceEdge: EdgeSide;
  /**
   * Direction of the fence line in the part plane (rad, anticlockwise from +x). A curved part has no edge for the fence: it
   * is measured from the face edge of its blank, which runs in this direction. Default π/2: along y.
   */
  readonly fenceAngle?: number;
  /** Edges straight and parallel to the fence line, so that they can lie against it. Default both. */
  readonly straight?: EdgeSide | 'both';
  /** True where the part must be sawn with its face side up (a show face that must not splinter). Default false. */
  readonly faceUp?: boolean;
  /**
   * How far the edges lean from square to the face (rad): positive where the back lies further to the right. A part
   * whose section is not square lies on its back or face, but does not stand on an edge. Default 0.
   */
  readonly skew?: number;
  readonly reference: Reference;
}

/** How a part lies: which of its sides is down on the table, and which is against the fence. Square to each other. */
export interface Lay {
  readonly down: Side;
  readonly fence: Side;
}

/** What the saw is set to. Positive to the sawyer's right: the near end of the arm, and the top of the blade. */
export interface SawSetting {
  /** rad from the square cut. */
  readonly swing: number;
  /** rad from upright, about the line of cut. */
  readonly tilt: number;
}

export type Hand = 'left' | 'right';

/** One angle in every way that a maker sets it. All angles at least 0. */
export interface Reading {
  /** On a scale whose zero is the square cut (swing), or the upright blade (tilt). */
  readonly fromSquare: number;
  /** On a scale whose 90° is the square cut (a gauge, a protractor laid to the fence), or from the table (tilt). */
  readonly complement: number;
  /** Which way, seen by the sawyer; nothing where it is square. */
  readonly to: Hand | undefined;
  /** Rise in mm over a run of 300 mm. */
  readonly riseOver300: number;
  /** Rise in mm over a run of 12 in (304.8 mm). */
  readonly riseOver12in: number;
}

/** One way of lying, complete: nothing else is needed at the saw. */
export interface Laid {
  readonly lay: Lay;
  readonly setting: SawSetting;
  readonly mitre: Reading;
  readonly tilt: Reading;
  /** Where the waste falls, seen by the sawyer; the end that is cut points there. */
  readonly waste: Hand;
  /** The end that bears on the stop, which is on the other side of the blade. */
  readonly stopEnd: End;
}

/** A line to mark across one surface of the part, square lines being at zero. */
export interface MarkedLine {
  /** rad, signed: positive where the line falls towards smaller y as x (on a face) or z (on an edge) grows. */
  readonly angle: number;
  /** Set of a sliding bevel whose stock lies along the part: rad from its length, at most a quarter turn. */
  readonly set: number;
  /** How far (mm, ≥ 0) the line runs along the part while it crosses this surface. */
  readonly drop: number;
  /** The same angle struck on the edge of a board to set the bevel from: offset in mm over a board 100 mm and 4 in wide. */
  readonly over100: number;
  readonly over4in: number;
}

export type ArrisName = 'face-left' | 'face-right' | 'back-left' | 'back-right';

export interface Arris {
  readonly name: ArrisName;
  /** Where the cut meets the arris, in the part frame, mm. */
  readonly at: Vec3;
  /** Length of the arris from the reference to the cut, mm. */
  readonly length: number;
}

/** Which of two arrises reaches further at this end; `even` where they differ by less than POSITION_TOLERANCE. */
export type LongPoint = ArrisName | 'even';

export interface Arrises {
  readonly all: readonly [Arris, Arris, Arris, Arris];
  /** On each face, which corner is the long point, and how much longer it is (mm). */
  readonly onFace: { readonly long: LongPoint; readonly short: LongPoint; readonly by: number };
  readonly onBack: { readonly long: LongPoint; readonly short: LongPoint; readonly by: number };
  /** Of all four; the first named where several are even. */
  readonly longest: Arris;
  readonly shortest: Arris;
}

/** A cut across the part's length. */
export interface EndCut {
  readonly kind: 'end';
  readonly end: End;
  readonly plane: CutPlane;
  /** Signed mitre atan2(mx·s, my·s), with s = sign(my), in the frame of the fence line. Parallel cuts have one mitre. */
  readonly mitre: number;
  /** Signed bevel asin(mz·s). */
  readonly bevel: number;
  /** True where both are zero within the least that a saw can be set to. */
  readonly square: boolean;
  readonly onBack: Laid;
  /** Nothing where the part cannot stand on its edge. */
  readonly onEdge: Laid | undefined;
  readonly onFaceLine: MarkedLine;
  readonly onEdgeLine: MarkedLine;
  /** Angles inside the wood between the cut and each surface (rad); a sliding bevel checks the sawn end with them. */
  readonly inside: Readonly<Record<Side, number>>;
  readonly arrises: Arrises;
}

/** A cut along the part's length: a rip, never a mitre near 90°. */
export interface RipCut {
  readonly kind: 'rip';
  /** The edge that is cut. The other lies against the rip fence. */
  readonly edge: EdgeSide;
  readonly plane: CutPlane;
  /** How far the cut runs out of parallel with the fence line (rad, signed: positive where the part narrows with y). */
  readonly taper: number;
  /** Signed: positive where the back is left wider than the face side. */
  readonly bevel: number;
  readonly tilt: Reading;
  /** The taper as a jig or wedge is made to; `to` names no side. */
  readonly jig: Reading;
  /** The side left wider: nothing where the edge is square. */
  readonly wider: 'face' | 'back' | undefined;
  /** Which side goes down so that the blade leans away from the fence and does not trap the strip that is sawn off. */
  readonly down: 'face' | 'back';
  /** Width left at the reference, on each side, from the other edge, mm. */
  readonly width: { readonly face: number; readonly back: number };
}

/** A plane along the face: planed or resawn, not sawn across. */
export interface FlatCut {
  readonly kind: 'flat';
  readonly side: 'face' | 'back';
  readonly plane: CutPlane;
}

export type SawnCut = EndCut | RipCut | FlatCut;

/** Ranges of a saw. Angles in rad, at least 0. */
export interface SawRange {
  readonly swing: { readonly left: number; readonly right: number };
  readonly tilt: { readonly left: number; readonly right: number };
  /** Highest work that it cuts with the blade upright, mm. */
  readonly depth?: number;
  /** Widest work that it cuts square, mm. */
  readonly width?: number;
}
