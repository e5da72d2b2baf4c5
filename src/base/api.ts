import type { EdgeRole, Frame, Plane3, Region } from '../geometry/index.ts';
import type { JointSketch, SketchedPart, TopSketch } from '../sketch/index.ts';

/**
 * A plane that a part is cut by, in the part's own frame (x along its width, y along its length, z out of the face side, the face at
 * z = 0): its normal points out of the wood that stays.
 */
export interface Cut {
  /** Name of the plane in the form: `floor`. Edges that the cut makes on face and back carry it as identity. */
  readonly name: string;
  readonly role: EdgeRole;
  readonly plane: Plane3;
  /** How the cut's edge reads from this part's other cuts: false when the plane misses the part. */
  readonly meets: boolean;
  /** Where it misses: how much longer (mm, along the part's length) the wood would have to be to be cut all over; otherwise 0. */
  readonly short: number;
}

/**
 * One piece of wood where it stands. It is the prism of its outline from the face side (z = 0) down to the back (z = −thickness), cut
 * by its planes. Face, back and silhouette are in the part's plane; they differ once an end is bevelled.
 */
export interface PlacedPart {
  /** Unique: the place's name, and a number from the second copy on (`leg`, `leg-2`). */
  readonly id: string;
  readonly place: string;
  /** 0 for the part as placed, then its copies in the order in which they are made. */
  readonly copy: number;
  /** As marked on the wood, seen by the sitter: `FL` is front left. */
  readonly mark: string;
  readonly label: string;
  /** `right` is the mirror image of what the form draws. */
  readonly hand: 'left' | 'right';
  /** From the part's frame to the world. */
  readonly frame: Frame;
  /** As drawn by the form before any cut, mirrored already when the hand is right. */
  readonly drawn: SketchedPart;
  readonly cuts: readonly Cut[];
  readonly face: readonly Region[];
  readonly back: readonly Region[];
  /** What holds the part at every depth: the least board it can be made from. */
  readonly silhouette: readonly Region[];
  readonly beam: boolean;
}

/** Every part of a base in its place. */
export interface StandingBase {
  readonly parts: readonly PlacedPart[];
  /** The form's planes, in the world. */
  readonly planes: Readonly<Record<string, Plane3>>;
  readonly joints: readonly JointSketch[];
  readonly top: TopSketch;
  readonly levellers: number;
  readonly use: 'table' | 'desk' | 'bench' | 'stool';
}
