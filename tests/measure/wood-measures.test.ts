import { describe, expect, it } from 'vitest';
import { parseQuarters, parseTemperature } from '../../src/measure/index.ts';

const mm = (text: string, unit: 'mm' | 'in' = 'mm') => {
  const read = parseQuarters(text, { unit });
  return read.ok ? read.value : read.problems[0]!.code;
};
const celsius = (text: string) => {
  const read = parseTemperature(text);
  return read.ok ? read.value : read.problems[0]!.code;
};

describe('thickness of a rough board', () => {
  /* Rough hardwood is sold in quarters of an inch: 4/4 is 1 in, 6/4 1 1/2 in, 8/4 2 in (NHLA standard thicknesses, read in a page that
     quotes them). */
  it('is read in quarters of an inch, in designs of either unit', () => {
    const sold = { '4/4': 1, '6/4': 1.5, ' 8 / 4 ': 2, '10/4': 2.5, '16/4': 4 };
    for (const [text, inches] of Object.entries(sold)) {
      expect(mm(text)).toBeCloseTo(inches * 25.4, 9);
      expect(mm(text, 'in')).toBeCloseTo(inches * 25.4, 9);
    }
  });

  it('is read as any other length as well, and other fractions still need their unit', () => {
    for (const [text, unit] of [
      ['38.1 mm', 'in'],
      ['38.1', 'mm'],
      ['1 1/2', 'in'],
      ['1 1/2 in', 'mm'],
    ] as const)
      expect(mm(text, unit)).toBeCloseTo(38.1, 9);
    expect([mm('3/8'), mm('6/4/4'), mm('')]).toEqual(['length.unit', 'length.unreadable', 'length.empty']);
  });
});

describe('a temperature', () => {
  it('is read in °C, and in °F where that is said', () => {
    expect([celsius('21'), celsius('21 °C'), celsius('-5,5 c'), celsius('32 °F')]).toEqual([21, 21, -5.5, 0]);
    expect(celsius('70F')).toBeCloseTo(21.111, 3);
  });

  it('is refused in other units, or without a number', () => {
    expect([celsius('294 K'), celsius('warm'), celsius('')]).toEqual([
      'temperature.unreadable',
      'temperature.number',
      'temperature.empty',
    ]);
  });
});
