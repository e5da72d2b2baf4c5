import {
  add,
  angleOf,
  distance,
  dot,
  leftOf,
  scale,
  subtract,
  unit,
  type Vec,
} from '../../geometry/index.ts';
import { MM_PER } from '../../measure/index.ts';
import type { PatternOptions, TextMark } from '../api.ts';
import { type Drawing, letter, pathMark, textMark } from '../layout/drawing.ts';
import { edgesOf } from '../layout/edges-of.ts';
import { writeFine, writeLength } from '../layout/figures.ts';
import { flattenEdge } from '../layout/flatten.ts';
import { readable, step, stroke } from '../layout/strokes.ts';
import { crossingsOf } from './crossings.ts';
import { sharpCorners } from './sharp-corners.ts';
import type { PatternSource } from './source.ts';

/** The centre line with its ends run on past the outline, and the span of the outline along and across it; mm. */
export interface CentreFrame {
  readonly from: Vec;
  readonly to: Vec;
  readonly direction: Vec;
  readonly least: number;
  readonly most: number;
  readonly leastAcross: number;
  readonly mostAcross: number;
}

/** Half the tick across the centre line, and how far a tick reaches either side of the outline; mm. */
const HALF_TICK = 3;
const REACH = 2.5;
/** Ticks stand only where they cross the outline at more than about 25°: else they would mark no place. */
const LEAST_SQUARENESS = 0.42;
const RUN_ON = 6;
/** Ticks on one part at most: 40 m of it. */
const MOST_STATIONS = 400;
/** So near a corner, mm, a tick would stand in the way of the corner's own marks and dimensions. */
const CORNER_ROOM = 7;

/** Distance between ticks, mm: 100 mm, or 4 in for who works in inches. */
export function stationPitch(style: PatternOptions['lengths']): number {
  return style.unit === 'mm' ? 100 : 4 * MM_PER.in;
}

export function centreFrame(source: PatternSource): CentreFrame | undefined {
  const { centreLine } = source.part;
  if (distance(centreLine.from, centreLine.to) === 0) return undefined;
  const direction = unit(subtract(centreLine.to, centreLine.from));
  const points = edgesOf(source.main)
    .flatMap((edge) => flattenEdge(edge, 0.5))
    .map((p) => subtract(p, centreLine.from));
  if (points.length === 0) return undefined;
  const along = points.map((p) => dot(p, direction));
  const across = points.map((p) => dot(p, leftOf(direction)));
  const least = along.reduce((a, b) => Math.min(a, b));
  const most = along.reduce((a, b) => Math.max(a, b));
  return {
    from: step(centreLine.from, direction, least - RUN_ON),
    to: step(centreLine.from, direction, most + RUN_ON),
    direction,
    least,
    most,
    leastAcross: across.reduce((a, b) => Math.min(a, b)),
    mostAcross: across.reduce((a, b) => Math.max(a, b)),
  };
}

/**
 * Ticks square to the centre line, one every 100 mm (4 in) from its start, wherever the outline crosses them; beside each,
 * outside the outline, its distance from the centre line. Paper that has stretched is set right from the centre line by
 * them, and the outline can be laid out by hand from them.
 */
export function drawStations(drawing: Drawing, source: PatternSource, frame: CentreFrame): void {
  const { part, options } = source;
  const pitch = stationPitch(options.lengths);
  const start = part.centreLine.from;
  const edges = edgesOf(source.main);
  const across = leftOf(frame.direction);
  const outside = REACH + Math.max(0, source.routing.tooling.sawAllowance);
  const corners = sharpCorners(source.main);
  const first = Math.ceil((frame.least + 1) / pitch);
  const last = Math.min(Math.floor((frame.most - 1) / pitch), first + MOST_STATIONS);
  for (let number = first; number <= last; number++) {
    const at = step(start, frame.direction, number * pitch);
    drawing.draw([
      pathMark('station', [stroke(add(at, scale(across, -HALF_TICK)), add(at, scale(across, HALF_TICK)))]),
    ]);
    letter(drawing, stationNumber(at, frame.direction, writeLength(number * pitch, options.lengths)));
    const from = add(at, scale(across, frame.leastAcross - 1));
    const to = add(at, scale(across, frame.mostAcross + 1));
    for (const crossing of crossingsOf(edges, from, to)) {
      if (crossing.squareness < LEAST_SQUARENESS) continue;
      if (corners.some((corner) => distance(corner, crossing.at) < CORNER_ROOM)) continue;
      const away = crossing.leaves ? across : scale(across, -1);
      const tip = step(crossing.at, away, outside);
      drawing.draw([pathMark('station', [stroke(step(crossing.at, away, -REACH), tip)])]);
      const ordinate = writeFine(distance(at, crossing.at), options.lengths);
      letter(drawing, ordinateTexts(tip, away, ordinate));
    }
  }
}

/** The number beside its tick on the centre line, on whichever side there is room. */
function stationNumber(at: Vec, direction: Vec, text: string): readonly TextMark[] {
  const angle = readable(angleOf(direction));
  return [HALF_TICK + 0.8, -HALF_TICK - 0.8]
    .flatMap((left) =>
      [2.5, 1.8].map((height) => {
        const across = leftOf(direction);
        const foot = step(at, direction, 0, left);
        // The tick's own direction reads best where it is level; the number is centred on the tick.
        const level = readable(angleOf(across));
        const outward = dot({ x: Math.cos(level), y: Math.sin(level) }, across) * left > 0;
        return textMark(text, shiftDown(foot, level, height / 2), {
          height,
          angle: level,
          align: outward ? 'left' : 'right',
          role: 'station',
        });
      }),
    )
    .concat(textMark(text, step(at, direction, 1, 0.8), { height: 1.8, angle, role: 'station' }));
}

function ordinateTexts(tip: Vec, away: Vec, text: string): readonly TextMark[] {
  const level = readable(angleOf(away));
  const outward = dot({ x: Math.cos(level), y: Math.sin(level) }, away) > 0;
  return [0.8, 4, 8].flatMap((gap) =>
    [2.5, 1.8].map((height) =>
      textMark(text, shiftDown(step(tip, away, gap), level, height / 2), {
        height,
        angle: level,
        align: outward ? 'left' : 'right',
        role: 'station',
      }),
    ),
  );
}

/** Moves a text's baseline so that its capitals are centred on the line through p. */
function shiftDown(p: Vec, angle: number, by: number): Vec {
  return { x: p.x + Math.sin(angle) * by, y: p.y - Math.cos(angle) * by };
}
