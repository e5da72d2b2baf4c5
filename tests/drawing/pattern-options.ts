import type { PatternOptions } from '../../src/drawing/index.ts';

/** Options of a design of our own. */
export function patternOptions(): PatternOptions {
  return {
    view: 'all',
    mirrored: false,
    design: 'Reading desk for the north room',
    revision: 'B',
    date: '2026-02-03',
    lengths: { unit: 'mm', decimals: 1 },
  };
}
