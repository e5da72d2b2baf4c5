import { boundsOfRegions, RESIDUE_TOLERANCE, type Region } from '../../geometry/index.ts';
import { contactRoom } from './contact-room.ts';

/** Diameter (mm) of the widest disc that a contact holds, to RESIDUE_TOLERANCE: the thickness of a joint wherever it is thickest. */
export function thicknessOfContact(contact: readonly Region[]): number {
  if (contact.length === 0) return 0;
  const box = boundsOfRegions(contact);
  const most = Math.min(box.maxX - box.minX, box.maxY - box.minY) / 2;
  let [low, high] = [0, most + RESIDUE_TOLERANCE];
  const { inset } = contactRoom(contact);
  const holds = (radius: number): boolean => inset(radius) !== undefined;
  // Most contacts hold a disc as wide as their box, a hair more none: then all that the search asks is known from the start.
  const surely = most - HAIR > 0 && holds(most - HAIR) ? most - HAIR : 0;
  while (high - low > RESIDUE_TOLERANCE / 4) {
    const radius = (low + high) / 2;
    if (radius <= surely || (radius < most + HAIR && holds(radius))) low = radius;
    else high = radius;
  }
  return low + high;
}

/** mm: far less than the search finds the diameter to. */
const HAIR = RESIDUE_TOLERANCE / 100;
