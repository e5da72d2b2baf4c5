import { fail, ok, type Problem, type Result } from '../core/index.ts';
import type { Box, Vec } from '../geometry/index.ts';
import type { Paper } from './api.ts';
import { isAllowed, SCALE_REFUSED } from './calibrate.ts';

/** Height of the strip with the sheet's own lettering at the foot of each page, mm. */
export const STRIP_HEIGHT = 11;
/** Less than this leaves no room beyond the seam line for half a matching mark, mm. */
const LEAST_OVERLAP = 8;
/** Share of a sheet that may overlap: with more, most of the paper shows what its neighbours show. */
const MOST_OVERLAP = 1 / 3;
/** Half the widest line, and a hair: lines on the border of the drawing must still print whole, mm. */
const LINE_ROOM = 0.3;
/** What a sheet must show at least, mm, for tiling to make sense. */
const LEAST_STEP = 40;

/**
 * The places on one page; mm from its lower left corner, y up. Everything printed lies in `content`, which lies so far
 * inside the printable area that the strongest correction of scale about the page's centre keeps it there.
 */
export interface PageLayout {
  readonly page: { readonly width: number; readonly height: number };
  readonly printable: Box;
  readonly content: Box;
  /** What the sheet shows of the pattern: its cell and half an overlap more on each side. */
  readonly window: Box;
  /** The sheet's own cell; its border lines are the seams. */
  readonly cell: Box;
  /** The strip with the sheet's lettering, below the window. */
  readonly strip: Box;
}

/** Distance from seam to seam, mm. */
export function stepOf(layout: PageLayout): Vec {
  return { x: layout.cell.maxX - layout.cell.minX, y: layout.cell.maxY - layout.cell.minY };
}

/**
 * Where things go on a page of this paper; `length` is how much of a roll one page takes, mm.
 * Margins or an overlap that leave no room are problems.
 */
export function layOutPage(
  paper: Paper,
  orientation: 'portrait' | 'landscape',
  length?: number,
): Result<PageLayout> {
  const { size, margins, overlap } = paper;
  const short = size.kind === 'sheet' ? size.short : size.width;
  const long = size.kind === 'sheet' ? size.long : (length ?? size.most);
  const page = orientation === 'portrait' ? { width: short, height: long } : { width: long, height: short };
  const printable = {
    minX: margins.left,
    minY: margins.bottom,
    maxX: page.width - margins.right,
    maxY: page.height - margins.top,
  };
  const content = reservedIn(printable, page);
  const strip = { ...content, maxY: content.minY + STRIP_HEIGHT };
  const window = { ...content, minY: strip.maxY };
  const half = overlap / 2;
  const cell = {
    minX: window.minX + half,
    minY: window.minY + half,
    maxX: window.maxX - half,
    maxY: window.maxY - half,
  };
  const problems = problemsOf(paper, cell);
  return problems.length > 0 ? fail(...problems) : ok({ page, printable, content, window, cell, strip });
}

/** The part of the printable area that any allowed correction, about the page's centre, keeps inside it. */
function reservedIn(printable: Box, page: { width: number; height: number }): Box {
  const most = 1 + SCALE_REFUSED;
  const x = page.width / 2;
  const y = page.height / 2;
  return {
    minX: x + (printable.minX - x) / most + LINE_ROOM,
    minY: y + (printable.minY - y) / most + LINE_ROOM,
    maxX: x + (printable.maxX - x) / most - LINE_ROOM,
    maxY: y + (printable.maxY - y) / most - LINE_ROOM,
  };
}

function problemsOf(paper: Paper, cell: Box): Problem[] {
  const problems: Problem[] = [];
  const { margins, overlap } = paper;
  const sides = [margins.top, margins.right, margins.bottom, margins.left];
  if (!sides.every((margin) => margin >= 0 && Number.isFinite(margin))) {
    problems.push({
      code: 'paper.margins',
      message: 'A margin of the paper is not a length of 0 mm or more.',
      found: sides.join(', '),
      expected: '0 mm or more on each side',
    });
  }
  if (!(overlap >= LEAST_OVERLAP)) {
    problems.push({
      code: 'paper.overlap',
      message: `An overlap of ${overlap} mm leaves no room for matching marks on both sheets: the least is ${LEAST_OVERLAP} mm.`,
      found: `${overlap} mm`,
      expected: `${LEAST_OVERLAP} mm or more`,
    });
  }
  const { long, short } = paper.calibration;
  if (!isAllowed(paper.calibration)) {
    problems.push({
      code: 'paper.calibration',
      message: `A correction of scale of more than ${100 * SCALE_REFUSED} % is refused: calibrate again from a sheet printed without correction.`,
      found: `long edge ${long}, short edge ${short}`,
      expected: `factors from ${1 - SCALE_REFUSED} to ${1 + SCALE_REFUSED}`,
    });
  }
  const room = Math.min(cell.maxX - cell.minX, cell.maxY - cell.minY);
  if (problems.length === 0 && !(room >= LEAST_STEP)) {
    problems.push({
      code: 'paper.no-room',
      message: `Margins and overlap leave ${Math.round(room)} mm of ${paper.name} for the pattern; ${LEAST_STEP} mm is the least. Choose smaller margins, a smaller overlap or larger paper.`,
      found: `${Math.round(room)} mm`,
      expected: `${LEAST_STEP} mm or more`,
    });
  }
  const most = Math.floor((room + overlap) * MOST_OVERLAP);
  if (problems.length === 0 && overlap > most) {
    problems.push({
      code: 'paper.overlap',
      message: `An overlap of ${overlap} mm is too much for ${paper.name}: ${most} mm is the most, a third of what a sheet shows.`,
      found: `${overlap} mm`,
      expected: `${most} mm or less`,
    });
  }
  return problems;
}
