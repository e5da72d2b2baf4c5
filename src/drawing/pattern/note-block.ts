import type { Vec } from '../../geometry/index.ts';
import type { LineRole, Mark, TextMark } from '../api.ts';
import { pathMark, textMark } from '../layout/drawing.ts';
import { stroke } from '../layout/strokes.ts';
import { widthOfText } from '../lettering/metrics.ts';

/** A block of notes beside the pattern; drawn from its upper left corner. Sizes in mm. */
export interface NoteBlock {
  readonly width: number;
  readonly height: number;
  readonly draw: (corner: Vec) => readonly Mark[];
}

/** Notes are no broader than this, so that they lie beside a leg on one strip of ordinary paper. */
export const NOTE_WIDTH = 58;
const BODY = 2.5;
const LINE = 4.2;
const HEADING = 3.5;
const HEADING_LINE = 6.6;
/** From one line of a heading to the next, mm. */
const HEADING_LEADING = 6;

/** One line of a block: its height, and its marks from the left end of its baseline. */
export interface NoteRow {
  readonly height: number;
  readonly draw: (at: Vec) => readonly Mark[];
}

/** A heading, in as many lines as it takes, over a thin rule, and rows under it. */
export function noteBlock(heading: string, rows: readonly NoteRow[]): NoteBlock {
  const headings = breakLines(heading, NOTE_WIDTH, HEADING, 'semibold');
  const top = HEADING_LINE + (headings.length - 1) * HEADING_LEADING;
  return {
    width: NOTE_WIDTH,
    height: top + rows.reduce((sum, row) => sum + row.height, 0),
    draw: (corner) => {
      const baseline = (line: number): number => corner.y - HEADING - 0.6 - line * HEADING_LEADING;
      const rule = baseline(headings.length - 1) - 1.5;
      const marks: Mark[] = [
        ...headings.map((line, i) =>
          textMark(line, { x: corner.x, y: baseline(i) }, { height: HEADING, weight: 'semibold' }),
        ),
        pathMark('thin', [stroke({ x: corner.x, y: rule }, { x: corner.x + NOTE_WIDTH, y: rule })]),
      ];
      let y = corner.y - top;
      for (const row of rows) {
        marks.push(...row.draw({ x: corner.x, y: y - row.height + 1.2 }));
        y -= row.height;
      }
      return marks;
    },
  };
}

/** White between rows, mm. */
export function gapRow(height: number): NoteRow {
  return { height, draw: () => [] };
}

/** A sentence, broken into as many rows as its width asks for. */
export function wordRows(text: string, role: LineRole = 'mark'): readonly NoteRow[] {
  return breakLines(text, NOTE_WIDTH, BODY).map((words) => ({
    height: LINE,
    draw: (at) => [textMark(words, at, { height: BODY, role })],
  }));
}

/** Words at the left, a figure at the right end; words too long for one row run on above. */
export function figureRows(words: string, figure: string): readonly NoteRow[] {
  const room = NOTE_WIDTH - widthOfText(figure, BODY, 'regular') - 3;
  const lines = breakLines(words, room, BODY);
  return lines.map((line, i) => ({
    height: LINE,
    draw: (at) => [
      textMark(line, at, { height: BODY }),
      ...(i === lines.length - 1
        ? [textMark(figure, { x: at.x + NOTE_WIDTH, y: at.y }, { height: BODY, align: 'right' })]
        : []),
    ],
  }));
}

/** A sample of a line and what it means. */
export function lineRow(role: LineRole, words: string): readonly NoteRow[] {
  const sample = 15;
  return breakLines(words, NOTE_WIDTH - sample - 3, BODY).map((line, i) => ({
    height: LINE,
    draw: (at) => [
      ...(i === 0
        ? [pathMark(role, [stroke({ x: at.x, y: at.y + 0.9 }, { x: at.x + sample, y: at.y + 0.9 })])]
        : []),
      textMark(line, { x: at.x + sample + 3, y: at.y }, { height: BODY }),
    ],
  }));
}

/** Columns of text; a cell that is empty gets a rule to write on. Widths in mm; the last column ends at the right. */
export function tableRow(
  cells: readonly string[],
  widths: readonly number[],
  height: number,
  heading = false,
): NoteRow {
  return {
    height,
    draw: (at) => {
      let x = at.x;
      return cells.flatMap((cell, i): readonly Mark[] => {
        const left = x;
        const width = widths[i]!;
        x += width;
        if (cell === '' && !heading) {
          return [
            pathMark('thin', [
              stroke({ x: left + 1, y: at.y - 0.8 }, { x: left + width - 1, y: at.y - 0.8 }),
            ]),
          ];
        }
        return [textMark(cell, { x: left, y: at.y }, { height: heading ? 1.8 : BODY })];
      });
    },
  };
}

/** Breaks text at spaces so that no line is wider than `width` mm; a single word that is stays whole and is shortened. */
export function breakLines(
  text: string,
  width: number,
  height: number,
  weight: TextMark['weight'] = 'regular',
): readonly string[] {
  const isTooWide = (words: string): boolean => widthOfText(words, height, weight) > width;
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (!isTooWide(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = shorten(word, isTooWide);
  }
  if (line !== '' || lines.length === 0) lines.push(line);
  return lines;
}

function shorten(word: string, isTooWide: (words: string) => boolean): string {
  if (!isTooWide(word)) return word;
  const letters = [...word].slice(0, 400);
  while (letters.length > 1 && isTooWide(`${letters.join('')}\u2026`)) letters.pop();
  return `${letters.join('')}\u2026`;
}
