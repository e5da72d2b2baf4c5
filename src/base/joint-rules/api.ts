import type { Box, Plane3, Region, Vec, Vec3 } from '../../geometry/index.ts';

/** Where two parts touch, in the plane of the joint: x along the joint's long direction, y across, z out of the second part into the first, mm. */
export interface JointPlace {
  readonly contact: readonly Region[];
  /** Wood behind the plane in the first and in the second part, along what is bored, mm. Infinity down the length of a part. */
  readonly behind: readonly [number, number];
  /** Thickness of the thinner part across the joint, mm; unless given, the widest disc that the contact holds. */
  readonly thickness?: number;
  /** Which way the fibres of both parts run, in the frame of the joint, any length. */
  readonly grain: readonly [Vec3, Vec3];
}

/** A loose tenon or dowel: a bar of rounded section, mm. A dowel is as wide as it is thick. */
export interface InsertSize {
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
}

/** A slot in the plane of the joint: what a cutter of the radius sweeps from one point to the other. A dowel's are equal. */
export interface InsertPlace {
  readonly from: Vec;
  readonly to: Vec;
  readonly radius: number;
}

/** Rules that can decide, by their names in shared/tables/joinery.json; `contact` is the size of the joint itself. */
export type RuleName =
  | 'mostThicknessShare'
  | 'wall'
  | 'bottomWall'
  | 'depthShare'
  | 'leastDepth'
  | 'shoulder'
  | 'spacing'
  | 'lengthShare'
  | 'leastCount'
  | 'leastThickness'
  | 'contact';

/** Surface that glue holds on the walls of the mortises of one part, mm². */
export interface GlueArea {
  readonly total: number;
  /** Where long grain meets long grain: the fibres run within 45° of the wall. The rest is end grain and holds little. */
  readonly longGrain: number;
}

/** How a joint is laid out. */
export interface JointLayout {
  readonly size: InsertSize;
  readonly places: readonly InsertPlace[];
  readonly rows: 1 | 2;
  /** How far each piece reaches into the first and the second part, and how deep the mortises are there, mm. */
  readonly into: readonly [number, number];
  readonly mortise: readonly [number, number];
  /** Thickness of the joint that was reckoned with, mm. */
  readonly thickness: number;
  /** What keeps one more from it; reckoned when first asked for. */
  readonly limitedBy: RuleName;
  readonly glue: readonly [GlueArea, GlueArea];
}

/** Why nothing of the list fits. */
export interface JointFault {
  readonly code: 'joint.nothing-fits';
  /** The piece of the list that comes nearest, and the rule that it breaks. Absent when the list is empty. */
  readonly nearest?: {
    readonly size: InsertSize;
    readonly rule: RuleName;
    /** What the rule was asked of and its limit: mm, a share, or a count. */
    readonly measured: number;
    readonly limit: number;
  };
  /** A size made to measure that would fit; absent when none worth the name does. */
  readonly wouldFit?: InsertSize;
}

export type JointOutcome =
  | { readonly fits: true; readonly layout: JointLayout }
  | { readonly fits: false; readonly fault: JointFault };

/** A part as wood: the outline from its face (z = 0) down to its back (z = −thickness), cut by planes; mm, in the part's own frame. */
export interface DrilledPart {
  readonly outline: readonly Region[];
  readonly thickness: number;
  readonly cuts: readonly { readonly name: string; readonly plane: Plane3 }[];
}

/** Least wood left. */
export interface Wall {
  /** mm; negative when the hole breaks through, by so much. */
  readonly wood: number;
  /** Where, on the part's surface. */
  readonly at: Vec3;
  /** Which surface: `face`, `back`, the name of a cut, or the identity of an edge. */
  readonly on: string;
}

export interface WallsLeft {
  /** Square to the surface, from anywhere of the hole, its bottom included. */
  readonly around: Wall;
  /** Straight on from its bottom, along the drilled line. Absent when the hole never comes out: the part is endless there. */
  readonly bottom?: Wall;
}

/** A stretch of a line along the joint, mm. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Room in the plane of a joint. */
export interface Room {
  readonly box: Box;
  /** The stretches of a level that lie in it. */
  readonly stretchesAt: (y: number) => readonly Stretch[];
}
