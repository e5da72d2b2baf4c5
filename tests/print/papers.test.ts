import { describe, expect, test } from 'vitest';
import { layOutPage } from '../../src/print/page-layout.ts';
import { allRound, paperNamed, paperNames, paperOf, rollOf, sheetOf } from '../../src/print/papers.ts';

describe('a paper is found by its name', () => {
  test.each([
    'a4',
    ' A4 ',
    'A-4'.replace('-', ''),
    'US Letter',
    'ledger',
    'arch_d',
    '36 in roll',
    '914 MM ROLL',
  ])('%s', (name) => expect(paperNamed(name)).toBeDefined());

  test('every listed name is found', () => {
    for (const name of paperNames()) expect(paperNamed(name)?.name).toBe(name);
  });

  test('no paper goes by another name', () => {
    for (const name of ['A11', 'letterhead', '', 'constructor', '__proto__']) {
      expect(paperNamed(name)).toBeUndefined();
    }
  });

  test('a roll is as wide as its name says', () => {
    const size = paperNamed('24 in roll')?.size;
    expect(size?.kind === 'roll' ? size.width : 0).toBeCloseTo(609.6, 9);
  });
});

describe('any size can be typed', () => {
  test('sides in either order', () => {
    const paper = sheetOf('480 × 330', 480, 330);
    expect(paper).toMatchObject({ ok: true, value: { size: { kind: 'sheet', short: 330, long: 480 } } });
  });

  test.each([
    [20, 300],
    [300, 9000],
    [Number.NaN, 300],
  ])('%d × %d mm is refused with what would be possible', (a, b) => {
    const paper = sheetOf('typed', a, b);
    expect(paper).toMatchObject({ ok: false, problems: [{ code: 'paper.size', found: 'typed' }] });
  });

  test('a roll shorter than it is wide is refused', () => {
    expect(rollOf('typed', 600, 500).ok).toBe(false);
    expect(rollOf('typed', 600, 2000).ok).toBe(true);
  });
});

describe('the page', () => {
  const a4 = paperNamed('A4')!;

  test('everything printed stays printable under the strongest correction about the page\u2019s centre', () => {
    for (const margins of [allRound(6.35), { top: 3, right: 5, bottom: 14, left: 4 }]) {
      const layout = layOutPage(paperOf(a4, { margins }), 'landscape');
      if (!layout.ok) throw new Error('no room');
      const { page, content, printable } = layout.value;
      for (const factor of [0.985, 1, 1.015]) {
        const x = (at: number): number => page.width / 2 + factor * (at - page.width / 2);
        const y = (at: number): number => page.height / 2 + factor * (at - page.height / 2);
        expect(x(content.minX)).toBeGreaterThan(printable.minX);
        expect(x(content.maxX)).toBeLessThan(printable.maxX);
        expect(y(content.minY)).toBeGreaterThan(printable.minY);
        expect(y(content.maxY)).toBeLessThan(printable.maxY);
      }
    }
  });

  test.each([
    ['an overlap without room for marks', { overlap: 3 }, 'paper.overlap'],
    ['an overlap of more than a third of the sheet', { overlap: 80 }, 'paper.overlap'],
    ['a negative margin', { margins: allRound(-1) }, 'paper.margins'],
    ['margins that leave nothing', { margins: allRound(90) }, 'paper.no-room'],
    ['an overlap as large as the sheet', { overlap: 170 }, 'paper.no-room'],
    ['a correction beyond the limit', { calibration: { long: 1.02, short: 1 } }, 'paper.calibration'],
    ['a correction that is no number', { calibration: { long: 1, short: Number.NaN } }, 'paper.calibration'],
  ])('%s is refused', (_, asked, code) => {
    expect(layOutPage(paperOf(a4, asked), 'portrait')).toMatchObject({ ok: false, problems: [{ code }] });
  });
});
