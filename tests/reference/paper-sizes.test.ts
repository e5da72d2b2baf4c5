import { describe, expect, test } from 'vitest';
import table from '../../shared/tables/papers.json';
import { paperNamed } from '../../src/print/papers.ts';

function sizeOf(name: string): [number, number] {
  const paper = paperNamed(name);
  if (paper?.size.kind !== 'sheet') throw new Error(name);
  return [paper.size.short, paper.size.long];
}

/** ISO 216:2007, as republished by encyclopaedia articles on the standard. */
describe('ISO 216', () => {
  test.each([
    ['A0', 841, 1189],
    ['A1', 594, 841],
    ['A2', 420, 594],
    ['A3', 297, 420],
    ['A4', 210, 297],
    ['A5', 148, 210],
    ['B1', 707, 1000],
    ['B4', 250, 353],
    ['B5', 176, 250],
  ])('%s is %i × %i mm', (name, short, long) => expect(sizeOf(name)).toEqual([short, long]));

  test.each(['A', 'B'])('each size of the %s series is the one before halved, rounded down', (series) => {
    for (let n = 1; n <= 10; n++) {
      const [short, long] = sizeOf(`${series}${n - 1}`);
      expect(sizeOf(`${series}${n}`)).toEqual([Math.floor(long / 2), short]);
    }
  });

  test('A0 is a square metre with sides as 1 to the square root of 2, to a millimetre', () => {
    const [short, long] = sizeOf('A0');
    expect(short).toBe(Math.round(1000 / 2 ** 0.25));
    expect(long).toBe(Math.round(1000 * 2 ** 0.25));
  });
});

/** ANSI/ASME Y14.1, as republished by plotter and blueprint printing guides. */
describe('ANSI/ASME Y14.1 and US sizes, in inches', () => {
  test.each([
    ['ANSI A', 8.5, 11],
    ['ANSI B', 11, 17],
    ['ANSI C', 17, 22],
    ['ANSI D', 22, 34],
    ['ANSI E', 34, 44],
    ['Letter', 8.5, 11],
    ['Legal', 8.5, 14],
    ['Tabloid', 11, 17],
    ['Arch D', 24, 36],
  ])('%s is %d × %d in', (name, short, long) => {
    const [a, b] = sizeOf(name);
    expect(a / 25.4).toBeCloseTo(short, 12);
    expect(b / 25.4).toBeCloseTo(long, 12);
  });

  test('each ANSI size is the one before doubled', () => {
    for (const [smaller, larger] of ['AB', 'BC', 'CD', 'DE']) {
      const [short, long] = sizeOf(`ANSI ${smaller}`);
      expect(sizeOf(`ANSI ${larger}`)[0]).toBeCloseTo(long, 9);
      expect(sizeOf(`ANSI ${larger}`)[1]).toBeCloseTo(2 * short, 9);
    }
  });
});

test('every size says where it comes from', () => {
  for (const row of table.sheets) expect(table.statuses).toHaveProperty(row.status);
  expect(table.sources.length).toBeGreaterThan(0);
});
