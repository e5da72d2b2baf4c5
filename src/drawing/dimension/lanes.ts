import { angleOf, polar, subtract, transformPoint, type Vec } from '../../geometry/index.ts';
import { toFrame } from '../layout/oriented-box.ts';
import { readable } from '../layout/strokes.ts';
import { widthOfText } from '../lettering/metrics.ts';
import type { Dimension, DimensionStyle } from './api.ts';
import { FIGURE, figureOf } from './figure-of.ts';

type LengthDimension = Extract<Dimension, { kind: 'length' }>;

/** ISO 129-1 practice: the first line 10 mm off the outline, the next ones 8 mm apart. */
const FIRST = 10;
const NEXT = 8;
/** Length of an arrowhead, mm, and the least of line that stays between two. */
export const HEAD = 2.5;
const BETWEEN = 2;

/** Where a length's line stands. Coordinates are along (x) and square to (y) the line, about the origin of the paper. */
export interface LengthLine {
  readonly dimension: LengthDimension;
  readonly figure: string;
  readonly width: number;
  /** Direction of the line, in which its figure reads, rad. */
  readonly angle: number;
  readonly side: 1 | -1;
  /** Its two points, from the left. */
  readonly ends: readonly [Vec, Vec];
  /** Is there room for the figure, and for the heads, between the ends? */
  readonly figureInside: boolean;
  readonly headsInside: boolean;
  readonly height: number;
}

/**
 * The lines of all lengths, each in a lane beside the picture: the shorter nearer to it, those that only touch in one lane, so that no
 * dimension line is crossed by the extension lines of another that stands farther out. `hull`: points round the picture on paper.
 */
export function layLanes(
  dimensions: readonly LengthDimension[],
  hull: readonly Vec[],
  style: DimensionStyle,
): readonly LengthLine[] {
  const bare = dimensions
    .map((dimension) => bareLine(dimension, hull, style))
    .filter((line) => spanOf(line) > 0);
  const groups = new Map<string, typeof bare>();
  for (const line of bare) {
    const key = `${Math.round(line.angle * 1e6)} ${line.side}`;
    groups.set(key, [...(groups.get(key) ?? []), line]);
  }
  return [...groups.values()].flatMap((group) => layGroup(group, hull));
}

type BareLine = Omit<LengthLine, 'height'>;

const spanOf = ({ ends }: BareLine): number => ends[1].x - ends[0].x;

function bareLine(dimension: LengthDimension, hull: readonly Vec[], style: DimensionStyle): BareLine {
  const { toPaper, lengths } = style;
  const [from, to] = [dimension.from, dimension.to].map((p) => transformPoint(p, toPaper)) as [Vec, Vec];
  const direction =
    dimension.along === undefined ? angleOf(subtract(to, from)) : dimension.along + toPaper.turn;
  const angle = readable(direction);
  const ends = [from, to].map((p) => toFrame(ORIGIN, angle, p)).sort((a, b) => a.x - b.x) as [Vec, Vec];
  const figure = figureOf(dimension, lengths);
  const width = widthOfText(figure, FIGURE, 'regular');
  const span = ends[1].x - ends[0].x;
  const side = dimension.side === undefined ? roomier(ends, hull, angle) : sideOf(dimension.side, angle);
  const headsInside = span >= 2 * HEAD + BETWEEN;
  return {
    dimension,
    figure,
    width,
    angle,
    side,
    ends,
    headsInside,
    figureInside: headsInside && width + 2 <= span,
  };
}

const ORIGIN: Vec = { x: 0, y: 0 };

function sideOf(side: NonNullable<LengthDimension['side']>, angle: number): 1 | -1 {
  const up = polar(angle + Math.PI / 2);
  const towards = { left: -up.x, right: up.x, above: up.y, below: -up.y }[side];
  return towards >= 0 ? 1 : -1;
}

/** The side on which the picture reaches less far beyond the points. */
function roomier(ends: readonly [Vec, Vec], hull: readonly Vec[], angle: number): 1 | -1 {
  const heights = beside(hull, angle, ends).map(({ y }) => y);
  const top = heights.reduce((a, y) => Math.max(a, y), -Infinity) - Math.max(ends[0].y, ends[1].y);
  const bottom = Math.min(ends[0].y, ends[1].y) - heights.reduce((a, y) => Math.min(a, y), Infinity);
  return top <= bottom ? 1 : -1;
}

function beside(hull: readonly Vec[], angle: number, ends: readonly [Vec, Vec]): readonly Vec[] {
  return hull.map((p) => toFrame(ORIGIN, angle, p)).filter(({ x }) => x > ends[0].x - 4 && x < ends[1].x + 4);
}

function layGroup(group: readonly BareLine[], hull: readonly Vec[]): readonly LengthLine[] {
  const [{ angle, side }] = group as readonly [BareLine];
  const isUpright = Math.abs(Math.sin(2 * angle)) < 1e-9;
  const reach = (points: readonly Vec[]): number =>
    points.reduce((most, { y }) => Math.max(most, side * y), -Infinity);
  // Beside an upright picture all lanes are counted from its box; a slanted line stands off what it passes only.
  const whole = isUpright ? reach(hull.map((p) => toFrame(ORIGIN, angle, p))) : -Infinity;
  const laid: (LengthLine & { readonly lane: number })[] = [];
  for (const line of group.toSorted((a, b) => spanOf(a) - spanOf(b))) {
    if (laid.some((other) => isSame(line, other))) continue;
    const lanes = laid.filter((other) => shares(line, other)).map(({ lane }) => lane + 1);
    const lane = Math.max(0, ...lanes);
    const own = Math.max(
      whole,
      reach(line.ends),
      isUpright ? -Infinity : reach(beside(hull, angle, line.ends)),
    );
    laid.push({ ...line, lane, height: side * (own + FIRST + lane * NEXT) });
  }
  return laid;
}

/** The same two places are never dimensioned twice on one side. */
function isSame(a: BareLine, b: BareLine): boolean {
  return Math.abs(a.ends[0].x - b.ends[0].x) < 1e-6 && Math.abs(a.ends[1].x - b.ends[1].x) < 1e-6;
}

/** Do two lines need lanes of their own? What stands outside the ends counts. */
function shares(a: BareLine, b: BareLine): boolean {
  const [p, q] = [rangeOf(a), rangeOf(b)];
  return p[0] < q[1] - 1e-6 && q[0] < p[1] - 1e-6;
}

function rangeOf({ ends, figureInside, headsInside, width }: BareLine): readonly [number, number] {
  const [left, right] = [ends[0].x, ends[1].x];
  if (figureInside) return [left, right];
  return [left - (headsInside ? 0 : HEAD + 1), right + (headsInside ? 0 : HEAD) + width + 2];
}
