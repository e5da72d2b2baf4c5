import { vec } from '../../geometry/index.ts';
import { formatLength, type LengthStyle } from '../../measure/index.ts';
import type { ResawStack } from '../../wood/index.ts';
import type { Mark, Scene } from '../api.ts';
import { pathMark, textMark } from '../layout/drawing.ts';
import { narrowHead, polygon, strokes } from '../layout/strokes.ts';
import { widthOfText } from '../lettering/metrics.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';
import { hatchBand } from './hatch.ts';
import { type Band, boardBands, labelOf, namedOnce, pieceBands } from './resaw-bands.ts';
import { spreadDown } from './spread.ts';

/** Widths of the two stacks on paper; of what stands between them the labels' leaders and the figure of the second, mm. */
const WIDE = 44;
const LEADER = 9;
const FIGURE = 14;
/** The taller stack is drawn as large as this, mm, lets it be. */
const MOST_HIGH = 120;
const LETTERS = 2.5;
const ROOM = 4.6;

/** Scales of ISO 5455, largest first. */
const SCALES = [
  [5, '5:1'],
  [2, '2:1'],
  [1, '1:1'],
  [0.5, '1:2'],
] as const;

export interface ResawDrawing {
  readonly scene: Scene;
  /** As lettered: `2:1`. */
  readonly scale: string;
}

/**
 * A rough board seen on its end, and the piece that is glued of its leaves, both to scale with every loss named: flattening and planing hatched,
 * kerfs black, what drying takes washed, where the saw may drift dashed. A triangle over the board's end keeps the order of its leaves.
 */
export function resawDrawing(stack: ResawStack, lengths: LengthStyle): ResawDrawing {
  const board = boardBands(stack);
  const piece = pieceBands(stack);
  const high = Math.max(stack.plan.rough, piece.at(-1)!.to);
  const [scale, name] = SCALES.find(([each]) => each * high <= MOST_HIGH) ?? SCALES.at(-1)!;
  const fine = finer(lengths);
  const labels = namedOnce(board).map((each) => widthOfText(labelOf(each, fine), LETTERS, 'regular'));
  const apart = LEADER + Math.max(...labels) + FIGURE;
  const left = stackMarks(board, { x: 0, scale, lengths: fine, title: 'Rough board, on its end' });
  const right = stackMarks(piece, { x: WIDE + apart, scale, lengths: fine, title: 'Glued piece' });
  const marks = [
    ...left,
    ...triangle(stack.plan.rough * scale),
    ...drifts(stack, scale),
    ...height(stack.plan.rough, -7, scale, lengths),
    ...right,
    ...finishedHeight(stack, WIDE + apart - 5, scale, fine),
  ];
  return { scene: { marks, box: boundsOfMarks(marks) }, scale: name };
}

interface StackStyle {
  readonly x: number;
  readonly scale: number;
  readonly lengths: LengthStyle;
  readonly title: string;
}

function stackMarks(bands: readonly Band[], { x, scale, lengths, title }: StackStyle): readonly Mark[] {
  const y = (mm: number): number => -mm * scale;
  const bottom = bands.at(-1)!.to;
  const boxes = bands.flatMap((band): readonly Mark[] => bandMarks(band, x, scale));
  const named = namedOnce(bands);
  const heights = spreadDown(
    named.map(({ band }) => y((band.from + band.to) / 2)),
    ROOM,
  );
  const labels = named.flatMap((each, at): readonly Mark[] => {
    const { band } = each;
    const middle = y((band.from + band.to) / 2);
    const there = heights[at]!;
    return [
      pathMark(
        'thin',
        strokes([
          vec(x + WIDE, middle),
          vec(x + WIDE + 3, middle),
          vec(x + WIDE + 7, there),
          vec(x + WIDE + 8, there),
        ]),
      ),
      textMark(labelOf(each, lengths), vec(x + WIDE + LEADER, there - LETTERS / 2), {
        height: LETTERS,
        role: 'dimension',
      }),
    ];
  });
  return [
    ...boxes,
    pathMark(
      'part',
      polygon([vec(x, 0), vec(x + WIDE, 0), vec(x + WIDE, y(bottom)), vec(x, y(bottom))]),
      true,
    ),
    textMark(title, vec(x, 5), { height: LETTERS, weight: 'semibold', role: 'dimension' }),
    ...labels,
  ];
}

