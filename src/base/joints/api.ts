import type { Finding } from '../../core/index.ts';
import type { Frame, Region, Vec, Vec3 } from '../../geometry/index.ts';
import type { DowelSize, LooseTenonSize, WoodScrew } from '../../materials/index.ts';
import type { JointKind } from '../../sketch/index.ts';
import type { Contact } from '../contact/api.ts';

/** A distance to mark out, mm. */
export interface Measure {
  /** What it is measured from; of an edge or an end `edge` tells which. */
  readonly from: 'face side' | 'face edge' | 'end';
  readonly edge?: string;
  /** Measured along the end that it lies on, which need not be square to what it is measured from; else square to that. */
  readonly along?: 'end';
  /** What of the work it runs to. */
  readonly to: 'centre' | 'near side' | 'far side';
  readonly value: number;
  /** Unit, in the part's frame: which way it is measured, from there towards the work. */
  readonly away: Vec3;
}

/** Cut square into a face of a part: a mortise, or the hole for a dowel. */
export interface Bore {
  readonly kind: 'mortise' | 'hole';
  /** The joint that it belongs to. */
  readonly joint: string;
  /** The face that it is cut into, as PartFace names it. */
  readonly face: string;
  /** In the part's frame: the origin in the middle of its mouth, z along the drilled line into the wood, x along its length. */
  readonly own: Frame;
  /** Its mouth, in that frame. */
  readonly outline: Region;
  /** mm along x, mm along y; of a hole both are its diameter. */
  readonly length: number;
  readonly width: number;
  readonly depth: number;
  readonly measures: readonly Measure[];
}

/** Left standing on the end of a part. */
export interface Tenon {
  readonly kind: 'tenon';
  readonly joint: string;
  /** The face whose rest is the shoulder. */
  readonly face: string;
  /** In the part's frame: the origin in the middle of the tenon's root, z out of the wood, x along its width. */
  readonly own: Frame;
  /** Its section, in that frame. */
  readonly outline: Region;
  /** mm along x, mm along y, mm from the shoulder. */
  readonly width: number;
  readonly thickness: number;
  readonly length: number;
  readonly measures: readonly Measure[];
}

/** An inside corner that a cutter leaves round, or that is squared by hand. */
export interface PocketCorner {
  readonly at: Vec;
  /** Angle between its walls, measured in the pocket, rad. */
  readonly angle: number;
  /** What the cutter leaves there: mm² and mm from the corner. */
  readonly residue: { readonly area: number; readonly reach: number };
}

/** Taken out of a part where another crosses it. */
export interface Pocket {
  readonly kind: 'pocket';
  readonly joint: string;
  /** In the part's plane. */
  readonly region: readonly Region[];
  /** Depths in the part's frame between which the wood goes: 0 on the face side, −thickness on the back; from the larger to the smaller. */
  readonly fromZ: number;
  readonly toZ: number;
  readonly corners: readonly PocketCorner[];
}

export type JointWork = Bore | Tenon | Pocket;

/** What a joint asks of one of its two parts. */
export interface JointSide {
  /** The placed part. */
  readonly part: string;
  readonly work: readonly JointWork[];
}

export interface GlueFacts {
  /** All faces that are glued, mm². */
  readonly area: number;
  /** The share of it where long grain lies on long grain; the rest has end grain on one side at least and holds little. */
  readonly longGrain: number;
}

/** A least thickness of wood, dimensioned in the section. */
export interface SectionWall {
  readonly from: Vec;
  readonly to: Vec;
  readonly value: number;
}

/** A joint cut open along the drilled line: x along the joint's long direction, y along the drilled line into the second part. */
export interface JointSection {
  /** In the world. */
  readonly frame: Frame;
  readonly parts: readonly {
    readonly part: string;
    readonly regions: readonly Region[];
    /** What is taken out of it, or stands out of it, in the section. */
    readonly bores: readonly Region[];
    readonly tenons: readonly Region[];
  }[];
  readonly walls: readonly SectionWall[];
}

/** Two placed parts joined. */
export interface Joint {
  /** Unique: the joint's name, and a number from the second pair on. */
  readonly id: string;
  readonly name: string;
  readonly label: string;
  readonly kind: JointKind;
  /** The first has the tenon of a mortise and tenon. */
  readonly sides: readonly [JointSide, JointSide];
  /** Where they touch; parts that cross touch only once they are halved. */
  readonly contact?: Contact;
  /** What goes into the holes, and how many. */
  readonly loose?:
    | { readonly kind: 'tenon'; readonly size: LooseTenonSize; readonly count: number }
    | { readonly kind: 'dowel'; readonly size: DowelSize; readonly count: number };
  /** Holes for a screw: through the first part, into the second. */
  readonly screw?: WoodScrew;
  readonly glue: GlueFacts;
  /** Reckoned when first asked for. */
  readonly section?: JointSection;
  readonly findings: readonly Finding[];
}

/** Every joint of a base, and all that is to be said of them, each thing once. */
export interface BaseJoints {
  readonly joints: readonly Joint[];
  readonly findings: readonly Finding[];
}
