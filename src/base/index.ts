export type { PlacedPart, StandingBase } from './api.ts';
export type { SawRange } from './end-cut/index.ts';
export {
  type CutTable,
  linesToMark,
  type PictureView,
  sawCautions,
  sayCut,
  sayCutError,
  sayHoldDown,
  sayNextCut,
  sayWays,
  settingPicture,
  tableOfWays,
  type WedgePicture,
} from './end-cut/index.ts';
export { caulCautions } from './glue-up/caul-cautions.ts';
export { caulAsPart } from './glue-up/cauls-of.ts';
export type { Bore, Joint, JointSection, JointWork, Pocket, Tenon } from './joints/api.ts';
export { joinBase } from './joints/join-base.ts';
export type { KeptBase } from './kept/keep-cut-parts.ts';
export type { MadePart } from './made/api.ts';
export { partsToMake } from './made/parts-to-make.ts';
export type { PartMesh, SolidKernel } from './solids/index.ts';
export { standBase } from './stand/stand-base.ts';
export { type Climate, type Sawn, type SeasonalMovement, seasonalMovement } from './statics/index.ts';
export { type BuiltBase, buildBase } from './whole/build-base.ts';
export type { CutListLine } from './whole/cut-list.ts';
export type { PartCut } from './whole/cuts-of-part.ts';
export { lengthOfPart } from './whole/length-of-part.ts';
export { loadSolids, type Solids } from './whole/load-solids.ts';
export { meshesOfBase } from './whole/meshes-of-base.ts';
export { partForPattern } from './whole/part-for-pattern.ts';
export { placeBase } from './whole/place-base.ts';
export {
  type AirOfYear,
  type TopFixings,
  type TopHeld,
  topFixings,
  USUAL_TOP,
  USUAL_YEAR,
} from './whole/top-fixings.ts';
