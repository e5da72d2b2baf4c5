import { STRIDE, type TurnedContent } from './pieces.ts';

/** Bands of one height, one above the other: band i from `low` + i · `step`, all mm. */
export interface Rows {
  readonly low: number;
  readonly height: number;
  readonly step: number;
  readonly count: number;
}

/**
 * The x-spans of all content strictly inside each band: least and greatest in turn, rising. Spans less than `gap` apart
 * are joined. A level line on the border of a band is outside it.
 */
export function spansInRows(
  content: TurnedContent,
  { low, height, step, count }: Rows,
  gap: number,
): number[][] {
  const rows: number[][] = [];
  for (let row = 0; row < count; row++) rows.push([]);
  const { ends } = content;
  const inverse = 1 / step;
  for (let piece = 0; piece < content.count; piece++) {
    const from = ends[STRIDE * piece]!;
    const to = ends[STRIDE * piece + 1]!;
    // One row early: the sum below decides, not this quotient.
    for (let row = Math.max(0, Math.floor((from - low - height) * inverse)); row < count; row++) {
      const bottom = low + row * step;
      const top = bottom + height;
      if (to <= bottom) break;
      if (from >= top) continue;
      const a = bottom <= from ? ends[STRIDE * piece + 2]! : xAt(content, piece, bottom);
      const b = top >= to ? ends[STRIDE * piece + 3]! : xAt(content, piece, top);
      if (a < b) addSpan(rows[row]!, a, b, gap);
      else addSpan(rows[row]!, b, a, gap);
    }
  }
  return rows;
}

/** The x of a piece at a height between its ends, mm. */
function xAt({ ends, straight, circles }: TurnedContent, piece: number, y: number): number {
  if (piece < straight) {
    const at = STRIDE * piece;
    const low = ends[at]!;
    return ends[at + 2]! + ((y - low) / (ends[at + 1]! - low)) * (ends[at + 3]! - ends[at + 2]!);
  }
  const own = STRIDE * (piece - straight);
  const rise = y - circles[own + 1]!;
  const radius = circles[own + 2]!;
  return circles[own]! + circles[own + 3]! * Math.sqrt(Math.max(0, radius * radius - rise * rise));
}

/** Puts one more span among those that there are: with all that lie less than `gap` from it they become one. */
function addSpan(spans: number[], from: number, to: number, gap: number): void {
  // Most of it lies within the outline, whose span is there already.
  if (spans.length === 2 && from >= spans[0]! && to <= spans[1]!) return;
  let first = 0;
  while (first < spans.length && from - spans[first + 1]! >= gap) first += 2;
  let after = first;
  while (after < spans.length && spans[after]! - to < gap) after += 2;
  if (after === first) {
    spans.splice(first, 0, from, to);
    return;
  }
  if (from < spans[first]!) spans[first] = from;
  const end = spans[after - 1]!;
  spans[first + 1] = to > end ? to : end;
  if (after > first + 2) spans.splice(first + 2, after - first - 2);
}

/** The same spans with those less than `gap` apart joined. */
export function joinSpans(spans: readonly number[], gap: number): number[] {
  const joined: number[] = [];
  for (let k = 0; k < spans.length; k += 2) {
    const last = joined.length - 1;
    if (last > 0 && spans[k]! - joined[last]! < gap) joined[last] = spans[k + 1]!;
    else joined.push(spans[k]!, spans[k + 1]!);
  }
  return joined;
}
