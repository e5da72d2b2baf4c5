import { polar, type Vec } from '../../geometry/index.ts';
import type { PathMark, TextMark } from '../api.ts';
import { type Drawing, pathMark, textMark } from '../layout/drawing.ts';
import { boxOfText, growBox, inFrame } from '../layout/oriented-box.ts';
import { narrowHead, stroke } from '../layout/strokes.ts';
import { FIGURE } from './figure-of.ts';
import { HEAD, type LengthLine } from './lanes.ts';

/** Extension lines run past the dimension line by this, mm (about 8 line widths, ISO 129-1 from memory). */
const PAST = 1.5;
/** White kept round a figure, and between it and its line, mm. */
const AIR = 0.4;
/** Half the width of a head, and a little: figures may stand over the heads of a short line. */
const OVER_HEADS = 0.4;
/** How far past an end a figure is tried, mm. */
const FARTHEST = 400;

const put = ({ angle }: LengthLine, x: number, y: number): Vec => inFrame({ x: 0, y: 0 }, angle, { x, y });

/** The dimension line with its heads, and the extension lines; all but the figure and what carries a figure outside the ends. */
export function linesOf(line: LengthLine): readonly PathMark[] {
  const { ends, height, angle, headsInside } = line;
  const [left, right] = [ends[0].x, ends[1].x];
  const out = headsInside ? 0 : HEAD + 1;
  const along = polar(headsInside ? angle : angle + Math.PI);
  return [
    pathMark('dimension', [stroke(put(line, left - out, height), put(line, right + out, height))]),
    ...ends.flatMap(({ x, y }) =>
      Math.abs(height - y) < 1e-6
        ? []
        : [pathMark('extension', [stroke(put(line, x, y), put(line, x, height + line.side * PAST))])],
    ),
    narrowHead('dimension', put(line, left, height), { x: -along.x, y: -along.y }, HEAD),
    narrowHead('dimension', put(line, right, height), along, HEAD),
  ];
}

/**
 * The figure where nothing else stands: over the line between its ends, from the middle outwards; otherwise past an end, on a
 * continuation of the line, as near as there is room within 400 mm; on paper too small for all that is said, over other things.
 */
export function figureMarks(line: LengthLine, drawing: Drawing): readonly (PathMark | TextMark)[] {
  const [left, right] = [line.ends[0].x, line.ends[1].x];
  for (const middle of line.figureInside ? inside(left, right, line.width) : []) {
    const text = figureAt(line, middle);
    if (isFree(drawing, text)) return [text];
  }
  const start = line.headsInside ? 0 : HEAD + 1;
  for (let away = 0; away < FARTHEST; away += 1.5) {
    for (const past of [1, -1]) {
      const edge = past === 1 ? right + start + away : left - start - away;
      const text = figureAt(line, edge + past * (1 + line.width / 2));
      if (!isFree(drawing, text)) continue;
      const carrier = [past === 1 ? right : left, edge + past * (2 + line.width)] as const;
      const [from, to] = carrier.map((x) => put(line, x, line.height)) as [Vec, Vec];
      if (!drawing.occupancy.isClearOfBoxes(from, to)) continue;
      return [pathMark('dimension', [stroke(from, to)]), text];
    }
  }
  // Where the paper is full all along the line the figure stands over what is there, rather than nowhere.
  return [figureAt(line, right + start + 1 + line.width / 2)];
}

/** Middles from the middle of the line towards its ends. */
function* inside(left: number, right: number, width: number): Generator<number> {
  const middle = (left + right) / 2;
  const most = (right - left - width) / 2 - 0.5;
  yield middle;
  for (let away = 1; away < most; away += 1) {
    yield middle + away;
    yield middle - away;
  }
}

function figureAt(line: LengthLine, x: number): TextMark {
  // Tails reach 0.3 of the height under the baseline.
  const at = put(line, x, line.height + 0.3 * FIGURE + AIR + OVER_HEADS);
  return textMark(line.figure, at, { angle: line.angle, align: 'middle', role: 'dimension', height: FIGURE });
}

function isFree(drawing: Drawing, text: TextMark): boolean {
  return drawing.occupancy.isFree(growBox(boxOfText(text), AIR));
}
