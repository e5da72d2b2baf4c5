export type { Box3, Solid, SolidKernel } from './api.ts';
export { type ClearWidth, clearWidths } from './clear-widths.ts';
export { contactArea } from './contact-area.ts';
export { type Collision, findCollisions } from './find-collisions.ts';
export { findMisses, type JointMiss } from './find-misses.ts';
export { type FloorContact, type Footprint, floorContact } from './floor-contact.ts';
export { leastGap, placeOfLeastGap } from './least-gap.ts';
export { loadSolids } from './load-solids.ts';
export { type Lowest, lowestOver } from './lowest-over.ts';
export {
  type MeasuredBase,
  type MeasuredSolid,
  massOfPart,
  measureSolids,
  type PartMass,
} from './measure-solids.ts';
export { silhouetteOf } from './silhouette-of.ts';
export { freeSolids, solidOf, withSolids } from './solid-of.ts';
export { type WoodWithin, woodWithin } from './wood-within.ts';
