import type { Vec3 } from '../../geometry/index.ts';

/** What is glued at one time. */
export interface GlueStep {
  /** Joints glued in it, by identity, and their names in the form, each once. */
  readonly joints: readonly string[];
  readonly names: readonly string[];
  /** What comes of it: groups of placed parts that are one piece afterwards; several where the same is made several times. */
  readonly groups: readonly GlueGroup[];
}

export interface GlueGroup {
  /** Placed parts, by identity. */
  readonly parts: readonly string[];
  /** The ways (world, unit) in which it is clamped, each with the opening that the clamps need. */
  readonly clamps: readonly Clamp[];
}

export interface Clamp {
  /** The way in which the joints close, as near as one way serves them. */
  readonly direction: Vec3;
  /** From wood to wood along that way where the jaws press, over the joints, and with the cauls, mm. */
  readonly opening: number;
  readonly withCauls: number;
  readonly joints: readonly string[];
  readonly cauls: readonly CaulPlace[];
  /** Joints whose tenons or dowels do not run in that way: rad, and mm by which they must give sideways over their depth. */
  readonly askew: readonly { readonly joint: string; readonly angle: number; readonly sideways: number }[];
}

/** Where a clamp's jaw meets a part on a slant: a wedge goes between. */
export interface CaulPlace {
  readonly part: string;
  /** Face of the part that it lies on. */
  readonly face: string;
  /** Between the face and the jaw, rad. */
  readonly angle: number;
  /** Extent of the place, mm: along the slope, and across it. */
  readonly along: number;
  readonly across: number;
}

/** A wedge to make: how many, of which angle. */
export interface Caul {
  readonly name: string;
  readonly angle: number;
  readonly along: number;
  readonly across: number;
  readonly count: number;
  readonly places: readonly CaulPlace[];
}
