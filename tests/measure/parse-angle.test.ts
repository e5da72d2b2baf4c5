import { describe, expect, it } from 'vitest';
import { parseAngle } from '../../src/measure/index.ts';

describe('an angle that a maker types', () => {
  it.each([
    ['8', 8],
    ['8°', 8],
    ['8.5 deg', 8.5],
    ['8,5 degrees', 8.5],
    ["8° 30'", 8.5],
    ['8°30′', 8.5],
    ['8 deg 30 min', 8.5],
    ['8° 30', 8.5],
    ['8 1/2°', 8.5],
    ['7½ deg', 7.5],
    ['-8° 30\' 36"', -8.51],
    ['30′', 0.5],
    ['-0', 0],
    ['360', 360],
  ])('reads %s as %f degrees', (text, degrees) => {
    const result = parseAngle(text);
    expect(result.ok && (result.value * 180) / Math.PI).toBeCloseTo(degrees, 12);
  });

  it.each([
    ['', 'angle.empty', 1],
    ['steep', 'angle.unreadable', 1],
    ['8 mm', 'angle.unreadable', 3],
    ['8 30', 'angle.unreadable', 3],
    ["8.5° 30'", 'angle.unreadable', 6],
    ["8° 60'", 'angle.unreadable', 4],
    ["30' 8°", 'angle.unreadable', 6],
    ['8° 8°', 'angle.unreadable', 5],
    ['361', 'angle.too-large', 1],
    ['8'.repeat(100), 'angle.too-long', 65],
  ])('refuses %s and says where', (text, code, column) => {
    const result = parseAngle(text);
    expect(result.ok ? result.value : result.problems[0]).toMatchObject({ code, column });
  });
});
