import { describe, expect, it } from 'vitest';
import { formatAngle, formatLength } from '../../src/measure/index.ts';

describe('a length as it is written', () => {
  it('has the decimals that were asked for', () => {
    expect(formatLength(730, { unit: 'mm', decimals: 0 })).toBe('730 mm');
    expect(formatLength(730.25, { unit: 'mm', decimals: 1 })).toBe('730.3 mm');
    expect(formatLength(0.15, { unit: 'mm', decimals: 1 })).toBe('0.2 mm');
    expect(formatLength(-0.15, { unit: 'mm', decimals: 1 })).toBe('-0.2 mm');
    expect(formatLength(730.25, { unit: 'mm', decimals: 2 }, false)).toBe('730.25');
  });

  it('is never a negative zero', () => {
    expect(formatLength(-0.01, { unit: 'mm', decimals: 1 })).toBe('0.0 mm');
    expect(formatLength(-0.01, { unit: 'in', denominator: 16 })).toBe('0 in');
    expect(formatLength(-0.01, { unit: 'ft-in', denominator: 16 })).toBe('0"');
  });

  it('has its fraction reduced', () => {
    expect(formatLength(730.25, { unit: 'in', denominator: 64 })).toBe('28 3/4 in');
    expect(formatLength(12.7, { unit: 'in', denominator: 16 })).toBe('1/2 in');
    expect(formatLength(25.4, { unit: 'in', denominator: 16 })).toBe('1 in');
    expect(formatLength(-3.175, { unit: 'in', denominator: 32 }, false)).toBe('-1/8');
  });

  it('goes to the nearest step that was asked for, and carries', () => {
    expect(formatLength(730, { unit: 'in', denominator: 16 })).toBe('28 3/4 in');
    expect(formatLength(730, { unit: 'in', denominator: 32 })).toBe('28 3/4 in');
    expect(formatLength(730, { unit: 'in', denominator: 64 })).toBe('28 47/64 in');
    expect(formatLength(25.3, { unit: 'in', denominator: 16 })).toBe('1 in');
    expect(formatLength(609.5, { unit: 'ft-in', denominator: 16 })).toBe('2\' 0"');
  });

  it('is written in feet and inches when asked for', () => {
    expect(formatLength(730.25, { unit: 'ft-in', denominator: 16 })).toBe('2\' 4 3/4"');
    expect(formatLength(-730.25, { unit: 'ft-in', denominator: 16 })).toBe('-2\' 4 3/4"');
    expect(formatLength(120.65, { unit: 'ft-in', denominator: 16 })).toBe('4 3/4"');
  });

  it('does not exist for what is no number', () => {
    expect(() => formatLength(Number.NaN, { unit: 'mm', decimals: 1 })).toThrow(RangeError);
    expect(() => formatAngle(Infinity, { unit: 'deg', decimals: 1 })).toThrow(RangeError);
  });
});

describe('an angle as it is written', () => {
  const degrees = Math.PI / 180;

  it('is in decimal degrees, or in degrees and minutes', () => {
    expect(formatAngle(8.5 * degrees, { unit: 'deg', decimals: 1 })).toBe('8.5°');
    expect(formatAngle(8.5 * degrees, { unit: 'deg-min' })).toBe('8° 30′');
    expect(formatAngle(-8.5 * degrees, { unit: 'deg-min' })).toBe('-8° 30′');
    expect(formatAngle(7.9999 * degrees, { unit: 'deg-min' })).toBe('8° 0′');
    expect(formatAngle(-0.001 * degrees, { unit: 'deg-min' })).toBe('0° 0′');
  });
});
