export type * from './api.ts';
export { guideDiameter } from './guide.ts';
export { routePart } from './route-part.ts';
export { mm, mm2 } from './words.ts';
