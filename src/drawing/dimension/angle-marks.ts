import { arc, type Edge, polar, transformPoint, type Vec } from '../../geometry/index.ts';
import type { Mark, PathMark } from '../api.ts';
import { type Drawing, pathMark, textMark } from '../layout/drawing.ts';
import { flattenEdge } from '../layout/flatten.ts';
import { boxOfText, growBox, type OrientedBox, segmentMeetsBox } from '../layout/oriented-box.ts';
import { DRAWN, narrowHead, step, stroke } from '../layout/strokes.ts';
import { widthOfText } from '../lettering/metrics.ts';
import type { Dimension, DimensionStyle } from './api.ts';
import { FIGURE, figureOf, measuredAngle } from './figure-of.ts';
import { HEAD } from './lanes.ts';
import { allRound, leadWords } from './leader-marks.ts';

/** Radii tried for the arc, mm: a wide angle is shown by a small one. */
const RADII = [9, 12, 15, 18, 22, 26, 30, 36, 42, 50, 60] as const;
/** From this radius on, mm, an arc is drawn even where its heads stand outside it. */
const NARROW_FROM = 18;
const AIR = 0.4;

/**
 * An angle: its two legs, an arc with heads between them, and the figure at its middle, past an end or, failing that, at the end of a leader.
 * Nothing when there is no room.
 */
export function angleMarks(
  dimension: Extract<Dimension, { kind: 'angle' }>,
  drawing: Drawing,
  style: DimensionStyle,
): readonly Mark[] | undefined {
  const at = transformPoint(dimension.at, style.toPaper);
  const start = dimension.from + style.toPaper.turn;
  const sweep = measuredAngle(dimension);
  const words = figureOf(dimension, style.lengths);
  const tried = RADII.filter((radius) => radius >= NARROW_FROM || radius * sweep >= 2 * HEAD + 2)
    .map((radius) => ({ radius, lines: arcLines(at, start, sweep, radius) }))
    .filter(({ lines }) => lines.every(({ edges }) => edges.every((edge) => isClear(edge, drawing))));
  for (const { radius, lines } of tried) {
    for (const centre of places(at, start, sweep, radius, widthOfText(words, FIGURE, 'regular'))) {
      const text = textMark(
        words,
        { x: centre.x, y: centre.y - FIGURE / 2 },
        { align: 'middle', role: 'dimension', height: FIGURE },
      );
      const room = growBox(boxOfText(text), AIR);
      if (!drawing.occupancy.isFree(room) || lines.some((mark) => meetsBox(mark, room))) continue;
      return [...lines, text];
    }
  }
  for (const { radius, lines } of tried) {
    const middle = step(at, polar(start + sweep / 2), radius);
    const keepsOff = (room: OrientedBox): boolean => !lines.some((mark) => meetsBox(mark, room));
    const led = leadWords(middle, words, allRound(), drawing, keepsOff);
    if (led !== undefined) return [...lines, ...led];
  }
  return undefined;
}

/** May the line be drawn without running through lettering? */
function isClear(edge: Edge, drawing: Drawing): boolean {
  const points = flattenEdge(edge, 0.2);
  return points.slice(1).every((p, i) => drawing.occupancy.isClearOfBoxes(points[i]!, p));
}

/** The angle's own lines are in the way of its figure as well. */
function meetsBox({ edges }: PathMark, box: OrientedBox): boolean {
  return edges.some((edge) => {
    const points = flattenEdge(edge, 0.1);
    return points.slice(1).some((p, i) => segmentMeetsBox(points[i]!, p, box));
  });
}

function arcLines(at: Vec, start: number, sweep: number, radius: number): readonly PathMark[] {
  const end = start + sweep;
  const isWide = sweep * radius >= 2 * HEAD + 2;
  const out = isWide ? 0 : (HEAD + 2.5) / radius;
  const on = (angle: number): Vec => step(at, polar(angle), radius);
  const bow = arc(on(start - out), on(end + out), at, 1, DRAWN);
  // A head follows the chord of the arc that it lies on.
  const lean = HEAD / (2 * radius);
  const heads = isWide
    ? [
        narrowHead('dimension', on(start), polar(start - Math.PI / 2 + lean), HEAD),
        narrowHead('dimension', on(end), polar(end + Math.PI / 2 - lean), HEAD),
      ]
    : [
        narrowHead('dimension', on(start), polar(start + Math.PI / 2 - lean), HEAD),
        narrowHead('dimension', on(end), polar(end - Math.PI / 2 + lean), HEAD),
      ];
  const legs = [start, end].map((angle) => stroke(at, step(at, polar(angle), radius + 2)));
  return [...legs.map((leg) => pathMark('extension', [leg])), pathMark('dimension', [bow]), ...heads];
}

/** Middles for the figure: outside the arc's middle, inside it, then past its ends. */
function* places(at: Vec, start: number, sweep: number, radius: number, width: number): Generator<Vec> {
  const reach = (angle: number): number =>
    (Math.abs(Math.cos(angle)) * width + Math.abs(Math.sin(angle)) * FIGURE * 1.5) / 2 + 1;
  const middle = start + sweep / 2;
  if (sweep * radius > width + 2) yield step(at, polar(middle), radius - reach(middle) - 0.3);
  yield step(at, polar(middle), radius + reach(middle) + 2);
  for (const extra of [HEAD + 3.5, HEAD + 6, HEAD + 9, HEAD + 13]) {
    for (const angle of [start + sweep + extra / radius, start - extra / radius]) {
      const across = angle > middle ? angle + Math.PI / 2 : angle - Math.PI / 2;
      yield step(step(at, polar(angle), radius), polar(across), reach(across));
    }
  }
}
