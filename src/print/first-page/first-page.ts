import { type Box, vec } from '../../geometry/index.ts';
import type { Paper, PatternFacts, PatternPrint, PrintMeta } from '../api.ts';
import { GRAPHITE, type Page, type PageItem, THIN } from '../page/ink.ts';
import { polyline, words, wordsWithin } from '../page/items.ts';
import { correctionOf } from '../page/sheet-page.ts';
import { correctionWords, partWords } from '../page/strip.ts';
import { firstLayout } from './first-layout.ts';
import { layBlocks } from './lay-blocks.ts';

const HEADER = 25;
/** The line that says how the other hand is made. */
const OTHER_HAND = 4.4;

/** The map of a pattern's sheets with all that is said once, and further pages where one does not hold it all. */
export function firstPages(
  print: PatternPrint,
  meta: PrintMeta,
  calibration: Paper['calibration'],
  pages: (extra: number) => number,
): Page[] {
  const { plan, pattern } = print;
  const layout = firstLayout(plan.paper);
  const { content } = layout;
  const other = print.facts.other === undefined ? 0 : OTHER_HAND;
  const body = { ...content, maxY: content.maxY - HEADER - other };
  const items = layBlocks(body, print, meta, calibration);
  const count = pages(items.length - 1);
  return items.map((each, i) => ({
    ...layout.page,
    printable: layout.printable,
    label: i === 0 ? `${pattern.name} map` : `${pattern.name} map ${i + 1}`,
    bookmark: i === 0 ? 'How the sheets lie' : 'How the sheets lie, continued',
    chapter: pattern.title,
    correction: correctionOf(calibration, 'portrait'),
    items: [
      ...headerItems(content, print, meta, calibration, i === 0 ? 1 : count - items.length + 1 + i, count),
      ...each,
    ],
  }));
}

function headerItems(
  box: Box,
  { pattern, facts }: PatternPrint,
  meta: PrintMeta,
  calibration: Paper['calibration'],
  page: number,
  pages: number,
): PageItem[] {
  const width = box.maxX - box.minX;
  const line = (text: string, below: number): PageItem =>
    wordsWithin(text, vec(box.minX, box.maxY - below), width, { height: 2.5 });
  const rule = box.maxY - 20 - (facts.other === undefined ? 0 : OTHER_HAND);
  return [
    wordsWithin(
      partWords(facts),
      vec(box.minX, box.maxY - 6),
      width - 30,
      { height: 5, weight: 'semibold' },
      2.5,
    ),
    words(`page ${page} of ${pages}`, vec(box.maxX, box.maxY - 6), { height: 1.8, align: 'right' }),
    line(
      `${pattern.title} \u00b7 full size${pattern.mirrored ? ' \u00b7 MIRRORED: the other hand, turned over' : ''}`,
      12.2,
    ),
    line(
      `${meta.design} \u00b7 revision ${meta.revision} \u00b7 ${meta.date} \u00b7 ${correctionWords(calibration)}`,
      16.6,
    ),
    ...(facts.other === undefined ? [] : [line(otherHandWords(facts.other, pattern.mirrored), 21)]),
    polyline([vec(box.minX, rule), vec(box.maxX, rule)], THIN, GRAPHITE),
  ];
}

/** How the other hand is made, of which this pattern is the turned-over picture. */
function otherHandWords({ hand, quantity }: NonNullable<PatternFacts['other']>, isMirrored: boolean): string {
  const print = isMirrored ? 'print without --mirrored' : 'print with --mirrored';
  return `And ${quantity} of the other hand, ${hand}: ${print}, or turn this pattern over and trace it.`;
}
