import { readFileSync } from 'node:fs';
import type { Pattern } from '../../../src/drawing/index.ts';
import type { Paper, PatternPrint, PlanOptions, PrintFonts, PrintMeta } from '../../../src/print/api.ts';
import { paperNamed, paperOf } from '../../../src/print/papers.ts';
import { planSheets } from '../../../src/print/plan-sheets.ts';

const font = (weight: string): Uint8Array =>
  new Uint8Array(
    readFileSync(new URL(`../../../shared/fonts/IBMPlexSansCondensed-${weight}.woff`, import.meta.url)),
  );

export const FONTS: PrintFonts = { regular: font('Regular'), semibold: font('SemiBold') };

/** Invented data. */
export const META: PrintMeta = {
  design: 'Reading room table',
  revision: 'B',
  date: '2025-03-14',
  lengths: { unit: 'mm', decimals: 1 },
  cautions: [
    'Feed against the turn of the bit: anticlockwise round an outside edge with the router in the hand.',
    'Hold the work and the template with screws or clamps outside the path of the cutter; tape alone has let go.',
    'Unplug before changing bits. Wear eye, ear and dust protection. Follow the tool maker\u2019s manual.',
  ],
};

export function printOf(
  pattern: Pattern,
  paperName: string,
  asked: Partial<Paper> = {},
  options: PlanOptions = {},
): PatternPrint {
  const named = paperNamed(paperName);
  if (named === undefined) throw new Error(`no paper is called ${paperName}`);
  const plan = planSheets(pattern, paperOf(named, asked), options);
  if (!plan.ok) throw new Error(plan.problems[0]!.message);
  return {
    pattern,
    plan: plan.value,
    facts: {
      part: pattern.title.replace(/,.*/, ''),
      hand: 'left hand',
      quantity: 2,
      keyFacts: [
        { label: 'Overall length', value: '734.2 mm' },
        { label: 'Splay', value: '12\u00b0' },
        { label: 'Width at the head', value: '92.0 mm' },
        { label: 'Width at the foot', value: '46.0 mm' },
      ],
    },
  };
}
