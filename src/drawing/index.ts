export type * from './api.ts';
export { figuresOfBase } from './dimension/figures-of-base.ts';
export { valueOfDimension } from './dimension/value-of.ts';
export { type Lettering, readLettering } from './lettering/lettering.ts';
export { fontSizeOf, widthOfText } from './lettering/metrics.ts';
export { finest, precisionWords } from './pattern/check-precision.ts';
export { drawPattern } from './pattern/draw-pattern.ts';
export { openingSizes } from './pattern/opening-sizes.ts';
export { settingOut } from './pattern/setting-out.ts';
export { routingScene } from './routing-view/routing-scene.ts';
export { boundsOfMarks } from './scene/bounds-of-marks.ts';
export { clipScene } from './scene/clip-scene.ts';
export { transformMark, transformScene } from './scene/transform-scene.ts';
export { INKS, LINE_STYLES, TINT_STRENGTH } from './styles.ts';
export {
  boxForScreen,
  type ScreenLine,
  type ScreenScene,
  type ScreenText,
  sceneForScreen,
} from './svg/scene-for-screen.ts';
export { sceneToSvg } from './svg/scene-to-svg.ts';
export { basePicture, pictorialOf } from './title/base-pictures.ts';
export { battenComb } from './title/batten-comb.ts';
export { type FittedPicture, fitPicture } from './title/fit-picture.ts';
export { jointPictures } from './title/joint-pictures.ts';
export { letterNear } from './title/letter-near.ts';
export { partPictures } from './title/part-pictures.ts';
export { platesOfPart } from './title/part-plates.ts';
export { type LineDrawing, layPicture, type Picture, type PictureLine, viewScene } from './title/picture.ts';
export { type NamedPicture, pictureRow } from './title/picture-row.ts';
export { type Plate, type PlateWay, platesOf } from './title/plate.ts';
export { sketchedPartPicture } from './title/sketched-part-picture.ts';
export { CAMERAS } from './view/cameras.ts';
export { boardDrawing } from './wood/board-drawing.ts';
export { drillingPatterns } from './wood/drilling-pattern.ts';
export { facesInView, loopsOf } from './wood/faces-in-view.ts';
export { type FigureSet, figureSheet } from './wood/figure-sheet.ts';
export { leafMapDrawing } from './wood/leaf-map-drawing.ts';
export { patchPattern } from './wood/patch-pattern.ts';
export { resawDrawing } from './wood/resaw-drawing.ts';
