import { describe, expect, it } from 'vitest';
import { readPaperSize } from '../../src/cli/paper-size.ts';

describe('a paper on the command line', () => {
  it.each([
    ['A4', 'A4'],
    ['36 in roll', '36 in roll'],
    ['500 x 700 mm', { width: '500 mm', height: '700 mm' }],
    ['500 × 700', { width: '500', height: '700' }],
    ['50 cm x 28 in', { width: '50 cm', height: '28 in' }],
    ['8 1/2 x 14 in', { width: '8 1/2 in', height: '14 in' }],
    ['11x17"', { width: '11 "', height: '17"' }],
    ['roll 610 mm', { roll: '610 mm', longest: '3 m' }],
  ])('%s is kept as a design keeps it', (text, size) => {
    expect(readPaperSize(text)).toEqual(size);
  });
});
