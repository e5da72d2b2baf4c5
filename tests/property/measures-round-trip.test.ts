import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatAngle, formatLength, parseAngle, parseLength } from '../../src/measure/index.ts';

const RUNS = { numRuns: 400 };
const denominators = fc.constantFrom(16, 32, 64) as fc.Arbitrary<16 | 32 | 64>;

function mm(text: string): number {
  const parsed = parseLength(text, { unit: 'mm' });
  if (!parsed.ok) throw new Error(parsed.problems[0]!.message);
  return parsed.value;
}

function rad(text: string): number {
  const parsed = parseAngle(text);
  if (!parsed.ok) throw new Error(parsed.problems[0]!.message);
  return parsed.value;
}

const lengths = fc.double({ min: -3000, max: 3000, noNaN: true });
const angles = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });

describe('lengths written and read again', () => {
  it('are off by no more than half the last decimal', () => {
    fc.assert(
      fc.property(lengths, fc.integer({ min: 0, max: 6 }), (length, decimals) => {
        const back = mm(formatLength(length, { unit: 'mm', decimals }));
        expect(Math.abs(back - length)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9);
      }),
      RUNS,
    );
  });

  it('are off by no more than half the smallest fraction, in inches and in feet and inches', () => {
    fc.assert(
      fc.property(lengths, denominators, fc.constantFrom('in', 'ft-in'), (length, denominator, unit) => {
        const text = formatLength(length, { unit: unit as 'in' | 'ft-in', denominator });
        expect(Math.abs(mm(text) - length)).toBeLessThanOrEqual(25.4 / denominator / 2 + 1e-9);
        // Written again, it reads the same: rounding is done with.
        expect(formatLength(mm(text), { unit: unit as 'in' | 'ft-in', denominator })).toBe(text);
      }),
      RUNS,
    );
  });

  it('have every fraction reduced', () => {
    fc.assert(
      fc.property(lengths, denominators, (length, denominator) => {
        const fraction = /(\d+)\/(\d+)/.exec(formatLength(length, { unit: 'in', denominator }));
        if (fraction === null) return;
        expect(Number(fraction[1]) % 2).toBe(1);
        expect(denominator % Number(fraction[2])).toBe(0);
        expect(Number(fraction[1])).toBeLessThan(Number(fraction[2]));
      }),
      RUNS,
    );
  });

  it('mean the same however a fraction is spelt', () => {
    const spellings = [
      (w: number, n: number, d: number) => `${w} ${n}/${d}"`,
      (w: number, n: number, d: number) => `${w}-${n}/${d} in`,
      (w: number, n: number, d: number) => `${w} ${n}⁄${d}″`,
      (w: number, n: number, d: number) => `${Math.floor(w / 12)}' ${w % 12} ${n}/${d}"`,
      (w: number, n: number, d: number) => `${Math.floor(w / 12)} ft ${w % 12}-${n}/${d} in`,
      (w: number, n: number, d: number) => `${w + n / d} inches`,
    ];
    fc.assert(
      fc.property(fc.nat(200), fc.integer({ min: 1, max: 63 }), (whole, above) => {
        const values = spellings.map((spell) => mm(spell(whole, above, 64)));
        for (const value of values) expect(value).toBeCloseTo((whole + above / 64) * 25.4, 9);
      }),
      RUNS,
    );
  });

  it('never fail on any text but say where', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }), (text) => {
        for (const parsed of [parseLength(text, { unit: 'in' }), parseAngle(text)]) {
          if (parsed.ok) expect(Number.isFinite(parsed.value)).toBe(true);
          else expect(parsed.problems[0]!.column).toBeGreaterThan(0);
        }
      }),
      RUNS,
    );
  });
});

describe('angles written and read again', () => {
  it('are off by no more than half the last decimal, or half a minute', () => {
    fc.assert(
      fc.property(angles, fc.integer({ min: 0, max: 6 }), (angle, decimals) => {
        const degree = Math.PI / 180;
        const decimal = rad(formatAngle(angle, { unit: 'deg', decimals }));
        expect(Math.abs(decimal - angle)).toBeLessThanOrEqual((0.5 * 10 ** -decimals + 1e-9) * degree);
        const minutes = formatAngle(angle, { unit: 'deg-min' });
        expect(Math.abs(rad(minutes) - angle)).toBeLessThanOrEqual((1 / 120 + 1e-9) * degree);
        expect(formatAngle(rad(minutes), { unit: 'deg-min' })).toBe(minutes);
      }),
      RUNS,
    );
  });
});
