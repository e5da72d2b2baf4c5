import { angleOf, distance, dot, polar, subtract, type Vec } from '../../geometry/index.ts';
import type { KeyDimension } from '../../sketch/index.ts';
import { type Drawing, fits } from '../layout/drawing.ts';
import { inFrame, toFrame } from '../layout/oriented-box.ts';
import { readable } from '../layout/strokes.ts';
import { type LaidLine, type LineFrame, layLine, marksOfLine, textChoices } from './length-line.ts';

type LengthDimension = Extract<KeyDimension, { kind: 'length' }>;

/** ISO 129-1 practice: first line 10 mm off the outline, the next 8 mm apart. */
const FIRST = 10;
const NEXT = 8;
const LANES = 6;
/** Dimensions that would stand farther off than this, mm, cost more paper than they are worth: they are listed instead. */
const LONGEST_EXTENSION = 62;

/** A height at which the dimension's line may lie. */
interface Level {
  readonly frame: LineFrame;
  /** What the line costs there at least: its extension lines. */
  readonly cost: number;
  /** Of equally cheap ones the first is taken. */
  readonly order: number;
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
  let best: LaidLine | undefined;
  let least = Infinity;
  let first = Infinity;
  for (const { frame, cost, order } of levelsOf(dimension, hull)) {
    if (cost > least) break;
    const crossing = cost + Math.min(linesCrossed(drawing, frame), 40) * 1.5;
    for (const [at, text] of textChoices(figure, dimension.label, frame.right - frame.left).entries()) {
      const total = crossing + at * 0.4;
      if (total > least || (total === least && order > first)) break;
      const laid = layLine(frame, text);
      if (!isClear(drawing, laid)) continue;
      [best, least, first] = [laid, total, order];
      break;
    }
  }
  if (best === undefined) return false;
  drawing.draw([...marksOfLine(best), ...best.texts]);
  return true;
}

function isClear(drawing: Drawing, { texts, line, extensions }: LaidLine): boolean {
  return (
    texts.every((text) => fits(drawing, text)) &&
    [line, ...extensions].every(([from, to]) => drawing.occupancy.isClearOfBoxes(from, to))
  );
}

/** All heights for the line, the cheapest first. */
function levelsOf({ from, to, along }: LengthDimension, hull: readonly Vec[]): readonly Level[] {
  const raw = along === undefined ? angleOf(subtract(to, from)) : along;
  const angle = readable(raw);
  const b = toFrame(from, angle, to);
  const left = Math.min(0, b.x);
  const right = Math.max(0, b.x);
  const [low, high] = [Math.min(0, b.y), Math.max(0, b.y)];
  const [bottom, top] = reachOf(hull, { from, angle, left: left - 4, right: right + 4 }, [low, high]);
  const heights = new Set<number>();
  for (let lane = 0; lane < LANES; lane++) {
    heights.add(top + FIRST + lane * NEXT).add(bottom - FIRST - lane * NEXT);
    heights.add(high + FIRST + lane * NEXT).add(low - FIRST - lane * NEXT);
  }
  if (Math.abs(b.y) < 1e-6) heights.add(0);
  return [...heights]
    .filter((height) => Math.max(Math.abs(height), Math.abs(height - b.y)) <= LONGEST_EXTENSION)
    .map((height, order) => {
      const reach = (Math.abs(height) + Math.abs(height - b.y)) / 2;
      // On the edge-to-edge line itself the ends touch the outline, which is as it should be.
      const cost = reach * 0.1 + (height === 0 ? 4 : 0);
      return { frame: { from, angle, left, right, height, second: b }, cost, order };
    })
    .sort((a, b) => a.cost - b.cost);
}

/** How far down and up the hull reaches between left and right of the line's frame, and at least as far as given. */
function reachOf(
  hull: readonly Vec[],
  { from, angle, left, right }: Pick<LineFrame, 'from' | 'angle' | 'left' | 'right'>,
  [low, high]: readonly [number, number],
): readonly [number, number] {
  const along = polar(angle);
  let [bottom, top] = [low, high];
  for (const p of hull) {
    const [dx, dy] = [p.x - from.x, p.y - from.y];
    const x = along.x * dx + along.y * dy;
    if (!(x > left && x < right)) continue;
    const y = -along.y * dx + along.x * dy;
    if (y > top) top = y;
    if (y < bottom) bottom = y;
  }
  return [bottom, top];
}

function linesCrossed(drawing: Drawing, { from, angle, left, right, height }: LineFrame): number {
  return drawing.occupancy.linesIn({
    centre: inFrame(from, angle, { x: (left + right) / 2, y: height }),
    halfWidth: Math.max(0.1, (right - left) / 2 - 1),
    halfHeight: 2.5,
    angle,
  });
}
