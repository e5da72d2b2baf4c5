export { type BeamLoad, type BeamSupport, bendBeam } from './beam.ts';
export { type BeamSection, rectangleSection, sectionOfRegions } from './beam-section.ts';
export { type ChairPlaces, chairPlaces } from './chair-places.ts';
export {
  combineErrors,
  type ErrorBudget,
  type ErrorsOfJoint,
  errorsOfJoint,
  gapFromAngle,
  rockFromLegLengths,
  shiftFromAngle,
  USUAL_WORK,
  type WorkErrors,
} from './error-budget.ts';
export { kneeClearance, thighClearance } from './knee-clearance.ts';
export type { Measured } from './measured.ts';
export {
  type Climate,
  type FixingSlot,
  fixingSlot,
  movementByCoefficient,
  movementByShrinkage,
  type Sawn,
  type SeasonalMovement,
  seasonalMovement,
} from './movement.ts';
export { overhang } from './overhang.ts';
export { type Rocking, rocking } from './rocking.ts';
export { type Sag, sagOf } from './sag.ts';
export { supportPolygon } from './support-polygon.ts';
export { type Standing, type Tipping, tipping } from './tipping.ts';
