import {
  intersectRegions,
  locate,
  type Region,
  STAY,
  transformRegion,
  type Vec3,
} from '../../geometry/index.ts';
import type { Hollow } from '../contact/without-pockets.ts';
import type { Bore } from './api.ts';

/** How far (mm) along the thickness from a point of face side or back to the floor of the nearest pocket under it; Infinity where there is none. */
export function woodToPocket(p: Vec3, along: Vec3, pockets: readonly Hollow[]): number {
  return Math.min(
    Infinity,
    ...pockets
      .filter(({ region }) => locate(region, p) !== 'outside')
      .map((pocket) => toFloor(p, along, pocket)),
  );
}

/** The same over all of a bore's mouth; Infinity for a bore that does not run square to the faces. */
export function boreToPocket({ own, outline }: Bore, pockets: readonly Hollow[]): number {
  if (Math.abs(own.z.z) < 1 - 1e-6) return Infinity;
  // Seen along the thickness, the mouth lies in the part's plane as it lies in its own frame, turned over where it is drilled from the face side.
  const angle = Math.atan2(own.x.y, own.x.x);
  const mirrored = own.z.z < 0;
  const turn = mirrored ? angle + Math.PI : angle;
  const mouth: Region = transformRegion(outline, { ...STAY, turn, mirrored, shift: own.origin });
  return Math.min(
    Infinity,
    ...pockets
      .filter(({ region }) => intersectRegions([mouth], region).length > 0)
      .map((pocket) => toFloor(own.origin, own.z, pocket)),
  );
}

/** Where the pocket opens on the side drilled from, no wood lies before it. */
const toFloor = (p: Vec3, along: Vec3, { fromZ, toZ }: Hollow): number =>
  Math.max(0, along.z < 0 ? p.z - fromZ : toZ - p.z);