/** Slope of hatching by what it means: losses to the plane one way, to flattening the other. */
function bandMarks({ from, to, kind }: Band, x: number, scale: number): readonly Mark[] {
  const [top, bottom] = [-from * scale, -to * scale];
  const band = { x, width: WIDE, top, bottom };
  const box = polygon([vec(x, top), vec(x + WIDE, top), vec(x + WIDE, bottom), vec(x, bottom)]);
  const border = pathMark('thin', box, true);
  switch (kind) {
    case 'leaf':
    case 'backing':
      return [border];
    case 'kerf':
      return [{ ...pathMark('part', box, true), fill: 'solid' }];
    case 'drying':
      return [border, { ...pathMark('part', box, true), fill: 'tint' }];
    case 'planing':
    case 'last':
      return [border, ...hatchBand(band, 1)];
    case 'flattening':
      return [border, ...hatchBand(band, -1)];
    default:
      return kind satisfies never;
  }
}

/** The carpenter's triangle over the end: once the board is open, its leaves go together in one way only. */
function triangle(high: number): readonly Mark[] {
  return [
    pathMark(
      'reference',
      polygon([
        vec(WIDE * 0.5, -high * 0.06),
        vec(WIDE * 0.18, -high * 0.94),
        vec(WIDE * 0.82, -high * 0.94),
      ]),
      true,
    ),
  ];
}

/** Where the saw may go at worst, to either side of each kerf. */
function drifts({ layers, plan }: ResawStack, scale: number): readonly Mark[] {
  if (plan.drift === 0) return [];
  return layers
    .filter(({ kind }) => kind === 'kerf')
    .flatMap(({ from, to }) =>
      [from - plan.drift, to + plan.drift].map((at) =>
        pathMark('hidden', strokes([vec(-3, -at * scale), vec(WIDE + 2, -at * scale)])),
      ),
    );
}

function height(mm: number, x: number, scale: number, lengths: LengthStyle): readonly Mark[] {
  const low = vec(x, -mm * scale);
  const high = vec(x, 0);
  return [
    pathMark('dimension', strokes([low, high])),
    narrowHead('dimension', high, vec(0, 1)),
    narrowHead('dimension', low, vec(0, -1)),
    pathMark('extension', strokes([vec(x - 1.5, 0), vec(-1, 0)])),
    pathMark('extension', strokes([vec(x - 1.5, low.y), vec(-1, low.y)])),
    textMark(formatLength(mm, lengths), vec(x - 1.2, low.y / 2), {
      height: LETTERS,
      angle: Math.PI / 2,
      align: 'middle',
      role: 'dimension',
    }),
  ];
}

/** What the piece comes to once it is planed, beside what it must come to. */
function finishedHeight(
  { plan, reaches }: ResawStack,
  x: number,
  scale: number,
  lengths: LengthStyle,
): readonly Mark[] {
  const [top, bottom] = [-plan.lastPlaning.show * scale, -(plan.lastPlaning.show + reaches) * scale];
  return [
    pathMark('dimension', strokes([vec(x, bottom), vec(x, top)])),
    narrowHead('dimension', vec(x, top), vec(0, 1)),
    narrowHead('dimension', vec(x, bottom), vec(0, -1)),
    textMark(formatLength(reaches, lengths), vec(x - 1.2, (top + bottom) / 2), {
      height: LETTERS,
      angle: Math.PI / 2,
      align: 'middle',
      role: 'dimension',
    }),
  ];
}

const finer = (lengths: LengthStyle): LengthStyle =>
  lengths.unit === 'mm'
    ? { ...lengths, decimals: Math.max(1, lengths.decimals) }
    : { ...lengths, denominator: 64 };
