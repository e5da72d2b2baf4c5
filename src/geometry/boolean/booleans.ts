import type { Outline, Region } from '../api.ts';
import { combineLoops, loopsOf } from './combine.ts';

/**
 * Booleans of regions with lines and arcs kept exact. Every edge of a result is part of an edge given and keeps its tag;
 * where edges of both operands coincide, the first one's. Regions of one operand may overlap each other: they count as
 * their union. Results are valid regions: outer loops anticlockwise, holes clockwise, touching at single points at most.
 */
export function uniteRegions(a: readonly Region[], b: readonly Region[]): Region[] {
  return combineLoops(loopsOf(a), loopsOf(b), (p, q) => p > 0 || q > 0);
}

export function intersectRegions(a: readonly Region[], b: readonly Region[]): Region[] {
  return combineLoops(loopsOf(a), loopsOf(b), (p, q) => p > 0 && q > 0);
}

/** What of a lies outside b. */
export function subtractRegions(a: readonly Region[], b: readonly Region[]): Region[] {
  return combineLoops(loopsOf(a), loopsOf(b), (p, q) => p > 0 && !(q > 0));
}

/** What lies in one of a and b, not in both. */
export function symmetricDifference(a: readonly Region[], b: readonly Region[]): Region[] {
  return combineLoops(loopsOf(a), loopsOf(b), (p, q) => p > 0 !== q > 0);
}

/** Which points a set of loops holds: those wound round at all, an odd number of times, or more anticlockwise than clockwise. */
export type FillRule = 'nonzero' | 'odd' | 'positive';

/**
 * Valid regions from any closed loops, which may cross themselves and each other and run either way. An open chain is
 * closed by letting its edges end where the next begins.
 */
export function regionsFromLoops(outlines: readonly Outline[], rule: FillRule = 'nonzero'): Region[] {
  switch (rule) {
    case 'nonzero':
      return combineLoops(outlines, [], (p) => p !== 0);
    case 'odd':
      return combineLoops(outlines, [], (p) => p % 2 !== 0);
    case 'positive':
      return combineLoops(outlines, [], (p) => p > 0);
    default:
      throw new RangeError(`no such fill rule: ${rule satisfies never}`);
  }
}
