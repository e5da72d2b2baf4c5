import fc from 'fast-check';
import { parse } from 'opentype.js/dist/opentype.mjs';
import { describe, expect, test } from 'vitest';
import table from '../../shared/fonts/advance-widths.json' with { type: 'json' };
import { fontSizeOf, widthOfText } from '../../src/drawing/index.ts';
import { setFractions } from '../../src/drawing/lettering/fractions.ts';
import { type ContourStep, contoursOfText, widthAsSet } from '../../src/drawing/lettering/lettering.ts';
import { fontBytes, testLettering } from './lettering-of-tests.ts';

const lettering = testLettering();

describe('the table of widths agrees with the fonts', () => {
  for (const [weight, file] of [
    ['regular', 'Regular'],
    ['semibold', 'SemiBold'],
  ] as const) {
    test(`for every letter of the ${weight} face`, () => {
      const font = parse(new Uint8Array(fontBytes(file)).buffer);
      const wrong = Object.entries(font.tables.cmap.glyphIndexMap)
        .filter(([code]) => Number(code) >= 32)
        .map(([code, glyph]) => ({ code, width: font.glyphs.get(glyph).advanceWidth }))
        .filter(({ code, width }) => {
          const text = String.fromCodePoint(Number(code));
          return Math.abs(widthOfText(text, table.capHeight, weight) - width) > 1e-9;
        });
      expect(wrong).toEqual([]);
      expect(font.tables.os2.sCapHeight).toBe(table.capHeight);
    });
  }
});

test('capitals stand as high as asked for', () => {
  for (const height of [1.8, 2.5, 3.5, 5, 7]) {
    const ys = points(contoursOfText(lettering, mark('H', height))).map(({ y }) => y);
    expect(Math.max(...ys)).toBeCloseTo(height, 6);
    expect(Math.min(...ys)).toBeCloseTo(0, 6);
  }
});

test('the em that gives those capitals is named for the PDF', () => {
  expect(fontSizeOf(6.98)).toBeCloseTo(10, 12);
});

test('words as they are set are hardly ever wider than they are measured', () => {
  const letters = fc.constantFrom(...'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 .,:');
  fc.assert(
    fc.property(fc.array(letters, { minLength: 1, maxLength: 30 }), (chosen) => {
      const text = chosen.join('');
      const measured = widthOfText(text, 3.5, 'regular');
      const set = widthAsSet(lettering, { text, height: 3.5, weight: 'regular' });
      return set <= measured * 1.03 + 0.1 && set >= measured * 0.8 - 0.5;
    }),
  );
});

test('text turns about its anchor and ends, starts or is centred there', () => {
  const width = widthAsSet(lettering, { text: 'Inner edge', height: 5, weight: 'regular' });
  const up = points(
    contoursOfText(lettering, { ...mark('Inner edge', 5), angle: Math.PI / 2, at: { x: 7, y: 9 } }),
  );
  expect(Math.min(...up.map(({ y }) => y))).toBeGreaterThan(8.9);
  expect(Math.max(...up.map(({ y }) => y))).toBeLessThan(9 + width);
  // Capitals lean to the left of an upward baseline.
  expect(Math.min(...up.map(({ x }) => x))).toBeCloseTo(7 - 5, 0);
  const ended = points(contoursOfText(lettering, { ...mark('Inner edge', 5), align: 'right' }));
  expect(Math.max(...ended.map(({ x }) => x))).toBeLessThan(0.01);
  const centred = points(contoursOfText(lettering, { ...mark('HOH', 5), align: 'middle' })).map(({ x }) => x);
  expect(Math.max(...centred) + Math.min(...centred)).toBeCloseTo(0, 1);
});

describe('fractions of an inch are set as fractions', () => {
  test.each([
    ['28 3/4"', '28\u20093\u20444\u2033'],
    ['3/16"', '3\u204416\u2033'],
    ['2\' 4 3/4"', '2\u2032 4\u20093\u20444\u2033'],
    ['make 2 of 4', 'make 2 of 4'],
    ['1/2/3', '1/2/3'],
  ])('%s', (typed, set) => {
    expect(setFractions(typed)).toBe(set);
  });

  test('numerals are small, the upper one above the lower', () => {
    const contours = contoursOfText(lettering, mark('3\u20444', 7));
    const glyphs = loops(contours);
    const first = glyphs[0]!.map(({ y }) => y);
    const last = glyphs.at(-1)!.map(({ y }) => y);
    expect(Math.min(...first)).toBeGreaterThan(7 * 0.35);
    expect(Math.max(...last)).toBeLessThan(7 * 0.65);
    expect(widthOfText('3\u20444', 7, 'regular')).toBeLessThan(widthOfText('3/4', 7, 'regular') * 0.8);
  });
});

function mark(text: string, height: number) {
  return {
    kind: 'text',
    text,
    at: { x: 0, y: 0 },
    height,
    angle: 0,
    align: 'left',
    weight: 'regular',
    role: 'mark',
  } as const;
}

function points(steps: readonly ContourStep[]) {
  return steps.flatMap((step) => (step.kind === 'close' ? [] : [step.to]));
}

/** The contours apart, from left to right as they are set. */
function loops(steps: readonly ContourStep[]) {
  const all: { x: number; y: number }[][] = [];
  for (const step of steps) {
    if (step.kind === 'move') all.push([]);
    if (step.kind !== 'close') all.at(-1)!.push(step.to);
  }
  return all;
}
