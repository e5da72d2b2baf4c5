import { bench, describe } from 'vitest';
import { drawPattern } from '../../src/drawing/index.ts';
import { paperNamed, paperOf } from '../../src/print/papers.ts';
import { planSheets } from '../../src/print/plan-sheets.ts';
import { renderPatternPdf } from '../../src/print/render-pattern-pdf.ts';
import { PATTERN_CASES } from '../cases/pattern-cases.ts';
import { FONTS, META, printOf } from '../print/support/prints.ts';

const a4 = paperOf(paperNamed('A4')!);
const patterns = Object.entries(PATTERN_CASES).map(([name, make]) => {
  const { part, routing } = make();
  const options = { view: 'all', mirrored: false, lengths: META.lengths } as const;
  return [
    name,
    drawPattern(part, routing, { ...options, design: 'bench', revision: 'A', date: META.date }),
  ] as const;
});

describe('fewest sheets of A4', () => {
  for (const [name, pattern] of patterns) bench(name, () => void planSheets(pattern, a4));
});

describe('PDF of all sheets', () => {
  for (const [name, pattern] of patterns) {
    const print = printOf(pattern, 'A4');
    bench(name, async () => void (await renderPatternPdf([print], META, FONTS)));
  }
});
