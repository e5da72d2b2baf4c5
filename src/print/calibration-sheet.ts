import { type Box, norm, type Vec, vec } from '../geometry/index.ts';
import { MM_PER } from '../measure/index.ts';
import type { Paper, PrintFonts } from './api.ts';
import { heading, LEADING, paragraphs, TEXT_HEIGHT } from './first-page/block.ts';
import { firstLayout } from './first-page/first-layout.ts';
import { GRAPHITE, HAIR, PALE, type Page, type PageItem, THIN } from './page/ink.ts';
import { polyline, words } from './page/items.ts';
import { correctionOf } from './page/sheet-page.ts';
import { correctionWords } from './page/strip.ts';
import { writePdf } from './pdf/write-pdf.ts';

/** Room kept beside each bar for its figures, mm. */
const SIDE_ROOM = 12;
const TICKS = { end: 6, tenth: 3.2, small: 2 } as const;
const APART = 2;

/** Lengths, mm, of the two bars on a paper's calibration sheet: what a rule should read. */
export interface CalibrationBars {
  readonly long: number;
  readonly short: number;
}

/** The longest bars in tens of millimetres that a paper's calibration sheet has room for. */
export function calibrationBars(paper: Paper): CalibrationBars {
  const { content } = firstLayout(paper);
  const fits = (room: number): number => Math.floor((room - SIDE_ROOM - 6) / 10) * 10;
  return { long: fits(content.maxY - content.minY), short: fits(content.maxX - content.minX) };
}

/**
 * A page with one bar along each edge of the paper, to be printed, measured, and typed in. Printed with the paper's own
 * calibration, so that measuring again shows what is left. `date` (ISO 8601) stands in the file's properties.
 */
export function renderCalibrationSheet(paper: Paper, date: string, fonts: PrintFonts): Promise<Uint8Array> {
  return writePdf(
    [calibrationPage(paper)],
    { title: 'Calibration sheet', subject: `For ${paper.name}`, date },
    fonts,
  );
}

function calibrationPage(paper: Paper): Page {
  const layout = firstLayout(paper);
  const { content } = layout;
  const bars = calibrationBars(paper);
  const origin = vec(content.minX + SIDE_ROOM, content.minY + SIDE_ROOM);
  return {
    ...layout.page,
    printable: layout.printable,
    label: 'calibration',
    bookmark: 'Calibration sheet',
    chapter: 'Calibration',
    correction: correctionOf(paper.calibration, 'portrait'),
    items: [
      ...barItems(origin, bars.short, 'across'),
      ...barItems(origin, bars.long, 'up'),
      ...crossAt(vec(origin.x + bars.short, origin.y + bars.long)),
      ...wordsOn({ ...content, minX: origin.x + 14, minY: origin.y + 14 }, paper, bars),
    ],
  };
}

/** The corner across from where the bars begin, for measuring diagonals. */
function crossAt({ x, y }: Vec): PageItem[] {
  return [polyline([vec(x - 4, y), vec(x + 1, y)], THIN), polyline([vec(x, y - 4), vec(x, y + 1)], THIN)];
}

/** Millimetres on the inner side of the line that is measured, inches on the outer. */
function barItems(origin: Vec, length: number, direction: 'across' | 'up'): PageItem[] {
  const place = (along: number, inside: number): Vec =>
    direction === 'across'
      ? vec(origin.x + along, origin.y + inside)
      : vec(origin.x + inside, origin.y + along);
  const angle = direction === 'across' ? 0 : Math.PI / 2;
  const tick = (along: number, from: number, tall: number): PageItem =>
    polyline([place(along, from), place(along, from + tall)], THIN);
  const inches = Math.floor(length / MM_PER.in);
  const mm = Array.from({ length: length / 5 + 1 }, (_, i) =>
    tick(5 * i, 0, i === 0 || 5 * i === length ? TICKS.end : i % 2 === 0 ? TICKS.tenth : TICKS.small),
  );
  const inch = Array.from({ length: 4 * inches + 1 }, (_, i) =>
    tick(
      (i * MM_PER.in) / 4,
      -APART,
      -(i === 0 || i === 4 * inches ? TICKS.end : i % 4 === 0 ? TICKS.tenth : TICKS.small),
    ),
  );
  // Baselines of figures inside and outside; letters that run up the page stand to the left of theirs.
  const lift = TICKS.tenth + 1.2;
  const inner = direction === 'across' ? lift : lift + TEXT_HEIGHT;
  const outer = -(APART + lift + (direction === 'across' ? TEXT_HEIGHT : 0));
  const figure = (text: string, along: number, baseline: number, align: 'left' | 'right'): PageItem =>
    words(text, place(along, baseline), { height: TEXT_HEIGHT, angle, align });
  return [
    polyline([place(0, 0), place(length, 0)], THIN),
    polyline([place(0, -APART), place(inches * MM_PER.in, -APART)], THIN),
    ...mm,
    ...inch,
    figure(`${length} mm`, length - 1.5, inner, 'right'),
    figure(`${inches} in`, inches * MM_PER.in - 1.5, outer, 'right'),
    figure(`${direction === 'across' ? 'short' : 'long'} edge of the paper`, 10, inner, 'left'),
  ];
}

function wordsOn(box: Box, paper: Paper, bars: CalibrationBars): PageItem[] {
  const width = box.maxX - box.minX - 4;
  const corner = vec(box.minX + 2, box.maxY);
  const steps = paragraphs(
    'Calibration sheet',
    [
      `Print this page at 100\u00a0% (\u201cactual size\u201d), not fitted to the page, on ${paper.name}. Let it lie for a few minutes.`,
      'Measure each bar along its line with a good steel rule, from the outer edge of the first long tick to the same edge of the last.',
      'Type what the rule reads for each edge. A correction of more than 0.5\u00a0% is cautioned against, of more than 1.5\u00a0% refused: then the page is being fitted, not printed.',
      'Print it again, corrected, and measure again. Compare the diagonals too, from bar end to bar end and from the corner to the small cross: a printer that pulls the paper askew makes them differ, and no factor cures that.',
    ],
    width,
    true,
  );
  const table = vec(corner.x, corner.y - steps.height - 6);
  const row = (text: string, nominal: number, below: number): PageItem[] => [
    words(text, vec(table.x, table.y - below), { height: TEXT_HEIGHT }),
    words(`${nominal} mm`, vec(table.x + 46, table.y - below), {
      height: TEXT_HEIGHT,
      weight: 'semibold',
      align: 'right',
    }),
    polyline(
      [vec(table.x + 54, table.y - below - 1), vec(table.x + 84, table.y - below - 1)],
      HAIR,
      GRAPHITE,
    ),
  ];
  return [
    ...steps.draw(corner),
    heading('What the rule reads', table),
    ...row('Short edge', bars.short, 10),
    ...row('Long edge', bars.long, 10 + 2 * LEADING),
    ...row('Both diagonals', Math.round(10 * norm(bars.short, bars.long)) / 10, 10 + 4 * LEADING),
    words(correctionWords(paper.calibration), vec(table.x, table.y - 10 - 7 * LEADING), {
      height: TEXT_HEIGHT,
      ink: PALE,
    }),
  ];
}
