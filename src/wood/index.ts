export { accountOf, accountOfBoard, type BoardAccount, type LayAccount } from './boards/account.ts';
export type {
  Board,
  Defect,
  DefectKind,
  Laid,
  LayFault,
  LayRules,
  Lying,
  Price,
  ToLay,
} from './boards/api.ts';
export { checkLaid } from './boards/check-laid.ts';
export { largestRectangle } from './boards/largest-rectangle.ts';
export { layAt } from './boards/lay-at.ts';
export { type LyingMove, moveLying } from './boards/move-lying.ts';
export { movedOnBoard } from './boards/moved-on-board.ts';
export { offcutAt } from './boards/offcut-at.ts';
export { offcutsOf } from './boards/offcuts.ts';
export { priceOf } from './boards/price-of.ts';
export { boardFeet, volumeOf } from './boards/volume.ts';
export type {
  Bookmatch,
  LeafFace,
  LeafMap,
  LeafPiece,
  LeafPlace,
  MatchedFrame,
} from './bookmatch/api.ts';
export { checkLeaves } from './bookmatch/check-leaves.ts';
export { framesOf } from './bookmatch/frames-of.ts';
export { leafMap, type MovedOnBoard } from './bookmatch/leaf-map.ts';
export { type LeafByHand, leavesByHand } from './bookmatch/leaves-by-hand.ts';
export {
  depthOfShow,
  figureShift,
  type MatchDrift,
  matchDrift,
  RING_SLOPES,
} from './bookmatch/match-drift.ts';
export { piecesOfBase } from './bookmatch/pieces-of-base.ts';
export { compose, inverse } from './bookmatch/similarity.ts';
export type {
  CarriedFigure,
  Photograph,
  PhotographFault,
  Picture,
  TruePhotograph,
} from './figure/api.ts';
export {
  type BoardPicturePlan,
  boardPicturePlan,
  photographedBox,
} from './figure/board-picture.ts';
export { carriedFigure } from './figure/carried-figure.ts';
export { type FacedMesh, facesOfMesh } from './figure/faces-of-mesh.ts';
export { halvedPicture, picturePyramid } from './figure/halved-picture.ts';
export { photographFor } from './figure/photograph-for.ts';
export { pieceOnBoard } from './figure/piece-on-board.ts';
export { resamplePicture } from './figure/resample-picture.ts';
export { TILE, tileLevels } from './figure/tile-plan.ts';
export { type TileInView, tilesInView } from './figure/tiles-in-view.ts';
export { truePhotograph } from './figure/true-photograph.ts';
export type { Insert, InsertPlan, InsertRow } from './inserts/api.ts';
export { insertFindings } from './inserts/insert-findings.ts';
export { insertPlan, usualInsert } from './inserts/insert-plan.ts';
export type { LayCost, Layout, LayTask } from './layout/api.ts';
export { searchLayout, USUAL_STEPS } from './layout/search-layout.ts';
export type {
  Patch,
  PatchPlace,
  PatchPlaceFault,
  PatchShape,
  PatchTooling,
} from './mending/api.ts';
export { checkPatchPlace, plugAt } from './mending/check-patch-place.ts';
export { PATCH_CAUTIONS } from './mending/patch-findings.ts';
export { planPatch } from './mending/plan-patch.ts';
export { type MovingPart, movementOfParts } from './movement/movement-of-parts.ts';
export type { Layer, ResawPlan, ResawStack } from './resaw/api.ts';
export { backingNeeded, boardNeeded, mostDrift, mostLeaves, roughNeeded } from './resaw/needed.ts';
export { resawFindings } from './resaw/resaw-findings.ts';
export { resawStack } from './resaw/resaw-stack.ts';
