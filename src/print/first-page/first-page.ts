import { type Box, vec } from '../../geometry/index.ts';
import type { Paper, PatternFacts, PatternPrint, PrintMeta } from '../api.ts';
import { GRAPHITE, type Page, type PageItem, THIN } from '../page/ink.ts';
import { polyline, words, wordsWithin } from '../page/items.ts';
import { correctionOf } from '../page/sheet-page.ts';
import { correctionWords, partWords } from '../page/strip.ts';
import { type CornerCode, cornerCode } from '../square-code/code-block.ts';
import { MODULE, QUIET } from '../square-code/square-codes.ts';
import { firstLayout } from './first-layout.ts';
import { layBlocks } from './lay-blocks.ts';

const HEADER = 25;
/** From one line of the header to the next. */
const LINE = 4.4;
/** From what the next line would be down to the rule. */
const RULE = -1;
/** The line that says how the other hand is made, and that which says what the code is. */
const OTHER_HAND = LINE;
const CODE_LINE = LINE;
/** White round a code that may lie where nothing is printed: all of it. */
const WHITE = QUIET * MODULE;

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
  const code = meta.link === undefined ? undefined : cornerCode(meta.link, content.maxX - content.minX);
  const header = HEADER + other + (code === undefined ? 0 : CODE_LINE);
  const body = { ...content, maxY: content.maxY - header };
  // The white round the code may lie beyond what is printed.
  const beside = code && { width: code.width - WHITE, height: code.width - 2 * WHITE - header };
  const items = layBlocks(body, print, meta, { calibration, beside });
  const count = pages(items.length - 1);
  return items.map((each, i) => ({
    ...layout.page,
    printable: layout.printable,
    label: i === 0 ? `${pattern.name} map` : `${pattern.name} map ${i + 1}`,
    bookmark: i === 0 ? 'How the sheets lie' : 'How the sheets lie, continued',
    chapter: pattern.title,
    correction: correctionOf(calibration, 'portrait'),
    items: [
      ...headerItems(content, print, meta, {
        calibration,
        page: i === 0 ? 1 : count - items.length + 1 + i,
        pages: count,
        code,
        isFirst: i === 0,
      }),
      ...each,
    ],
  }));
}

function headerItems(
  box: Box,
  { pattern, facts }: PatternPrint,
  meta: PrintMeta,
  {
    calibration,
    page,
    pages,
    code,
    isFirst,
  }: {
    readonly calibration: Paper['calibration'];
    readonly page: number;
    readonly pages: number;
    readonly code: CornerCode | undefined;
    readonly isFirst: boolean;
  },
): PageItem[] {
  const right = box.maxX - (isFirst && code !== undefined ? code.width - WHITE : 0);
  const width = right - box.minX;
  const texts = [
    `${pattern.title} \u00b7 full size${pattern.mirrored ? ' \u00b7 MIRRORED: the other hand, turned over' : ''}`,
    `${meta.design} \u00b7 revision ${meta.revision} \u00b7 ${meta.date} \u00b7 ${correctionWords(calibration)}`,
    ...(facts.other === undefined ? [] : [otherHandWords(facts.other, pattern.mirrored)]),
    ...(isFirst && code !== undefined ? [code.words] : []),
  ];
  const below = 12.2 + LINE * texts.length;
  const rule = box.maxY - below - RULE;
  return [
    wordsWithin(
      partWords(facts),
      vec(box.minX, box.maxY - 6),
      width - 30,
      { height: 5, weight: 'semibold' },
      2.5,
    ),
    words(`page ${page} of ${pages}`, vec(right, box.maxY - 6), { height: 1.8, align: 'right' }),
    ...texts.map((text, at) =>
      wordsWithin(text, vec(box.minX, box.maxY - 12.2 - LINE * at), width, { height: 2.5 }),
    ),
    polyline([vec(box.minX, rule), vec(right, rule)], THIN, GRAPHITE),
    ...(isFirst && code !== undefined ? [code.draw(vec(right, box.maxY + WHITE))] : []),
  ];
}

/** How the other hand is made, of which this pattern is the turned-over picture. */
function otherHandWords({ hand, quantity }: NonNullable<PatternFacts['other']>, isMirrored: boolean): string {
  const print = isMirrored ? 'print the pattern as drawn' : 'print the pattern mirrored';
  return `And ${quantity} of the other hand, ${hand}: ${print}, or turn this one over and trace it.`;
}
