import { beforeAll, describe, expect, test } from 'vitest';
import { renderCalibrationSheet } from '../../src/print/calibration-sheet.ts';
import { paperNamed, paperOf } from '../../src/print/papers.ts';
import { patternPages } from '../../src/print/pattern-pages.ts';
import { renderPatternPdf } from '../../src/print/render-pattern-pdf.ts';
import { layoutOf } from '../../src/print/sheets-of-plan.ts';
import { kneeLeg, leaningLeg } from '../print/support/patterns.ts';
import { FONTS, META, printOf } from '../print/support/prints.ts';
import { openPdf, type PrintedPage, readPages } from '../print/support/read-pdf.ts';

const MM = 72 / 25.4;
/** The 16-bit text of a string in a PDF file, as Latin letters, is enough to look for names in it. */
const lettersOf = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1');

/** ISO 32000-1:2008; read back by an independent reader, pdfjs-dist. */
describe('a pattern\u2019s PDF', () => {
  const print = printOf(kneeLeg(), 'A4');
  let bytes: Uint8Array;
  let pages: PrintedPage[];
  beforeAll(async () => {
    bytes = await renderPatternPdf([print], META, FONTS);
    pages = await readPages(bytes);
  });

  test('asks the viewer not to scale (12.2, table 150)', async () => {
    const file = await openPdf(bytes);
    expect(await file.getViewerPreferences()).toMatchObject({
      PrintScaling: 'None',
      PickTrayByPDFSize: true,
    });
  });

  test('has pages of the paper\u2019s own size, and all boxes (14.11.2)', () => {
    for (const page of pages) {
      expect(page.width / MM).toBeCloseTo(page === pages[0] ? 210 : print.plan.page.width, 4);
      expect(page.height / MM).toBeCloseTo(page === pages[0] ? 297 : print.plan.page.height, 4);
    }
    for (const box of ['MediaBox', 'CropBox', 'BleedBox', 'TrimBox']) {
      expect(lettersOf(bytes).split(`/${box} [0 0 `).length - 1).toBe(pages.length);
    }
  });

  test('labels its pages by row and place (12.4.2) and has a bookmark for each (12.3.3)', async () => {
    const names = print.plan.sheets.map(({ row, place }) => ({ row, place }));
    expect(pages.map(({ label }) => label)).toEqual([
      'knee-leg map',
      ...names.map(({ row, place }) => `knee-leg ${row}.${place}`),
    ]);
    const outline = await (await openPdf(bytes)).getOutline();
    expect(outline).toMatchObject([{ title: 'knee-leg' }]);
    expect(outline[0]!.items.map(({ title }: { title: string }) => title)).toEqual([
      'How the sheets lie',
      ...names.map(({ row, place }) => `Row ${row}, sheet ${place}`),
    ]);
  });

  test('carries its fonts with it and no text without one', () => {
    const letters = lettersOf(bytes);
    expect(letters.split('/FontFile2').length - 1).toBe(2);
    expect(letters).toContain('IBMPlexSansCond');
    expect(letters).not.toContain('/Type1');
  });

  test('says on every sheet what it is, and how to print it', () => {
    for (const page of pages.slice(1)) {
      const all = page.texts.map(({ text }) => text).join('\n');
      expect(all).toContain('knee-leg \u00b7 left hand \u00b7 make 2');
      expect(all).toMatch(/Reading room table \u00b7 revision B \u00b7 2025-03-14/);
      expect(all).toMatch(/print at 100.%, do not fit to page/);
      expect(all).toMatch(/Row \d, sheet \d/);
      expect(all).toMatch(/page \d of \d/);
      expect(all).toContain('100 mm');
      expect(all).toContain('4 in');
    }
  });

  test('names the neighbour at each seam, with two marks on either sheet', () => {
    for (const [i, sheet] of print.plan.sheets.entries()) {
      const texts = pages[i + 1]!.texts.map(({ text }) => text);
      const beside = print.plan.sheets.filter(
        (other) => Math.abs(other.row - sheet.row) + Math.abs(other.place - sheet.place) === 1,
      );
      for (const { row, place } of beside) {
        expect(texts.filter((text) => text.includes(`row ${row}, sheet ${place}`))).toHaveLength(1);
      }
      const marks = new Set(texts.filter((text) => /^\w+\.\d$/.test(text)));
      expect(marks.size).toBeGreaterThanOrEqual(2 * beside.length);
    }
  });

  test('is the same, byte for byte, when made again', async () => {
    expect(
      Buffer.compare(Buffer.from(await renderPatternPdf([print], META, FONTS)), Buffer.from(bytes)),
    ).toBe(0);
  });

  test('is another for another date', async () => {
    const later = await renderPatternPdf([print], { ...META, date: '2025-03-15' }, FONTS);
    expect(Buffer.compare(Buffer.from(later), Buffer.from(bytes))).not.toBe(0);
  });

  test('any one sheet can be printed alone, as it is among all', async () => {
    const { row, place } = print.plan.sheets[2]!;
    const only = [{ pattern: 'knee-leg', row, place }];
    const alone = await readPages(await renderPatternPdf([print], META, FONTS, { only }));
    const among = pages[3]!;
    expect(alone.map(({ label }) => label)).toEqual([among.label]);
    expect(alone[0]!.paths).toEqual(among.paths);
    expect(alone[0]!.texts.map(({ text }) => text)).toEqual(among.texts.map(({ text }) => text));
  });
});

