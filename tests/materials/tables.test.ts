import { describe, expect, test } from 'vitest';
import { highestSpeed, leastRadiusOfBlade, usualDepthOfPass } from '../../src/materials/index.ts';

describe('band-saw blades', () => {
  test('a quarter-inch blade follows a radius of 5/8 in', () => {
    expect(leastRadiusOfBlade(6.35)).toBeCloseTo(15.875, 9);
  });

  test('a 6 mm blade counts as the quarter inch it is sold for', () => {
    expect(leastRadiusOfBlade(6)).toBeCloseTo(15.875, 9);
  });

  test('a width between two rows counts as the wider blade', () => {
    expect(leastRadiusOfBlade(8)).toBeCloseTo(1.5 * 25.4, 9);
  });

  test('a wider blade never follows a tighter curve', () => {
    const radii = [3, 5, 6, 10, 13, 16, 19, 25, 32].map((width) => leastRadiusOfBlade(width)!);
    expect(radii).toEqual([...radii].sort((a, b) => a - b));
    expect(new Set(radii).size).toBe(radii.length);
  });

  test('nothing is known of a blade wider than any in the table', () => {
    expect(leastRadiusOfBlade(50)).toBeUndefined();
  });
});

describe('cutters', () => {
  test('speed falls as cutters grow, and nothing is known past the charts', () => {
    expect([12.7, 25.4, 25.5, 60, 80].map(highestSpeed)).toEqual([24000, 24000, 18000, 16000, 12000]);
    expect(highestSpeed(120)).toBeUndefined();
  });

  test('a pass is half the cutter deep, a quarter inch at most', () => {
    expect(usualDepthOfPass(8)).toBe(4);
    expect(usualDepthOfPass(25.4)).toBe(6.35);
  });
});
