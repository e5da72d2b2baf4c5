export { cautions } from './cautions.ts';
export { checkHands } from './check-hands.ts';
export { checkPart } from './check-part.ts';
export { edgeNames } from './part-words.ts';
