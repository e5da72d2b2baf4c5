import { boundsOfRegions, RESIDUE_TOLERANCE, type Region } from '../../geometry/index.ts';
import { contactRoom } from './contact-room.ts';

/** Diameter (mm) of the widest disc that a contact holds, to RESIDUE_TOLERANCE: the thickness of a joint wherever it is thickest. */
export function thicknessOfContact(contact: readonly Region[]): number {
  if (contact.length === 0) return 0;
  const box = boundsOfRegions(contact);
  let [low, high] = [0, Math.min(box.maxX - box.minX, box.maxY - box.minY) / 2 + RESIDUE_TOLERANCE];
  const { inset } = contactRoom(contact);
  while (high - low > RESIDUE_TOLERANCE / 4) {
    const radius = (low + high) / 2;
    if (inset(radius) !== undefined) low = radius;
    else high = radius;
  }
  return low + high;
}
