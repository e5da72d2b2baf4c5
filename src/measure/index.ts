export type { LengthStyle, LengthUnit } from './api.ts';
export { formatAngle } from './format-angle.ts';
export { formatLength } from './format-length.ts';
export { parseAngle } from './parse-angle.ts';
export { parseCount } from './parse-count.ts';
export { parseLength } from './parse-length.ts';
export { parseRatio } from './parse-ratio.ts';
export { FIGURE_UNITS, readFigure } from './read-figure.ts';
export { MM_PER, RAD_PER_DEGREE } from './units.ts';
