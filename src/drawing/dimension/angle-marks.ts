import { arc, polar, transformPoint, type Vec } from '../../geometry/index.ts';
import type { Mark, PathMark } from '../api.ts';
import { type Drawing, pathMark, textMark } from '../layout/drawing.ts';
import { flattenEdge } from '../layout/flatten.ts';
import { boxOfText, growBox, type OrientedBox, segmentMeetsBox } from '../layout/oriented-box.ts';
import { widthOfText } from '../lettering/metrics.ts';
import { DRAWN, narrowHead, step, stroke } from '../pattern/strokes.ts';
import type { Dimension, DimensionStyle } from './api.ts';
import { figureOf, measuredAngle } from './figure-of.ts';
import { HEAD } from './lanes.ts';

/** Radii tried for the arc, mm. */
const RADII = [18, 22, 26, 30, 36, 42, 50, 60] as const;
const AIR = 0.4;

/** An angle: its two legs, an arc with heads between them, and the figure at its middle or past an end. Nothing when there is no room. */
export function angleMarks(
  dimension: Extract<Dimension, { kind: 'angle' }>,
  drawing: Drawing,
  style: DimensionStyle,
): readonly Mark[] | undefined {
  const size = style.height ?? 2.5;
  const at = transformPoint(dimension.at, style.toPaper);
  const start = dimension.from + style.toPaper.turn;
  const sweep = measuredAngle(dimension);
  const words = figureOf(dimension, style.lengths);
  for (const radius of RADII) {
    const lines = arcLines(at, start, sweep, radius);
    const crossesText = lines.some(({ edges }) =>
      edges.some((edge) => {
        const points = flattenEdge(edge, 0.2);
        return points.slice(1).some((p, i) => !drawing.occupancy.isClearOfBoxes(points[i]!, p));
      }),
    );
    if (crossesText) continue;
    for (const centre of places(at, start, sweep, radius, widthOfText(words, size, 'regular'), size)) {
      const text = textMark(
        words,
        { x: centre.x, y: centre.y - size / 2 },
        { align: 'middle', role: 'dimension', height: size },
      );
      const room = growBox(boxOfText(text), AIR);
      if (!drawing.occupancy.isFree(room) || lines.some((mark) => meetsBox(mark, room))) continue;
      return [...lines, text];
    }
  }
  return undefined;
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
function* places(
  at: Vec,
  start: number,
  sweep: number,
  radius: number,
  width: number,
  size: number,
): Generator<Vec> {
  const reach = (angle: number): number =>
    (Math.abs(Math.cos(angle)) * width + Math.abs(Math.sin(angle)) * size * 1.5) / 2 + 1;
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
