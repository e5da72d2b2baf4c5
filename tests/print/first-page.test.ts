import { describe, expect, test } from 'vitest';
import type { PatternPrint } from '../../src/print/api.ts';
import { findingBlocks } from '../../src/print/first-page/findings.ts';
import { tapingSteps } from '../../src/print/first-page/steps.ts';
import { ACCENT, type TextItem } from '../../src/print/page/ink.ts';
import { renderPatternPdf } from '../../src/print/render-pattern-pdf.ts';
import { kneeLeg, leaningLeg } from './support/patterns.ts';
import { FONTS, META, printOf } from './support/prints.ts';
import { readPages } from './support/read-pdf.ts';

function measured(print: PatternPrint): PatternPrint {
  const from = { x: 0, y: 0 };
  const checks = [
    { name: 'A', from, to: { x: 0, y: 620 }, nominal: 620 },
    { name: 'B', from, to: { x: 420, y: 700 }, nominal: Math.hypot(420, 700) },
  ];
  return { ...print, pattern: { ...print.pattern, checks } };
}

describe('the first page', () => {
  test('shows how the sheets lie, what to measure, which line is which, and the cautions', async () => {
    const print = measured(printOf(kneeLeg(), 'A4'));
    const [first] = await readPages(await renderPatternPdf([print], META, FONTS));
    const texts = first!.texts.map(({ text }) => text);
    const all = texts.join(' ');
    for (const { row, place } of print.plan.sheets) {
      expect(texts.some((text) => text === `row ${row}, sheet ${place}` || text === `${row}.${place}`)).toBe(
        true,
      );
    }
    expect(texts).toContain('A');
    expect(all).toContain('620.0 mm');
    expect(all).toContain('816.3 mm');
    expect(texts).toContain('taped');
    expect(texts).toContain('glued');
    expect(texts).toContain('edge of the part');
    expect(all).toContain('Overall length');
    expect(all).toContain('Unplug before changing bits');
  });

  test('what finds no room on it follows the sheets, and the count of pages knows', async () => {
    const print = printOf(leaningLeg(), 'A4');
    const keyFacts = Array.from({ length: 45 }, (_, i) => ({
      label: `Size ${i + 1}`,
      value: `${i + 1}.0 mm`,
    }));
    const cautions = Array.from(
      { length: 40 },
      (_, i) => `Caution number ${i + 1}, in so many words that it takes its line.`,
    );
    const long = { ...print, facts: { ...print.facts, keyFacts } };
    const pages = await readPages(await renderPatternPdf([long], { ...META, cautions }, FONTS));
    expect(pages.length).toBeGreaterThan(print.plan.sheets.length + 1);
    expect(pages[0]!.texts.map(({ text }) => text)).toContain(`page 1 of ${pages.length}`);
    expect(pages.at(-1)!.texts.map(({ text }) => text)).toContain(`page ${pages.length} of ${pages.length}`);
    const all = pages.flatMap((page) => page.texts.map(({ text }) => text)).join(' ');
    for (let i = 1; i <= 40; i++) expect(all).toContain(`Caution number ${i},`);
    for (let i = 1; i <= 45; i++) expect(all).toContain(`Size ${i}`);
  });
});

describe('the order of taping', () => {
  const whole = { long: 1, short: 1 };

  test('rows first, then rows to each other', () => {
    const { plan } = printOf(kneeLeg(), 'A4');
    const steps = tapingSteps(
      {
        ...plan,
        rows: 2,
        sheets: grid(plan.sheets[0]!, [
          [1, 2, 3],
          [1, 2],
        ]),
      },
      whole,
    );
    const rows = steps.findIndex((step) =>
      step.startsWith('Rows first. Row 1: sheets 1, 2 and 3. Row 2: sheets 1 and 2.'),
    );
    const joins = steps.findIndex((step) => step.includes('row 1 on row 2'));
    expect(rows).toBeGreaterThan(0);
    expect(joins).toBe(rows + 1);
  });

  test('one sheet is not taped at all', () => {
    const { plan } = printOf(kneeLeg(), '36 in roll');
    expect(tapingSteps(plan, whole).some((step) => /tape|Rows/.test(step))).toBe(false);
  });

  test('a corrected print says so', () => {
    const { plan } = printOf(kneeLeg(), 'A4');
    expect(tapingSteps(plan, { long: 1.002, short: 1 }).join(' ')).toContain('corrected already');
    expect(tapingSteps(plan, whole).join(' ')).not.toContain('corrected already');
  });
});

function grid(sheet: PatternPrint['plan']['sheets'][number], rows: number[][]) {
  return rows.flatMap((places, i) => places.map((place) => ({ ...sheet, row: i + 1, place })));
}

describe('what must be known before wood is cut', () => {
  test('stands on the first page, stops before cautions, with the word and in the accent ink', async () => {
    const print = printOf(kneeLeg(), 'A4');
    const findings = [
      { severity: 'caution', words: 'The hollow is cut against the grain.' },
      { severity: 'stop', words: 'The template has no edge for the guide.' },
    ] as const;
    const [first] = await readPages(
      await renderPatternPdf([{ ...print, facts: { ...print.facts, findings } }], META, FONTS),
    );
    const texts = first!.texts.map(({ text }) => text);
    expect(texts).toContain('What the checks say');
    expect(texts.indexOf('STOP')).toBeGreaterThan(-1);
    expect(texts.indexOf('STOP')).toBeLessThan(texts.indexOf('caution'));
    expect(texts).toContain('The template has no edge for the guide.');
    expect(texts).toContain('The hollow is cut against the grain.');
    const blocks = findingBlocks({ ...print.facts, findings }, 180, { first: 100, further: 200 });
    const inkOf = (words: string) =>
      blocks[0]!
        .draw({ x: 0, y: 0 })
        .find((item): item is TextItem => item.kind === 'text' && item.text === words)?.ink;
    expect(inkOf('STOP')).toEqual(ACCENT);
    expect(inkOf('caution')).not.toEqual(ACCENT);
  });

  test('is never left out, however much it is', async () => {
    const print = printOf(leaningLeg(), 'A4');
    const findings = Array.from({ length: 120 }, (_, i) => ({
      severity: i === 119 ? ('stop' as const) : ('caution' as const),
      words: `Finding ${i + 1}: the cut meets the grain the wrong way.`,
    }));
    const pages = await readPages(
      await renderPatternPdf([{ ...print, facts: { ...print.facts, findings } }], META, FONTS),
    );
    const all = pages.flatMap((page) => page.texts.map(({ text }) => text)).join(' ');
    for (let i = 1; i <= 120; i++) expect(all).toContain(`Finding ${i}:`);
    expect(pages[0]!.texts.map(({ text }) => text).join(' ')).toContain('Finding 120:');
  });

  test('the other hand is named with how to come by it, on the first page and at the foot of the sheets', async () => {
    const print = printOf(kneeLeg(), 'A4');
    const facts = { ...print.facts, other: { hand: 'right hand', quantity: 3 } };
    const [first, sheet] = await readPages(await renderPatternPdf([{ ...print, facts }], META, FONTS));
    expect(first!.texts.map(({ text }) => text).join(' ')).toContain(
      'And 3 of the other hand, right hand: print the pattern mirrored, or turn this one over',
    );
    expect(sheet!.texts.map(({ text }) => text).join(' ')).toContain('make 2 (and 3 right)');
  });
});
