import {
  areaOfRegions,
  CONTACT_AREA,
  CONTACT_TOLERANCE,
  type Region,
  type Similarity,
  STAY,
  subtractRegions,
  transformRegion,
} from '../../geometry/index.ts';
import type { PartFace } from './api.ts';

/** Wood taken out of a part from one of its faces, in its own frame. */
export interface Hollow {
  readonly region: readonly Region[];
  readonly fromZ: number;
  readonly toZ: number;
}

const TURN_OVER: Similarity = { ...STAY, mirrored: true };

/** The faces that are left once pockets are cut into face side and back. */
export function withoutPockets(
  faces: readonly PartFace[],
  thickness: number,
  pockets: readonly Hollow[],
): readonly PartFace[] {
  const open = (face: PartFace): readonly Region[] =>
    pockets.flatMap(({ region, fromZ, toZ }) => {
      if (face.kind === 'face' && fromZ > -CONTACT_TOLERANCE) return region;
      if (face.kind === 'back' && toZ < CONTACT_TOLERANCE - thickness)
        return region.map((each) => transformRegion(each, TURN_OVER));
      return [];
    });
  return faces
    .map((face) => {
      const lost = open(face);
      return lost.length === 0 ? face : { ...face, regions: subtractRegions(face.regions, lost) };
    })
    .filter(({ regions }) => areaOfRegions(regions) > CONTACT_AREA);
}
