export type { Cut, PlacedPart, StandingBase } from './api.ts';
export type { Contact, Gap, PartFace, SolidPart } from './contact/api.ts';
export { contactsBetween } from './contact/contacts-between.ts';
export { facesOf } from './contact/faces-of.ts';
export { frameInPart } from './contact/frame-in-part.ts';
export { gapBetween } from './contact/gap-between.ts';
export { sectionOfPart } from './contact/section-of-part.ts';
export type { SawRange } from './end-cut/index.ts';
export type { Caul, GlueGroup, GlueStep } from './glue-up/api.ts';
export { caulAsPart } from './glue-up/cauls-of.ts';
export type {
  BaseJoints,
  Bore,
  GlueFacts,
  Joint,
  JointSection,
  JointSide,
  JointWork,
  Measure,
  Pocket,
  PocketCorner,
  SectionWall,
  Tenon,
} from './joints/api.ts';
export { type FaceEdge, faceEdgeOf } from './joints/face-edge.ts';
export { joinBase } from './joints/join-base.ts';
export type { JointOptions } from './joints/shop.ts';
export type { MadeMember, MadePart } from './made/api.ts';
export { partsToMake } from './made/parts-to-make.ts';
export { loadSolids, type SolidKernel } from './solids/index.ts';
export { standBase } from './stand/stand-base.ts';
export { type BuildOptions, type BuiltBase, buildBase } from './whole/build-base.ts';
export { partForPattern } from './whole/part-for-pattern.ts';
export { type SawnCut, sawCautions, sayCut, sayCutError, sayLaid, sayNextCut, sayWays } from './end-cut/index.ts';
export { type PictureView, settingPicture } from './end-cut/index.ts';
export type { CutListLine } from './whole/cut-list.ts';
export type { PartCut } from './whole/cuts-of-part.ts';
export { type TopFixings, topFixings } from './whole/top-fixings.ts';
