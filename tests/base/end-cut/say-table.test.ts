import { describe, expect, test } from 'vitest';
import { linesToMark, type SawWay, tableOfWays, waysToSaw } from '../../../src/base/end-cut/index.ts';
import { DEGREE, endCut, farCut, RAIL } from './parts.ts';

const INCHES = { length: { unit: 'in', denominator: 32 }, angle: { unit: 'deg', decimals: 2 } } as const;
const figuresIn = (cell: string): readonly number[] => (cell.match(/\d+(\.\d+)?/g) ?? []).map(Number);

/*
 * A rail 90 mm wide and 25 mm thick, cut at 20° and 10° through the face side's left corner at 500 mm. By hand: across the width the
 * line falls by 90 · tan 20° = 32.757; through the thickness the back reaches farther by 25 · tan 10° / cos 20° = 4.691. The line on
 * the edges stands at atan(tan 10° / cos 20°) = 10.629° from square; over 100 mm it strikes 100 · tan of each, over 4 in 101.6 · tan.
 */
describe('the lines of a cut in a table', () => {
  const cut = endCut(farCut(20, 10));
  const { heads, rows } = linesToMark(cut);
  const column = (name: string): number => heads.findIndex((head) => head.startsWith(name));
  const row = (name: string): readonly string[] => rows.find(([first]) => first === name)!;

  test('have the corners of each face under their own heads: the back reaches farther than the face side', () => {
    expect(row('face side')[column('Left corner')]).toBe('500.0 mm');
    expect(row('face side')[column('Right corner')]).toBe('467.2 mm');
    expect(row('back')[column('Left corner')]).toBe('504.7 mm');
    expect(row('back')[column('Right corner')]).toBe('471.9 mm');
    for (const face of ['face side', 'back'])
      expect(row(face)[column('Long point')]).toBe('left, by 32.8 mm');
  });

  test('are counted from the length, fall by the width, and are struck over a board of the maker’s unit', () => {
    expect(row('face side').slice(1, 4)).toEqual(['70°', '32.8 mm', '36.4 mm']);
    expect(row('edges').slice(1, 4)).toEqual(['79.37°', '4.7 mm', '18.8 mm']);
    expect(heads).toContain('Bevel, over 100 mm');
    const inches = linesToMark(cut, INCHES);
    expect(inches.heads).toContain('Bevel, over 4 in');
    // 4 in · tan 20° = 1.456 in, 1 15/32 in to a thirty-second; tan of 10.629° on the edges 0.751 in.
    expect(inches.rows[0]![3]).toBe('1 15/32 in');
    expect(inches.rows[2]![3]).toBe('3/4 in');
  });

  test('have the long point at the other corner when the cut slants the other way', () => {
    const [face] = linesToMark(endCut(farCut(-20, 10))).rows;
    expect(face!.at(-1)).toBe('right, by 32.8 mm');
  });
});

describe('the settings of a saw in a table', () => {
  const saw = {
    swing: { left: 50 * DEGREE, right: 50 * DEGREE },
    tilt: { left: 45 * DEGREE, right: 45 * DEGREE },
  };
  const ways: readonly SawWay[] = waysToSaw(farCut(20, 10), RAIL, saw);
  const cellsOf = (name: string) =>
    tableOfWays(ways)
      .rows.find(([first]) => first === name)!
      .slice(1);

  test('read from square first, then its complement by name, then the rise over 300 mm', () => {
    for (const name of ['Swing', 'Tilt']) {
      for (const cell of cellsOf(name)) {
        const [first, second, third] = cell.split('\n');
        const [fromSquare] = figuresIn(first!);
        const [complement] = figuresIn(second!);
        expect(fromSquare! + complement!, cell).toBeCloseTo(90, 6);
        // All cuts of this rail stand nearer to square than to the length.
        expect(fromSquare, cell).toBeLessThan(45);
        expect(second).toMatch(name === 'Swing' ? /on a gauge whose square is 90°$/ : /from the table$/);
        const [rise, run] = figuresIn(third!);
        expect(run).toBe(300);
        expect(rise!, cell).toBeCloseTo(300 * Math.tan(fromSquare! * DEGREE), 0);
      }
    }
  });

  test('lying flat are the mitre and the bevel themselves', () => {
    const flat = tableOfWays(ways).heads.indexOf('Lying flat') - 1;
    expect(cellsOf('Swing')[flat]).toMatch(/^20° /);
    expect(cellsOf('Tilt')[flat]).toMatch(/^10° /);
  });
});
