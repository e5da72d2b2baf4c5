export { jointsChapter } from './book/joints-chapter.ts';
export { cutListCsv } from './book/part-chapters.ts';
export { shopBookOf, woodOfBook } from './book/shop-book-of.ts';
export { type BarReadings, calibratePaper } from './calibrate-paper.ts';
export { changeUnits } from './change-units.ts';
export { type ComputeOptions, compute } from './compute.ts';
export type { BaseView, Computed, ComputedPattern, Wanted } from './computed.ts';
export { applyFigure } from './cures/apply-figure.ts';
export { computeWithCures } from './cures/compute-with-cures.ts';
export { defaultParameters } from './default-parameters.ts';
export type { Design, PatternRequest, TypedPaper, TypedTooling, TypedWood } from './design-schema.ts';
export { type GridChange, isGridPinned, moveGrid, searchGrid } from './grid-by-hand.ts';
export { designAfterPull } from './handles/design-after-pull.ts';
export { type HeldHandle, holdHandle } from './handles/hold-handle.ts';
export { pullHeld, settleHeld } from './handles/pull-held.ts';
export { figureSets } from './lay/figure-sets.ts';
export { type FigureOnPiece, figuresOfDesign } from './lay/figures-of-design.ts';
export { type DesignLayout, layDesign, layoutOfDesign } from './lay/lay-design.ts';
export { layFaultWords } from './lay/lay-fault-words.ts';
export { typedPlacement } from './lay/typed-placements.ts';
export { unlaidGroups } from './lay/unlaid-groups.ts';
export { lengthStyleOf } from './length-style.ts';
export { designLink } from './link/design-link.ts';
export { readLink } from './link/read-link.ts';
export { type Looked, lookAtDesign } from './look-at-design.ts';
export { lengthDrivers } from './measured-length/length-drivers.ts';
export type { Memo } from './memo.ts';
export { nextRevision } from './next-revision.ts';
export { readOutlineJson, writeOutlineJson } from './outline-file/outline-json.ts';
export { type ReadOutlines, readOutlineSvg, writeOutlineSvg } from './outline-file/outline-svg.ts';
export type { OwnShape } from './own-shape/api.ts';
export { checkOwnShape } from './own-shape/check-own-shape.ts';
export { formOfOwnShape } from './own-shape/form-of-own-shape.ts';
export { loopsOfRegion } from './own-shape/own-shape-of-region.ts';
export { nameParameters } from './parameters-behind.ts';
export { patchesOfDesign, typedPatchPlace } from './patches/patches-of-design.ts';
export { printPatch } from './patches/print-patch.ts';
export type { TypedPatch } from './patches/resolve-patch.ts';
export { type Driver, driversOf } from './pictures/drivers-of.ts';
export { type PictureOf, partPictureOf, viewOf } from './pictures/picture-of.ts';
export { solveFigure, type WantedFigure } from './pictures/solve-figure.ts';
export { metaOf, printOf } from './print-of-pattern.ts';
export {
  printBook,
  printCalibration,
  printPattern,
  printSettingOut,
  SETTING_OUT_VIEWS,
  type SettingOutView,
} from './printed.ts';
export { type DesignFile, readDesign } from './read-design.ts';
export { readResult } from './read-result.ts';
export { readWorkshop } from './read-workshop.ts';
export { type RenewalChange, renewDesign } from './renew-design.ts';
export { resolvePaper } from './resolve-paper.ts';
export { resultJsonSchema, type WrittenResult } from './result-schema.ts';
export { sameValue } from './same-value.ts';
export { placeProblems } from './schema-problems.ts';
export { openSession, type Session } from './session.ts';
export { startDesign } from './start-design.ts';
export { lookAtCell, type StudyLook } from './study/look-at-cell.ts';
export { type SmallSide, smallPicture } from './study/small-picture.ts';
export {
  type StudyAxis,
  studyAxes,
  studyGrid,
} from './study/study-grid.ts';
export { baseForParts, type Choice, takeFromWorkshop } from './take-from-workshop.ts';
export { guideFor, unnamedPaper, usualPaper, usualTooling, usualUnits } from './usual.ts';
export { usualKnownPoints } from './usual-known-points.ts';
export { USUAL_MADE, usualBoard, usualPatch, usualResawPlan, usualRoom } from './usual-wood.ts';
export { usualWorkshop } from './usual-workshop.ts';
export { removeBoard, renameBoard } from './wood-names.ts';
export type { Workshop } from './workshop-schema.ts';
export { writeDesign, writeWorkshop } from './write-design.ts';
export { resultOf, writeResult } from './write-result.ts';
