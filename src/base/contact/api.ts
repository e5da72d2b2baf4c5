import type { Frame, Plane3, Region } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';

/** What tells where the wood of a part is, in its own frame: the prism that was drawn, and its cuts. */
export interface SolidPart {
  readonly drawn: Pick<PlacedPart['drawn'], 'region' | 'thickness'>;
  readonly cuts: PlacedPart['cuts'];
}

/** A flat face of a placed part. */
export interface PartFace {
  /** `face` (the face side), `back`, the identity of a straight edge of the outline, or the name of a cut. */
  readonly name: string;
  readonly kind: 'face' | 'back' | 'edge' | 'cut';
  /** Identities of all the edges of the outline that lie in it; several where a straight edge was drawn in pieces. */
  readonly edges: readonly string[];
  /** In the world, the normal out of the wood. */
  readonly plane: Plane3;
  /** The face's own frame in the part's frame: z out of the wood, y towards the face side (on face and back: along the part). */
  readonly own: Frame;
  /** The same frame in the world. */
  readonly frame: Frame;
  /** The face in its frame, every cut taken off. */
  readonly regions: readonly Region[];
}

/** Two parts touching: where two of their faces lie in one plane and look at each other. */
export interface Contact {
  /** Identities of the two parts, and the faces that touch. */
  readonly a: { readonly part: string; readonly face: PartFace };
  readonly b: { readonly part: string; readonly face: PartFace };
  /**
   * In the world: the origin in the middle of the box round the contact, z from a into b, x along that axis of a's face along which the
   * contact is longer.
   */
  readonly frame: Frame;
  /** Where they touch, in that frame. */
  readonly regions: readonly Region[];
  /** mm². */
  readonly area: number;
}

/** How two parts that do not touch stand to each other: by those of their faces that come nearest to touching. */
export interface Gap {
  readonly a: string;
  readonly b: string;
  /** mm between the two faces: apart when positive, into each other when negative. */
  readonly apart: number;
  /** rad by which the faces are turned from each other: 0 when parallel. */
  readonly turned: number;
  /** Do the faces lie opposite each other, seen square to a's? */
  readonly opposite: boolean;
}
