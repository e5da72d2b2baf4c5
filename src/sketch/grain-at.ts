import { cross, subtract, type Vec } from '../geometry/index.ts';
import type { SketchedPart } from './api.ts';

/** Direction of the grain at a place in the part's plane, rad: that of the piece it lies in. */
export function grainAt({ grain, pieces = [] }: Pick<SketchedPart, 'grain' | 'pieces'>, at: Vec): number {
  const piece = pieces.find(({ leftOf: { from, to } }) => cross(subtract(to, from), subtract(at, from)) > 0);
  return piece?.grain ?? grain;
}