test('a sheet that the pattern does not have cannot be printed alone', () => {
  const only = [{ pattern: 'knee-leg', row: 9, place: 9 }];
  expect(() => patternPages([printOf(kneeLeg(), 'A4')], META, { only })).toThrow('row 9, sheet 9');
});

test('a correction beyond the limit is no way to print', () => {
  const calibration = { long: 1.03, short: 1 };
  expect(() => patternPages([printOf(kneeLeg(), 'A4')], META, { calibration })).toThrow(RangeError);
});

describe('nothing is printed where a printer cannot print', () => {
  test.each([
    ['portrait', 1.015, 1.015],
    ['landscape', 1.015, 0.985],
    ['landscape', 1, 1],
  ] as const)('held %s and corrected by %d and %d', async (orientation, long, short) => {
    const print = printOf(leaningLeg(), 'Letter', { orientation, calibration: { long, short } });
    const pages = await readPages(await renderPatternPdf([print], META, FONTS));
    expectInside(pages.slice(1), layoutOf(print.plan).printable);
  });

  test('on the calibration sheet', async () => {
    const paper = paperOf(paperNamed('A4')!, { calibration: { long: 1.015, short: 1.015 } });
    const pages = await readPages(await renderCalibrationSheet(paper, META.date, FONTS));
    expectInside(pages, { minX: 6.35, minY: 6.35, maxX: 210 - 6.35, maxY: 297 - 6.35 });
  });
});

/** Lines with their width, and lettering from end to end; what a clip holds back is held back. */
function expectInside(
  pages: readonly PrintedPage[],
  box: { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number },
): void {
  let seen = 0;
  for (const page of pages) {
    const points = [
      ...page.paths
        .filter(({ isClipped }) => !isClipped)
        .flatMap(({ lines, width }) => lines.flat().map((p) => ({ ...p, room: width / 2 }))),
      ...page.texts.flatMap(({ at, angle, width }) => [
        { ...at, room: 0 },
        { x: at.x + width * Math.cos(angle), y: at.y + width * Math.sin(angle), room: 0 },
      ]),
    ];
    for (const { x, y, room } of points) {
      const isInside =
        x - room >= box.minX * MM &&
        x + room <= box.maxX * MM &&
        y - room >= box.minY * MM &&
        y + room <= box.maxY * MM;
      if (!isInside) throw new Error(`${page.label}: something at ${x / MM}, ${y / MM} mm cannot be printed`);
      seen++;
    }
  }
  expect(seen).toBeGreaterThan(100);
}

test('a correction turns with the paper: each edge keeps its own factor', async () => {
  const calibration = { long: 1.01, short: 0.99 };
  for (const orientation of ['portrait', 'landscape'] as const) {
    const print = printOf(leaningLeg(), 'A4', { orientation, calibration });
    const pages = await readPages(await renderPatternPdf([print], META, FONTS));
    const isUpright = orientation === 'portrait';
    expect(hasLevelLine(pages[1]!, isUpright ? 99 : 101)).toBe(true);
    expect(hasLevelLine(pages[1]!, isUpright ? 101 : 99)).toBe(false);
  }
});

/** Is there a line of so many mm that runs level? */
function hasLevelLine(page: PrintedPage, mm: number): boolean {
  return page.paths.some(({ lines }) => {
    const [a, b] = lines[0] ?? [];
    if (lines[0]?.length !== 2 || !a || !b || Math.abs(a.y - b.y) > 1e-3) return false;
    return Math.abs(Math.abs(a.x - b.x) / MM - mm) < 1e-3;
  });
}

test('the calibration sheet\u2019s bars are as long as they say', async () => {
  const pages = await readPages(await renderCalibrationSheet(paperOf(paperNamed('A4')!), META.date, FONTS));
  const texts = pages[0]!.texts.map(({ text }) => text);
  const lengths = pages[0]!.paths.flatMap(({ lines }) => {
    const [a, b] = lines[0] ?? [];
    return a && b ? [Math.hypot(a.x - b.x, a.y - b.y) / MM] : [];
  });
  const named = texts.flatMap((text) => (/^\d+ mm$/.test(text) ? [Number.parseInt(text, 10)] : []));
  expect(new Set(named).size).toBe(2);
  for (const nominal of named) {
    expect(lengths.some((length) => Math.abs(length - nominal) < 1e-4)).toBe(true);
  }
});
