import { type Region, type Similarity, STAY, transformRegion } from '../../geometry/index.ts';
import type { SketchedPart } from '../../sketch/index.ts';
import type { Cut, PlacedPart } from '../api.ts';
import type { JointWork } from '../joints/api.ts';
import { mirrorWork } from '../joints/mirror-work.ts';
import { otherHand } from '../stand/other-hand.ts';

/** All that tells one piece of wood from another, in its own frame. */
export interface Shape {
  readonly drawn: SketchedPart;
  readonly face: readonly Region[];
  readonly back: readonly Region[];
  readonly silhouette: readonly Region[];
  readonly cuts: readonly Cut[];
  readonly work: readonly JointWork[];
}

export const shapeOf = (part: PlacedPart, work: readonly JointWork[]): Shape => ({
  drawn: part.drawn,
  face: part.face,
  back: part.back,
  silhouette: part.silhouette,
  cuts: part.cuts,
  work,
});

const TURN_OVER: Similarity = { ...STAY, mirrored: true };

/** The other hand. */
export function mirrorShape({ drawn, face, back, silhouette, cuts, work }: Shape): Shape {
  const over = (regions: readonly Region[]): readonly Region[] =>
    regions.map((region) => transformRegion(region, TURN_OVER));
  return {
    drawn: otherHand(drawn),
    face: over(face),
    back: over(back),
    silhouette: over(silhouette),
    cuts: cuts.map((cut) => {
      const { normal } = cut.plane;
      return { ...cut, plane: { ...cut.plane, normal: { ...normal, x: -normal.x } } };
    }),
    work: work.map(mirrorWork),
  };
}
