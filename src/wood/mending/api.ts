import type { Finding } from '../../core/index.ts';
import type { Region, Vec } from '../../geometry/index.ts';

/** `boat`: two arcs that meet in points. `diamond`: four slanting sides. The points of both are rounded for the cutter. */
export type PatchShape = 'boat' | 'diamond';

/** What recess and plug are cut with: one template, one cutter, the bushing bare for the plug, and with the collar on it for the recess. Diameters, mm. */
export interface PatchTooling {
  readonly cutter: number;
  readonly bushing: number;
  /** Absent: the one that fits, which is then to be found or made. */
  readonly collar?: number;
}

export interface PatchWish {
  readonly shape: PatchShape;
  /** Length to width; USUAL_SLENDERNESS where nothing is said. */
  readonly slenderness?: number;
  /** Sound wood round the flaw that goes with it, mm. */
  readonly margin?: number;
  /** Room for glue between plug and recess all round, mm. */
  readonly clearance?: number;
}

/** A patch, in the plane of the part that it mends, mm. */
export interface Patch {
  readonly shape: PatchShape;
  readonly centre: Vec;
  /** Direction of its length and of the grain, rad. */
  readonly grain: number;
  readonly length: number;
  readonly width: number;
  /** Opening to cut in the one template. */
  readonly opening: Region;
  /** What the cutter takes out, with the collar on the bushing. */
  readonly recess: readonly Region[];
  /** What it leaves standing, with the bushing bare. */
  readonly plug: readonly Region[];
  /** Diameter of the collar with which they fit at the clearance asked for, mm; and the one reckoned with. */
  readonly collarNeeded: number;
  readonly collar: number;
  /** Room between plug and recess all round, mm; negative: the plug is too large. */
  readonly gap: number;
  readonly findings: readonly Finding[];
}

/** Where a plug is to be cut from an offcut: its centre, how far its grain is turned from the offcut's length, rad. */
export interface PatchPlace {
  readonly at: Vec;
  readonly turned: number;
}

export interface PatchPlaceFault {
  readonly kind: 'off-the-offcut' | 'over-a-defect' | 'off-the-grain' | 'little-support';
  /** In the board's plane, mm. */
  readonly at?: Vec;
  /** mm², or rad for the grain; and what it may be at most. */
  readonly measured: number;
  readonly limit: number;
}
