import { type Box, vec } from '../../geometry/index.ts';
import type { Paper, PatternPrint, PrintMeta } from '../api.ts';
import { GRAPHITE, type Page, type PageItem, THIN } from '../page/ink.ts';
import { polyline, words, wordsWithin } from '../page/items.ts';
import { correctionOf } from '../page/sheet-page.ts';
import { correctionWords, partWords } from '../page/strip.ts';
import { type Block, paragraphs } from './block.ts';
import { firstLayout } from './first-layout.ts';
import { shapeOfMap, sheetMap } from './sheet-map.ts';
import { tapingSteps } from './steps.ts';
import { checkTable, factTable, lineKey } from './tables.ts';

const HEADER = 25;
const GUTTER = 8;
const BETWEEN = 5;
/** A map at least so wide for its height takes the whole width of the page. */
const WIDE_MAP = 1.3;
/** Share of the page's height that the map may take. */
const MAP_SHARE = 0.42;
const LEFT_SHARE = 0.56;

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
  const body = { ...content, maxY: content.maxY - HEADER };
  const width = body.maxX - body.minX;
  const leftWidth = LEFT_SHARE * width;
  const rightWidth = width - leftWidth - GUTTER;
  const isWide = shapeOfMap(plan) >= WIDE_MAP;
  const map = sheetMap(plan, pattern, isWide ? width : leftWidth, MAP_SHARE * (content.maxY - content.minY));
  const right = [
    checkTable(pattern, meta.lengths, rightWidth),
    factTable(print.facts, rightWidth),
    lineKey(pattern, rightWidth),
    meta.cautions.length > 0 ? paragraphs('Before cutting', meta.cautions, rightWidth, false) : undefined,
  ].filter((block) => block !== undefined);
  const steps = paragraphs('Order of taping', tapingSteps(plan, calibration), leftWidth, true);
  const items: PageItem[][] = [[]];
  const flow = flowInto(body, items);
  let y = body.maxY;
  if (isWide) y = flow.place(map, body.minX, y);
  flow.column(isWide ? [steps] : [map, steps], body.minX, y);
  flow.column(right, body.minX + leftWidth + GUTTER, y);
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

/** Lays blocks into a body, on to further pages where they do not fit. */
function flowInto(body: Box, pages: PageItem[][]) {
  const place = (block: Block, x: number, y: number, page = 0): number => {
    while (pages.length <= page) pages.push([]);
    pages[page]!.push(...block.draw(vec(x, y)));
    return y - block.height - BETWEEN;
  };
  const column = (blocks: readonly Block[], x: number, top: number): void => {
    let y = top;
    let page = 0;
    for (const block of blocks) {
      if (y - block.height < body.minY && y < body.maxY) {
        page++;
        y = body.maxY;
      }
      y = place(block, x, y, page);
    }
  };
  return { place, column };
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
    polyline([vec(box.minX, box.maxY - 20), vec(box.maxX, box.maxY - 20)], THIN, GRAPHITE),
  ];
}
