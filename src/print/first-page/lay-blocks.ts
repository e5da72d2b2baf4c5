import { type Box, vec } from '../../geometry/index.ts';
import type { Paper, PatternPrint, PrintMeta } from '../api.ts';
import type { PageItem } from '../page/ink.ts';
import { codeBlock } from '../square-code/code-block.ts';
import { type Block, fineColumns, paragraphs } from './block.ts';
import { findingBlocks } from './findings.ts';
import { lineKey } from './line-key.ts';
import { shapeOfMap, sheetMap } from './sheet-map.ts';
import { tapingSteps } from './steps.ts';
import { checkTable, factTable, jointTable, toolTable } from './tables.ts';

const GUTTER = 8;
/** Between blocks, mm: less where that saves a page. */
const BETWEEN = [3.5, 2];
/** A map at least so wide for its height takes the whole width of the page. */
const WIDE_MAP = 1.3;
/** A map no wider than this for its height stands beside the text, as a column of its own. */
const TALL_MAP = 0.62;
/** Share of the body's height that a map may take: a smaller one where that saves a page. */
const MAP_HEIGHTS = [0.45, 0.36, 0.29, 0.23];
/** Shares of the body's height and width that a tall map may take. */
const TALL_MAP_HEIGHT = 0.92;
const TALL_MAP_WIDTH = 0.27;
/** Share of the first page that findings may take; what is beyond goes to a further page. */
const FINDINGS_HEIGHT = 0.34;
/** Share of the width that the left one of two columns of text takes. */
const LEFT_SHARE = 0.54;

/** What stands in the upper right corner of the first page and reaches into it, mm. */
interface Corner {
  readonly width: number;
  /** Less than 0 where it does not reach so far. */
  readonly height: number;
}

/** A column being filled: where it begins, and how far down it has come on which page. */
interface Column {
  readonly x: number;
  y: number;
}

/**
 * The map, the order of taping and the tables in a body; items for each page. Each table goes to the emptier of two
 * columns, the key and the cautions below both, and what finds no room to a further page.
 */
export function layBlocks(
  body: Box,
  print: PatternPrint,
  meta: PrintMeta,
  {
    calibration,
    beside,
  }: { readonly calibration: Paper['calibration']; readonly beside: Corner | undefined },
): PageItem[][] {
  const tries = BETWEEN.flatMap((between) =>
    MAP_HEIGHTS.map((mapHeight) =>
      layWithMap(body, print, meta, { calibration, mapHeight, between, beside }),
    ),
  );
  const laid =
    tries.find(({ pages }) => pages.length === 1) ?? tries.find(({ isSafe }) => isSafe) ?? tries[0]!;
  return laid.pages;
}

/** What stands on which page, and whether what keeps fingers safe stands on the first. */
interface Laid {
  readonly pages: PageItem[][];
  readonly isSafe: boolean;
}

function layWithMap(
  whole: Box,
  print: PatternPrint,
  meta: PrintMeta,
  {
    calibration,
    mapHeight,
    between,
    beside,
  }: {
    readonly calibration: Paper['calibration'];
    readonly mapHeight: number;
    readonly between: number;
    readonly beside: Corner | undefined;
  },
): Laid {
  const { plan, pattern, facts } = print;
  const [found, ...foundToo] = findingBlocks(facts, whole.maxX - whole.minX - (beside?.width ?? 0), {
    first: FINDINGS_HEIGHT * (whole.maxY - whole.minY),
    further: whole.maxY - whole.minY,
  });
  const above = Math.max(found === undefined ? 0 : found.height + between, beside?.height ?? 0);
  const body = { ...whole, maxY: whole.maxY - above };
  const width = body.maxX - body.minX;
  const height = body.maxY - body.minY;
  const shape = shapeOfMap(plan);
  const isTall = shape <= TALL_MAP;
  const mapWidth = isTall ? Math.min(TALL_MAP_WIDTH * width, TALL_MAP_HEIGHT * height * shape) : 0;
  const left = body.minX + (isTall ? mapWidth + GUTTER : 0);
  const leftWidth = LEFT_SHARE * (body.maxX - left - GUTTER);
  const rightWidth = body.maxX - left - GUTTER - leftWidth;
  const pages: PageItem[][] = [[]];
  const put = (block: Block, column: Column, page = pages.length - 1): void => {
    pages[page]!.push(...block.draw(vec(column.x, column.y)));
    column.y -= block.height + between;
  };
  if (found !== undefined) put(found, { x: whole.minX, y: whole.maxY });
  const leftColumn = { x: left, y: body.maxY };
  const rightColumn = { x: left + leftWidth + GUTTER, y: body.maxY };
  if (isTall) {
    put(sheetMap(plan, pattern, mapWidth, TALL_MAP_HEIGHT * height), { x: body.minX, y: body.maxY });
  } else {
    const isWide = shape >= WIDE_MAP;
    put(sheetMap(plan, pattern, isWide ? width : leftWidth, mapHeight * height), leftColumn);
    if (isWide) rightColumn.y = leftColumn.y;
  }
  const code =
    meta.link === undefined || beside !== undefined
      ? undefined
      : codeBlock(meta.link, meta.design, rightWidth);
  const blocks = [
    code,
    checkTable(pattern, meta.lengths, rightWidth),
    factTable(facts, rightWidth),
    toolTable(pattern, rightWidth),
    jointTable(pattern, rightWidth),
  ].filter((block) => block !== undefined);
  const fits = (block: Block, column: Column): boolean => column.y - block.height >= body.minY;
  const wanted = [
    {
      block: paragraphs('Order of taping', tapingSteps(plan, calibration), leftWidth, true),
      columns: [leftColumn],
    },
    ...blocks.map((block) => ({ block, columns: [rightColumn, leftColumn] })),
  ];
  const further: Block[] = [...foundToo];
  for (const { block, columns } of wanted) {
    // The emptier column, so that both end at about the same height.
    const column = columns.filter((each) => fits(block, each)).sort((a, b) => b.y - a.y)[0];
    if (column === undefined) further.push(block);
    else put(block, column);
  }
  // Under both columns: few lines, and everything on one page for most parts.
  const full = body.maxX - left;
  const under = { x: left, y: Math.min(leftColumn.y, rightColumn.y) };
  const key = lineKey(pattern, full);
  const told = facts.cautions ?? meta.cautions;
  const cautions = told.length > 0 ? [fineColumns('Before cutting', told, full)] : [];
  const together = [key, ...cautions].reduce((sum, { height }) => sum + height + between, -between);
  // Where there is no room for both, what keeps fingers safe stays on the first page.
  const broad = under.y - together >= body.minY ? [key, ...cautions] : [...cautions, key];
  for (const block of broad) {
    if (fits(block, under)) put(block, under);
    else further.push(block);
  }
  const isSafe = !further.some((block) => cautions.includes(block));
  let fresh: Column | undefined;
  for (const block of further) {
    if (fresh === undefined || !fits(block, fresh)) {
      fresh = { x: whole.minX, y: whole.maxY };
      pages.push([]);
    }
    put(block, fresh);
  }
  return { pages, isSafe };
}
