import { polar, type Vec } from '../../geometry/index.ts';
import type { Mark, TextMark } from '../api.ts';
import { pathMark, textMark } from '../layout/drawing.ts';
import { inFrame } from '../layout/oriented-box.ts';
import { narrowHead, stroke } from '../layout/strokes.ts';
import { widthOfText } from '../lettering/metrics.ts';

/** ISO 129-1 practice: extension lines 1.5 mm past the line. */
const PAST = 1.5;
const HEAD = 3;
const FIGURE = 3.5;
const LABEL = 2.5;

export interface TextChoice {
  /** Share along the line of the figure's middle; beyond 1 it stands past the right end, below 0 past the left. */
  readonly share: number;
  readonly above: string;
  readonly below?: string;
}

/** Where the figure and the label of a line so long (mm) may stand, the best first. */
export function textChoices(figure: string, label: string, length: number): readonly TextChoice[] {
  const wide = Math.max(widthOfText(figure, FIGURE, 'regular'), widthOfText(label, LABEL, 'regular'));
  const narrow = widthOfText(figure, FIGURE, 'regular');
  const both = [0.5, 0.36, 0.64, 0.22, 0.78].map((share) => ({ share, above: figure, below: label }));
  const alone = [0.5, 0.3, 0.7].map((share) => ({ share, above: figure }));
  const past = [2, -1].map((share) => ({ share, above: figure, below: label }));
  const pastAlone = [2, -1].map((share) => ({ share, above: figure }));
  if (wide + 2 * HEAD + 3 < length) return [...both, ...alone, ...past, ...pastAlone];
  if (narrow + 2 * HEAD + 2 < length)
    return [{ share: 0.5, above: figure, below: label }, ...past, ...alone, ...pastAlone];
  return [...past, ...pastAlone];
}

/** A dimension line: its frame (x along the line, from the dimension's first point), its ends and height there, and the second point. */
export interface LineFrame {
  readonly from: Vec;
  readonly angle: number;
  readonly left: number;
  readonly right: number;
  readonly height: number;
  readonly second: Vec;
}

/** A line with its lettering, laid out to be tried: what of it must find room. */
export interface LaidLine {
  readonly frame: LineFrame;
  readonly isPast: boolean;
  readonly line: readonly [Vec, Vec];
  readonly extensions: readonly (readonly [Vec, Vec])[];
  readonly texts: readonly TextMark[];
}

export function layLine(frame: LineFrame, text: TextChoice): LaidLine {
  const { from, angle, left, right, height, second } = frame;
  const put = (x: number, y: number): Vec => inFrame(from, angle, { x, y });
  const isPast = text.share > 1 || text.share < 0;
  const labelWidth = text.below === undefined ? 0 : widthOfText(text.below, LABEL, 'regular');
  const shelf = Math.max(widthOfText(text.above, FIGURE, 'regular'), labelWidth);
  const gap = HEAD + 2;
  const start = isPast && text.share < 0 ? left - gap - shelf : isPast ? left - gap : left;
  const end = isPast && text.share > 1 ? right + gap + shelf : isPast ? right + gap : right;
  const middle = !isPast
    ? left + text.share * (right - left)
    : text.share > 1
      ? right + gap + shelf / 2
      : left - gap - shelf / 2;
  const extensions: (readonly [Vec, Vec])[] = [];
  for (const [x, y] of [
    [0, 0],
    [second.x, second.y],
  ] as const) {
    if (Math.abs(height - y) < 1e-6) continue;
    extensions.push([put(x, y), put(x, height + Math.sign(height - y) * PAST)]);
  }
  const how = { angle, align: 'middle', role: 'dimension' } as const;
  const texts = [textMark(text.above, put(middle, height + 1), { ...how, height: FIGURE })];
  if (text.below !== undefined) {
    texts.push(textMark(text.below, put(middle, height - 1.2 - LABEL), { ...how, height: LABEL }));
  }
  return { frame, isPast, line: [put(start, height), put(end, height)], extensions, texts };
}

/** The line, its extension lines and its heads. */
export function marksOfLine({ frame, isPast, line, extensions }: LaidLine): readonly Mark[] {
  const { from, angle, left, right, height } = frame;
  const direction = polar(angle);
  const outward = isPast ? -1 : 1;
  const head = (x: number, way: number): Mark =>
    narrowHead(
      'dimension',
      inFrame(from, angle, { x, y: height }),
      { x: direction.x * way, y: direction.y * way },
      HEAD,
    );
  return [
    pathMark('dimension', [stroke(...line)]),
    ...extensions.map((extension) => pathMark('extension', [stroke(...extension)])),
    head(left, -outward),
    head(right, outward),
  ];
}
