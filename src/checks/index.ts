export { cautions } from './cautions.ts';
export { checkPart } from './check-part.ts';
export { edgeName } from './part-words.ts';
