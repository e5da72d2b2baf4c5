export type * from './api.ts';
export { type Lettering, readLettering } from './lettering/lettering.ts';
export { fontSizeOf, widthOfText } from './lettering/metrics.ts';
export { finest, precisionWords } from './pattern/check-precision.ts';
export { drawPattern } from './pattern/draw-pattern.ts';
export { clipScene } from './scene/clip-scene.ts';
export { transformMark, transformScene } from './scene/transform-scene.ts';
export { INKS, LINE_STYLES, TINT_STRENGTH } from './styles.ts';
export { sceneToSvg } from './svg/scene-to-svg.ts';
