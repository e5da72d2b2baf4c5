export { type Beam, type BeamLoad, type BeamSupport, type BentBeam, bendBeam } from './beam.ts';
export { type BeamSection, rectangleSection, sectionOfRegions } from './beam-section.ts';
export { type ChairPlaces, chairPlaces, type SideOfTable } from './chair-places.ts';
export {
  type Contribution,
  combineErrors,
  type ErrorBudget,
  type ErrorsOfJoint,
  errorsOfJoint,
  type FourFeet,
  gapFromAngle,
  rockFromLegLengths,
  shiftFromAngle,
  USUAL_WORK,
  type WorkErrors,
} from './error-budget.ts';
export { type KneeRoom, kneeClearance, type SittingUse, thighClearance } from './knee-clearance.ts';
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
  type WidePart,
} from './movement.ts';
export { overhang, type TopOnBase } from './overhang.ts';
export { type FootEnd, type Rocking, rocking, type Stance } from './rocking.ts';
export { type Sag, type SaggingSpan, sagOf, type WoodenBeam } from './sag.ts';
export { type Foot, supportPolygon } from './support-polygon.ts';
export { type Standing, type Tipping, type TippingLine, tipping } from './tipping.ts';
