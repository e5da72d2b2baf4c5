import { describe, expect, test } from 'vitest';
import { lengthWords } from '../../src/routing/index.ts';

const INCH = 25.4;

describe('lengths in findings', () => {
  test('in millimetres have two decimals at most, none idle', () => {
    const { length, area } = lengthWords();
    expect([12.7, 40, 1.366, 0.001, -0.001].map(length)).toEqual([
      '12.7 mm',
      '40 mm',
      '1.37 mm',
      '0 mm',
      '0 mm',
    ]);
    expect(area(2.5)).toBe('2.5 mm²');
    // A long one is said as the design prints it, a gap as it is.
    const { length: printed } = lengthWords({ unit: 'mm', decimals: 1 });
    expect([592.524, 0.152].map(printed)).toEqual(['592.5 mm', '0.15 mm']);
  });

  test('in inches are fractions, with the millimetres where none fits, and the design’s own fraction when long', () => {
    const { length, area } = lengthWords({ unit: 'in', denominator: 32 });
    expect([0.5, 1.5, 13 / 64, 1 / 3, 0.004].map((inches) => length(inches * INCH))).toEqual([
      '1/2 in',
      '1 1/2 in',
      '13/64 in',
      '21/64 in (8.47 mm)',
      'under 1/64 in (0.1 mm)',
    ]);
    expect(length(24.16 * INCH)).toBe('24 5/32 in');
    // A bearing of 19 mm is not one of 3/4 in: the difference is the finding.
    expect(length(19)).toBe('3/4 in (19 mm)');
    expect(area(INCH ** 2 / 8)).toBe('0.125 in²');
  });

  test('as rules of thumb are figures that one would say', () => {
    const { about } = lengthWords({ unit: 'in', denominator: 64 });
    expect([1.5, 3, 6, 12, 20].map(about)).toEqual(['1/16 in', '1/8 in', '1/4 in', '1/2 in', '3/4 in']);
  });
});
