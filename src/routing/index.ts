export type * from './api.ts';
export { usualEndAllowance } from './blank.ts';
export { planDepth } from './depth/plan-depth.ts';
export { guideDiameter } from './guide.ts';
export { type Hand, type HandName, handsOf } from './hands.ts';
export { flipPoint, mirrorRouting } from './mirror-routing.ts';
export { routePart } from './route-part.ts';
export { type ToolPath, type ToolPlace, toolAt, toolMoved, toolPathOf } from './tool-at.ts';
export { type LengthWords, lengthWords } from './words.ts';
