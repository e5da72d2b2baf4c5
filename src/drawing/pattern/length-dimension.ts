import { angleOf, distance, dot, polar, subtract, type Vec } from '../../geometry/index.ts';
import type { KeyDimension } from '../../sketch/index.ts';
import type { Mark, TextMark } from '../api.ts';
import { type Drawing, fits, pathMark, textMark } from '../layout/drawing.ts';
import { inFrame, toFrame } from '../layout/oriented-box.ts';
import { narrowHead, readable, stroke } from '../layout/strokes.ts';
import { widthOfText } from '../lettering/metrics.ts';

type LengthDimension = Extract<KeyDimension, { kind: 'length' }>;

/** ISO 129-1 practice: first line 10 mm off the outline, the next 8 mm apart; extension lines 1.5 mm past the line. */
const FIRST = 10;
const NEXT = 8;
const LANES = 6;
const PAST = 1.5;
/** Dimensions that would stand farther off than this, mm, cost more paper than they are worth: they are listed instead. */
const LONGEST_EXTENSION = 62;
const HEAD = 3;
const FIGURE = 3.5;
const LABEL = 2.5;

/** A dimension drawn in one way; `lines` must stay clear of lettering. */
interface Drawn {
  readonly marks: readonly Mark[];
  readonly texts: readonly TextMark[];
  readonly lines: readonly (readonly [Vec, Vec])[];
}

interface Candidate {
  readonly cost: number;
  readonly draw: () => Drawn;
}

/** What a length dimension measures, from its two points: mm. The figure on paper is this, whatever the form says. */
export function measuredLength(dimension: LengthDimension): number {
  const { from, to, along } = dimension;
  return along === undefined ? distance(from, to) : Math.abs(dot(subtract(to, from), polar(along)));
}

/**
 * Draws a length beside the outline (`hull`: points all round it) or across the part, wherever it costs least: short
 * extension lines, no line through lettering, the figure above the line and the label below. False when there is no room.
 */
export function drawLengthDimension(
  drawing: Drawing,
  dimension: LengthDimension,
  figure: string,
  hull: readonly Vec[],
): boolean {
  if (measuredLength(dimension) === 0) return false;
  let best: Drawn | undefined;
  let least = Infinity;
  for (const candidate of candidatesFor(drawing, dimension, figure, hull)) {
    if (candidate.cost >= least) continue;
    const drawn = candidate.draw();
    const isClear =
      drawn.texts.every((text) => fits(drawing, text)) &&
      drawn.lines.every(([from, to]) => drawing.occupancy.isClearOfBoxes(from, to));
    if (isClear) [best, least] = [drawn, candidate.cost];
  }
  if (best === undefined) return false;
  drawing.draw([...best.marks, ...best.texts]);
  return true;
}

function* candidatesFor(
  drawing: Drawing,
  dimension: LengthDimension,
  figure: string,
  hull: readonly Vec[],
): Generator<Candidate> {
  const { from, to, along } = dimension;
  const raw = along === undefined ? angleOf(subtract(to, from)) : along;
  const angle = readable(raw);
  // In the dimension's own frame: first point at the origin, x along the line, y above it.
  const b = toFrame(from, angle, to);
  const left = Math.min(0, b.x);
  const right = Math.max(0, b.x);
  const local = hull
    .map((p) => toFrame(from, angle, p))
    .filter((p) => p.x > left - 4 && p.x < right + 4)
    .map((p) => p.y);
  const top = local.reduce((a, y) => Math.max(a, y), Math.max(0, b.y));
  const bottom = local.reduce((a, y) => Math.min(a, y), Math.min(0, b.y));
  const heights = new Set<number>();
  for (let lane = 0; lane < LANES; lane++) {
    heights.add(top + FIRST + lane * NEXT).add(bottom - FIRST - lane * NEXT);
    heights.add(Math.max(0, b.y) + FIRST + lane * NEXT).add(Math.min(0, b.y) - FIRST - lane * NEXT);
  }
  if (Math.abs(b.y) < 1e-6) heights.add(0);
  for (const height of heights) {
    if (Math.max(Math.abs(height), Math.abs(height - b.y)) > LONGEST_EXTENSION) continue;
    const reach = (Math.abs(height) + Math.abs(height - b.y)) / 2;
    const line = { from, angle, left, right, height, second: b };
    const crossed = drawing.occupancy.linesIn({
      centre: inFrame(from, angle, { x: (left + right) / 2, y: height }),
      halfWidth: Math.max(0.1, (right - left) / 2 - 1),
      halfHeight: 2.5,
      angle,
    });
    // On the edge-to-edge line itself the ends touch the outline, which is as it should be.
    const cost = reach * 0.1 + (height === 0 ? 4 : 0) + Math.min(crossed, 40) * 1.5;
    for (const [at, text] of textChoices(figure, dimension.label, right - left).entries()) {
      yield { cost: cost + at * 0.4, draw: () => drawLine(line, text) };
    }
  }
}

interface TextChoice {
  /** Share along the line of the figure's middle; beyond 1 it stands past the right end, below 0 past the left. */
  readonly share: number;
  readonly above: string;
  readonly below?: string;
}

function textChoices(figure: string, label: string, length: number): readonly TextChoice[] {
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

interface LineFrame {
  readonly from: Vec;
  readonly angle: number;
  readonly left: number;
  readonly right: number;
  readonly height: number;
  readonly second: Vec;
}

function drawLine(frame: LineFrame, text: TextChoice): Drawn {
  const { from, angle, left, right, height, second } = frame;
  const put = (x: number, y: number): Vec => inFrame(from, angle, { x, y });
  const direction = polar(angle);
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
  const outward = isPast ? -1 : 1;
  const heads = [
    narrowHead(
      'dimension',
      put(left, height),
      { x: -direction.x * outward, y: -direction.y * outward },
      HEAD,
    ),
    narrowHead('dimension', put(right, height), { x: direction.x * outward, y: direction.y * outward }, HEAD),
  ];
  const extensions: (readonly [Vec, Vec])[] = [];
  for (const [x, y] of [
    [0, 0],
    [second.x, second.y],
  ] as const) {
    if (Math.abs(height - y) < 1e-6) continue;
    extensions.push([put(x, y), put(x, height + Math.sign(height - y) * PAST)]);
  }
  const line: readonly [Vec, Vec] = [put(start, height), put(end, height)];
  const how = { angle, align: 'middle', role: 'dimension' } as const;
  const texts = [textMark(text.above, put(middle, height + 1), { ...how, height: FIGURE })];
  if (text.below !== undefined) {
    texts.push(textMark(text.below, put(middle, height - 1.2 - LABEL), { ...how, height: LABEL }));
  }
  return {
    marks: [
      pathMark('dimension', [stroke(...line)]),
      ...extensions.map((extension) => pathMark('extension', [stroke(...extension)])),
      ...heads,
    ],
    texts,
    lines: [line, ...extensions],
  };
}
