import { angleOf, polar, subtract, transformPoint, type Vec } from '../../geometry/index.ts';
import type { Mark } from '../api.ts';
import { type Drawing, pathMark, textMark } from '../layout/drawing.ts';
import { boxOfText, growBox, type OrientedBox } from '../layout/oriented-box.ts';
import { narrowHead, step, stroke } from '../layout/strokes.ts';
import type { Dimension, DimensionStyle } from './api.ts';
import { FIGURE, figureOf } from './figure-of.ts';
import { HEAD } from './lanes.ts';

const LENGTHS = [7, 10, 14, 19, 25, 33, 44, 58, 75, 100] as const;
const AROUND = 24;
const AIR = 0.4;

/**
 * A radius or a note at the end of a thin line that points at its place: as near as there is room, a radius along the line through its
 * centre as long as that goes. Nothing when there is no room within 100 mm.
 */
export function leaderMarks(
  dimension: Extract<Dimension, { kind: 'radius' | 'note' }>,
  drawing: Drawing,
  style: DimensionStyle,
): readonly Mark[] | undefined {
  const at = transformPoint(dimension.at, style.toPaper);
  const words = figureOf(dimension, style.lengths);
  return leadWords(at, words, ways(dimension, style), drawing);
}

export interface LeaderWay {
  /** mm. */
  readonly length: number;
  readonly direction: number;
}

/** What crossing a line costs a leader, mm of its length. */
const CROSSING = 8;

/**
 * Words at the end of a line that points at a place, short and across as few lines as there is room for; `isFree`: what else the words are
 * to keep off.
 */
export function leadWords(
  at: Vec,
  words: string,
  among: Iterable<LeaderWay>,
  drawing: Drawing,
  isFree: (room: OrientedBox) => boolean = () => true,
): readonly Mark[] | undefined {
  let best: readonly Mark[] | undefined;
  let least = Infinity;
  for (const { length, direction } of among) {
    if (length >= least) continue;
    const away = polar(direction);
    const elbow = step(at, away, length);
    const right = away.x >= 0 ? 1 : -1;
    const shelf = { x: elbow.x + right * 2, y: elbow.y };
    const text = textMark(
      words,
      { x: shelf.x + right * 0.8, y: shelf.y - FIGURE / 2 },
      { height: FIGURE, align: right === 1 ? 'left' : 'right', role: 'dimension' },
    );
    const room = growBox(boxOfText(text), AIR);
    const isClear =
      drawing.occupancy.isFree(room) &&
      isFree(room) &&
      drawing.occupancy.isClearOfBoxes(at, elbow) &&
      drawing.occupancy.isClearOfBoxes(elbow, shelf);
    const cost = length + CROSSING * (isClear ? crossed(at, direction, length, drawing) : 0);
    if (!isClear || cost >= least) continue;
    least = cost;
    best = [
      pathMark('dimension', [stroke(at, elbow), stroke(elbow, shelf)]),
      narrowHead('dimension', at, { x: -away.x, y: -away.y }, HEAD),
      text,
    ];
  }
  return best;
}

/** How many lines a leader crosses once it has left its place. */
function crossed(at: Vec, direction: number, length: number, drawing: Drawing): number {
  const start = 0.5;
  return drawing.occupancy.linesIn({
    centre: step(at, polar(direction), (start + length) / 2),
    halfWidth: (length - start) / 2,
    halfHeight: 0.01,
    angle: direction,
  });
}

/** Ways to lead words away from a place, the shortest first. */
export function* allRound(): Generator<LeaderWay> {
  for (const length of LENGTHS) {
    for (let i = 0; i < AROUND; i++) yield { length, direction: ((i + 0.5) * 2 * Math.PI) / AROUND };
  }
}

function* ways(
  dimension: Extract<Dimension, { kind: 'radius' | 'note' }>,
  { toPaper }: DimensionStyle,
): Generator<LeaderWay> {
  const ray: readonly Vec[] = dimension.kind === 'radius' ? [subtract(dimension.at, dimension.centre)] : [];
  const straight = ray
    .map(angleOf)
    .flatMap((angle) => [angle + toPaper.turn, angle + toPaper.turn + Math.PI]);
  for (const length of LENGTHS.slice(0, 7)) for (const direction of straight) yield { length, direction };
  yield* allRound();
}
