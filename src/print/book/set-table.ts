import { widthOfText } from '../../drawing/index.ts';
import { type Vec, vec } from '../../geometry/index.ts';
import { GRAPHITE, HAIR, PALE, type PageItem, THIN } from '../page/ink.ts';
import { linesWithin, polyline, words } from '../page/items.ts';
import type { BookColumn } from './api.ts';
import type { Strip } from './strip.ts';

const TEXT = 2.3;
const HEAD = 1.8;
const LEADING = 4;
const GAP = 3;
const ABOVE = 1.3;
/** A table of no more rows stays on one page. */
const SHORT = 6;

interface PlacedColumn extends BookColumn {
  readonly left: number;
  readonly width: number;
}

/** A table as strips, a row each: the head comes again at the top of every page that the table runs on to. */
export function setTable(
  columns: readonly BookColumn[],
  rows: readonly (readonly string[])[],
  width: number,
): readonly Strip[] {
  const placed = placeColumns(columns, rows, width);
  const head = headStrip(placed, width);
  return [head, ...rows.map((row, at) => rowStrip(row, placed, width, at, rows.length, head))];
}

/** Columns as wide as their widest cell wants, the rest shared out; where that is too much, narrowed in proportion to what they want. */
function placeColumns(
  columns: readonly BookColumn[],
  rows: readonly (readonly string[])[],
  width: number,
): readonly PlacedColumn[] {
  const room = width - GAP * (columns.length - 1);
  const wanted = columns.map(({ head }, at) => {
    const cells = rows.filter((row) => row.length > 1).flatMap((row) => (row[at] ?? '').split('\n'));
    const widths = cells.map((cell) => widthOfText(cell, TEXT, 'regular'));
    return Math.max(widthOfText(head, HEAD, 'semibold') * 1.05, ...widths) + 0.5;
  });
  const all = wanted.reduce((sum, each) => sum + each, 0);
  const shares = columns.map(({ share = 1 }) => share);
  const total = shares.reduce((sum, each) => sum + each, 0);
  const widths =
    all <= room
      ? wanted.map((each, at) => each + ((room - all) * shares[at]!) / total)
      : narrow(wanted, room);
  let left = 0;
  return columns.map((column, at) => {
    const place = { ...column, left, width: widths[at]! };
    left += widths[at]! + GAP;
    return place;
  });
}

/** Narrow columns keep what they want; the wide ones share what is left. */
function narrow(wanted: readonly number[], room: number): readonly number[] {
  const order = wanted.map((_, at) => at).sort((a, b) => wanted[a]! - wanted[b]!);
  const widths = [...wanted];
  let left = room;
  order.forEach((at, done) => {
    widths[at] = Math.min(wanted[at]!, left / (order.length - done));
    left -= widths[at]!;
  });
  return widths;
}

function headStrip(columns: readonly PlacedColumn[], width: number): Strip {
  const set = columns.map((column) => linesWithin(column.head, column.width, HEAD, 'semibold'));
  const count = Math.max(...set.map((lines) => lines.length));
  const height = 3.2 * count + 2.4;
  return {
    height: height + 0.6,
    staysWithNext: true,
    draw: ({ x, y }) => ({
      items: [
        ...columns.flatMap((column, at) =>
          set[at]!.map((line, i) =>
            cell(line, column, vec(x, y - height + 1.6 + 3.2 * (set[at]!.length - 1 - i)), HEAD, 'semibold'),
          ),
        ),
        polyline([vec(x, y - height), vec(x + width, y - height)], THIN, GRAPHITE),
      ],
    }),
  };
}

function rowStrip(
  row: readonly string[],
  columns: readonly PlacedColumn[],
  width: number,
  at: number,
  count: number,
  head: Strip,
): Strip {
  const isTitle = row.length === 1;
  const last = at === count - 1;
  const set = isTitle
    ? [linesWithin(row[0]!, width, TEXT, 'semibold')]
    : columns.map((column, at) =>
        (row[at] ?? '').split('\n').flatMap((line) => linesWithin(line, column.width, TEXT, 'regular')),
      );
  const lines = Math.max(1, ...set.map((lines) => lines.length));
  const height = LEADING * lines + ABOVE + 0.7;
  return {
    height: last ? height + 4 : height,
    repeated: head,
    // Neither the first row nor the last one stands alone on a page, and a short table is not broken.
    ...(isTitle || (count > 1 && (at === 0 || at === count - 2 || (count <= SHORT && !last)))
      ? { staysWithNext: true }
      : {}),
    draw: ({ x, y }) => ({
      items: [
        ...set.flatMap((own, column) =>
          own.map(
            (line, i): PageItem =>
              isTitle
                ? words(line, vec(x, y - ABOVE - 2.6 - LEADING * i), { height: TEXT, weight: 'semibold' })
                : cell(line, columns[column]!, vec(x, y - ABOVE - 2.6 - LEADING * i), TEXT, 'regular'),
          ),
        ),
        polyline(rule(x, y - height, width), HAIR, last ? GRAPHITE : PALE),
      ],
    }),
  };
}

const rule = (x: number, y: number, width: number): readonly Vec[] => [vec(x, y), vec(x + width, y)];

function cell(
  text: string,
  { left, width, align = 'left' }: PlacedColumn,
  at: Vec,
  height: number,
  weight: 'regular' | 'semibold',
): PageItem {
  const x = at.x + left + (align === 'right' ? width : 0);
  return words(text, vec(x, at.y), { height, weight, align });
}
