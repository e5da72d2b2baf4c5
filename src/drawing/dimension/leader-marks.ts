import { angleOf, polar, subtract, transformPoint, type Vec } from '../../geometry/index.ts';
import type { Mark } from '../api.ts';
import { type Drawing, pathMark, textMark } from '../layout/drawing.ts';
import { boxOfText, growBox } from '../layout/oriented-box.ts';
import { narrowHead, step, stroke } from '../pattern/strokes.ts';
import type { Dimension, DimensionStyle } from './api.ts';
import { figureOf } from './figure-of.ts';
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
  const size = style.height ?? 2.5;
  const at = transformPoint(dimension.at, style.toPaper);
  const words = figureOf(dimension, style.lengths);
  for (const { length, direction } of ways(dimension, style)) {
    const away = polar(direction);
    const elbow = step(at, away, length);
    const right = away.x >= 0 ? 1 : -1;
    const shelf = { x: elbow.x + right * 2, y: elbow.y };
    const text = textMark(
      words,
      { x: shelf.x + right * 0.8, y: shelf.y - size / 2 },
      { height: size, align: right === 1 ? 'left' : 'right', role: 'dimension' },
    );
    const isClear =
      drawing.occupancy.isFree(growBox(boxOfText(text), AIR)) &&
      drawing.occupancy.isClearOfBoxes(at, elbow) &&
      drawing.occupancy.isClearOfBoxes(elbow, shelf);
    if (!isClear) continue;
    return [
      pathMark('dimension', [stroke(at, elbow), stroke(elbow, shelf)]),
      narrowHead('dimension', at, { x: -away.x, y: -away.y }, HEAD),
      text,
    ];
  }
  return undefined;
}

function* ways(
  dimension: Extract<Dimension, { kind: 'radius' | 'note' }>,
  { toPaper }: DimensionStyle,
): Generator<{ readonly length: number; readonly direction: number }> {
  const around = Array.from({ length: AROUND }, (_, i) => ((i + 0.5) * 2 * Math.PI) / AROUND);
  const ray: readonly Vec[] = dimension.kind === 'radius' ? [subtract(dimension.at, dimension.centre)] : [];
  const straight = ray
    .map(angleOf)
    .flatMap((angle) => [angle + toPaper.turn, angle + toPaper.turn + Math.PI]);
  for (const length of LENGTHS.slice(0, 7)) for (const direction of straight) yield { length, direction };
  for (const length of LENGTHS) for (const direction of around) yield { length, direction };
}
