import { describe, expect, it } from 'vitest';
import { parseLength } from '../../src/measure/index.ts';

const NBSP = '\u00a0';

function mm(text: string, unit: 'mm' | 'in' = 'mm'): number {
  const result = parseLength(text, { unit });
  if (!result.ok) throw new Error(result.problems[0]!.message);
  return result.value;
}

function refusal(text: string, unit: 'mm' | 'in' = 'mm') {
  const result = parseLength(text, { unit });
  if (result.ok) throw new Error(`${text} was read as ${result.value}`);
  return result.problems[0]!;
}

describe('a length that a maker types', () => {
  it.each([
    ['730', 730],
    ['730 mm', 730],
    ['730mm', 730],
    [' 730 MM ', 730],
    ['73,0 cm', 730],
    ['73.0cm', 730],
    ['1.5 m', 1500],
    ['1,5 metres', 1500],
    ['.5 mm', 0.5],
    [`730${NBSP}mm`, 730],
    ['730\u202fmm', 730],
    ['-12 mm', -12],
    ['−12 mm', -12],
    ['+12 mm', 12],
    ['1/2 mm', 0.5],
    ['0', 0],
    ['28 3/4"', 730.25],
    ['28-3/4 in', 730.25],
    ['28 3/4 inches', 730.25],
    ['28–3/4 in', 730.25],
    ['28¾″', 730.25],
    ['28 ¾ in.', 730.25],
    ['28 3⁄4”', 730.25],
    ['28.75 in', 730.25],
    ["28 3/4''", 730.25],
    ['½ in', 12.7],
    ['-½ in', -12.7],
    ['1 in', 25.4],
    ['2\' 4 3/4"', 730.25],
    ['2′ 4 3/4″', 730.25],
    ['2’ 4¾”', 730.25],
    ['2\'-4 3/4"', 730.25],
    ['2\' - 4-3/4"', 730.25],
    ['2 ft 4 3/4 in', 730.25],
    ['2 feet 4 3/4', 730.25],
    ["2'4", 711.2],
    ["2'", 609.6],
    ['2.5 ft', 762],
    ['-2\' 4"', -711.2],
    ['1 foot', 304.8],
  ])('reads %s as %f mm', (text, expected) => {
    expect(mm(text)).toBeCloseTo(expected, 10);
  });

  it('takes a bare number in the unit that the maker chose', () => {
    expect(mm('28 3/4', 'in')).toBeCloseTo(730.25, 10);
    expect(mm('28.75', 'in')).toBeCloseTo(730.25, 10);
    expect(mm('730 mm', 'in')).toBe(730);
  });

  it('never gives a negative zero', () => {
    expect(Object.is(mm('-0 mm'), 0)).toBe(true);
  });
});

describe('a length that cannot be read', () => {
  it.each([
    ['', 'length.empty', 1, 'the end of the text'],
    ['   ', 'length.empty', 1, '"   "'],
    ['tall', 'length.unreadable', 1, '"tall"'],
    ['730 miles', 'length.unreadable', 5, '"miles"'],
    ['730 mmm', 'length.unreadable', 5, '"mmm"'],
    ['12 mm 3', 'length.unreadable', 7, '"3"'],
    ['1e308', 'length.unreadable', 2, '"e308"'],
    ['Infinity', 'length.unreadable', 1, '"Infinity"'],
    ['28 5/4 in', 'length.fraction', 4, '"5/4 in"'],
    ['3/0 in', 'length.fraction', 1, '"3/0 in"'],
    ['3/ in', 'length.fraction', 1, '"3/ in"'],
    ['1/4096 in', 'length.fraction', 1, '"1/4096 in"'],
    ['28 3/4', 'length.unit', 7, 'the end of the text'],
    ['1,200 mm', 'length.ambiguous', 1, '"1,200 mm"'],
    ['2.5\' 4"', 'length.feet', 1, '"2.5\' 4""'],
    ['2\' 14"', 'length.inches', 4, '"14""'],
    ["2' 4 cm", 'length.unit', 5, '" cm"'],
    ['28 - 3/4 in', 'length.unreadable', 4, '"- 3/4 in"'],
    ['--3', 'length.unreadable', 2, '"-3"'],
    ['200 m', 'length.too-large', 1, '"200 m"'],
    ['9'.repeat(40), 'length.unreadable', 1, '"999999999999"'],
  ])('refuses %s, saying where and what stands there', (text, code, column, found) => {
    expect(refusal(text)).toMatchObject({ code, column, found });
  });

  it('says what could be meant by a comma before three digits', () => {
    expect(refusal('1,200 mm').message).toBe(
      'cannot read "1,200 mm" as a length: "1,200" could be 1200 or 1.200',
    );
    expect(mm('0,125 in')).toBeCloseTo(3.175, 12);
  });

  it('says what was expected of a fraction without its unit', () => {
    expect(refusal('28 3/4').expected).toBe('"28 3/4 in" or "28 3/4 mm"');
  });

  it('refuses a text of ten million characters at once', () => {
    expect(refusal('1'.repeat(10_000_000)).code).toBe('length.too-long');
    expect(refusal(' '.repeat(10_000_000)).code).toBe('length.empty');
  });
});
