import {
  areaOfRegions,
  boundsOfRegions,
  CONTACT_AREA,
  CONTACT_TURN,
  dot3,
  type Frame,
  heightOver,
  intersectRegions,
  pointToWorld,
  type Region,
  scale3,
  subtract3,
} from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Gap, PartFace } from './api.ts';
import { facing, turnBetween } from './contacts-between.ts';
import { facesOf } from './faces-of.ts';
import { frameInPart } from './frame-in-part.ts';
import { sectionOfPart } from './section-of-part.ts';

/** Faces turned further from each other than this (rad) do not belong together. */
const MOST_TURN = Math.PI / 4;

/**
 * By how much two parts that do not touch miss each other. Of the pairs of faces that look at each other those lying opposite each other
 * count first, then those that miss by least. Nothing where no two faces look at each other.
 */
export function gapBetween(
  a: PlacedPart,
  b: PlacedPart,
  faces: (part: PlacedPart) => readonly PartFace[] = facesOf,
): Gap | undefined {
  const gaps = faces(a).flatMap((face) =>
    faces(b).flatMap((other) => {
      const turned = turnBetween(face, other);
      if (turned > MOST_TURN) return [];
      const shared = facing(face, other);
      const opposite = areaOfRegions(shared) > CONTACT_AREA;
      const apart = distanceOf(face, other, opposite ? shared : other.regions, opposite);
      return [{ a: face.name, b: other.name, apart, turned: turned < CONTACT_TURN ? 0 : turned, opposite }];
    }),
  );
  return gaps.toSorted((p, q) => Number(q.opposite) - Number(p.opposite) || missBy(p) - missBy(q))[0];
}

/** How far from touching, mm: a turn counts as what it opens over a contact of 100 mm. */
const missBy = ({ apart, turned }: Gap): number => Math.abs(apart) + 100 * turned;

/** mm from the first face to the second along the first one's normal, at the middle of what lies opposite. */
function distanceOf(face: PartFace, other: PartFace, regions: readonly Region[], opposite: boolean): number {
  const box = boundsOfRegions(regions);
  const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2, z: 0 };
  const at = pointToWorld(opposite ? face.frame : other.frame, middle);
  const along = dot3(face.plane.normal, other.plane.normal);
  return opposite ? -heightOver(other.plane, at) / along : heightOver(face.plane, at);
}

/**
 * Do two parts share wood? Asked in the plane half way between two of their faces that lie into each other, where what
 * they share is widest.
 */
export function overlaps(a: PlacedPart, b: PlacedPart, face: PartFace, apart: number): boolean {
  const origin = subtract3(face.frame.origin, scale3(face.frame.z, -apart / 2));
  const level: Frame = { ...face.frame, origin };
  const [sectionA, sectionB] = [a, b].map((part) => sectionOfPart(part, frameInPart(part, level)));
  return areaOfRegions(intersectRegions(sectionA!, sectionB!)) > CONTACT_AREA;
}
