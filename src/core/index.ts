export type { FigureToSet } from './figure-to-set.ts';
export type { Finding, Quantity, Severity } from './finding.ts';
export { keptFor } from './kept-for.ts';
export { nearestName } from './nearest.ts';
export { once } from './once.ts';
export type { Problem } from './problem.ts';
export { fail, ok, type Result } from './result.ts';
export { sha256 } from './sha256.ts';
