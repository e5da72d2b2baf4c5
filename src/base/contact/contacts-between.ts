import {
  add3,
  areaOfRegions,
  boundsOfRegions,
  CONTACT_AREA,
  CONTACT_TOLERANCE,
  CONTACT_TURN,
  cross3,
  dot3,
  type Frame,
  heightOver,
  intersectRegions,
  length3,
  POSITION_TOLERANCE,
  pointToWorld,
  type Region,
  scale3,
  transformRegion,
} from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Contact, PartFace } from './api.ts';
import { facesOf } from './faces-of.ts';
import { similarityTo } from './similarity-to.ts';

/**
 * Where two parts touch, the largest contact first: every pair of their flat faces that lie in one plane and look at each other. `faces` may
 * remember what it has answered.
 */
export function contactsBetween(
  a: PlacedPart,
  b: PlacedPart,
  faces: (part: PlacedPart) => readonly PartFace[] = facesOf,
): readonly Contact[] {
  const others = faces(b);
  return faces(a)
    .flatMap((face) => others.flatMap((other) => contactOf(a, face, b, other) ?? []))
    .toSorted((p, q) => q.area - p.area);
}

function contactOf(a: PlacedPart, face: PartFace, b: PlacedPart, other: PartFace): Contact | undefined {
  // Most pairs look nowhere near each other.
  if (dot3(face.plane.normal, other.plane.normal) > 0 || turnBetween(face, other) > CONTACT_TURN)
    return undefined;
  const near = Math.abs(heightOver(face.plane, other.frame.origin));
  // Far from the contact even a slight turn carries the other face's origin off; the exact question follows.
  if (near > 100 * CONTACT_TOLERANCE) return undefined;
  const shared = facing(face, other);
  const area = areaOfRegions(shared);
  if (area < CONTACT_AREA || !touches(face, other, shared)) return undefined;
  const { frame, regions } = inJointFrame(face.frame, shared);
  return { a: { part: a.id, face }, b: { part: b.id, face: other }, frame, regions, area };
}

/** rad by which two faces are turned from lying flat on each other. */
export function turnBetween(face: PartFace, other: PartFace): number {
  const [n, m] = [face.plane.normal, other.plane.normal];
  return Math.atan2(length3(cross3(n, m)), -dot3(n, m));
}

/** What two faces have in common seen square to the first, in the first one's frame. */
export function facing(face: PartFace, other: PartFace): readonly Region[] {
  const to = similarityTo(other.frame, face.frame);
  return intersectRegions(
    face.regions,
    other.regions.map((region) => transformRegion(region, to)),
  );
}

function touches(face: PartFace, other: PartFace, shared: readonly Region[]): boolean {
  return shared.every(({ outer }) =>
    outer.edges.every(({ from }) => {
      const p = pointToWorld(face.frame, { ...from, z: 0 });
      return Math.abs(heightOver(other.plane, p)) <= CONTACT_TOLERANCE;
    }),
  );
}

function inJointFrame(
  frame: Frame,
  regions: readonly Region[],
): { readonly frame: Frame; readonly regions: readonly Region[] } {
  const box = boundsOfRegions(regions);
  const at = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
  const isUpright = box.maxY - box.minY > box.maxX - box.minX + POSITION_TOLERANCE;
  const origin = add3(frame.origin, add3(scale3(frame.x, at.x), scale3(frame.y, at.y)));
  const joint = isUpright
    ? { origin, x: frame.y, y: scale3(frame.x, -1), z: frame.z }
    : { origin, x: frame.x, y: frame.y, z: frame.z };
  const to = similarityTo(frame, joint);
  return { frame: joint, regions: regions.map((region) => transformRegion(region, to)) };
}
