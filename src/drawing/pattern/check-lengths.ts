import {
  add,
  distance,
  nearestOnEdges,
  polar,
  scale,
  subtract,
  unit,
  type Vec,
} from '../../geometry/index.ts';
import { MM_PER } from '../../measure/index.ts';
import type { CheckLength, PatternOptions } from '../api.ts';
import { type Drawing, letter, pathMark, textMark } from '../layout/drawing.ts';
import { edgesOf } from '../layout/edges-of.ts';
import { polygon, stroke } from '../layout/strokes.ts';
import type { Spot } from './inside-grid.ts';
import type { PatternSource } from './source.ts';

/** Arms of a target, and how far it keeps from the outline; mm. */
const ARM = 3;
const CLEARANCE = 5;
/** Targets closer than this, mm, would check nothing. */
const LEAST = 8;

/**
 * Lengths to measure over the whole of the taped pattern: along either side (A, B) and over both diagonals (C, D), between
 * targets near the far corners of the part. They lie inside the outline, so that they outlast the glue and the saw. Along
 * the sides they are made a round figure, which a rule reads without doubt.
 */
export function checkLengths(source: PatternSource, spots: readonly Spot[]): readonly CheckLength[] {
  const clear = roomiest(spots);
  const spans = { along: spanOf(clear, 'along'), across: spanOf(clear, 'across') };
  const lowLeft = farthest(clear, spans, -1, 1);
  const highLeft = farthest(clear, spans, 1, 1);
  const highRight = farthest(clear, spans, 1, -1);
  const lowRight = farthest(clear, spans, -1, -1);
  if (!lowLeft || !highLeft || !highRight || !lowRight) return [];
  const edges = edgesOf(source.main);
  const keeps = (p: Vec): boolean => nearestOnEdges(edges, p).distance >= CLEARANCE * 0.6;
  const topLeft = rounded(lowLeft, highLeft, source.options.lengths, keeps);
  const topRight = rounded(lowRight, highRight, source.options.lengths, keeps);
  const pairs: readonly (readonly [Vec, Vec])[] = [
    [lowLeft, topLeft],
    [lowRight, topRight],
    [lowLeft, topRight],
    [lowRight, topLeft],
  ];
  return pairs
    .filter(([from, to], i) => distance(from, to) >= LEAST && !pairs.slice(0, i).some(same(from, to)))
    .map(([from, to], i) => ({
      name: String.fromCharCode(65 + i),
      from,
      to,
      nominal: distance(from, to),
    }));
}

function same(from: Vec, to: Vec): (pair: readonly [Vec, Vec]) => boolean {
  return ([a, b]) => distance(a, from) < LEAST / 2 && distance(b, to) < LEAST / 2;
}

/** Spots well clear of the edge; on a part too narrow for that, the clearest there are. */
function roomiest(spots: readonly Spot[]): readonly Spot[] {
  const clear = spots.filter((spot) => spot.clearance >= CLEARANCE);
  if (clear.length >= 4) return clear;
  const most = spots.reduce((best, spot) => Math.max(best, spot.clearance), 0);
  return spots.filter((spot) => spot.clearance >= most * 0.6);
}

type Spans = Readonly<Record<'along' | 'across', number>>;

/** How far spots reach from the start of the centre line and from the least of them, mm. */
function spanOf(spots: readonly Spot[], way: 'along' | 'across'): number {
  let [least, most] = [0, 0];
  for (const spot of spots) {
    least = Math.min(least, spot[way]);
    most = Math.max(most, spot[way]);
  }
  return Math.max(1, most - least);
}

/** The spot farthest into one corner of the span of all spots. */
function farthest(
  spots: readonly Spot[],
  { along: long, across: broad }: Spans,
  alongSign: number,
  acrossSign: number,
): Vec | undefined {
  let best: Spot | undefined;
  let most = -Infinity;
  for (const spot of spots) {
    // Twice as much for the length: the checks are to span as many sheets as they can.
    const reach = (2 * alongSign * spot.along) / long + (acrossSign * spot.across) / broad;
    if (reach > most) [best, most] = [spot, reach];
  }
  return best?.at;
}

/** The second point drawn towards the first to the next round distance; left where that would leave the part. */
function rounded(from: Vec, to: Vec, style: PatternOptions['lengths'], keeps: (p: Vec) => boolean): Vec {
  const step = style.unit === 'mm' ? 5 : MM_PER.in / 4;
  const whole = Math.floor(distance(from, to) / step) * step;
  if (whole < LEAST) return to;
  const moved = add(from, scale(unit(subtract(to, from)), whole));
  return keeps(moved) ? moved : to;
}

/** A cross in a small diamond at every end, with the names of the lengths that end there. */
export function drawTargets(drawing: Drawing, checks: readonly CheckLength[]): void {
  const ends = new Map<string, { at: Vec; names: string[] }>();
  for (const { name, from, to } of checks) {
    for (const at of [from, to]) {
      const key = `${at.x} ${at.y}`;
      const end = ends.get(key) ?? { at, names: [] };
      end.names.push(name);
      ends.set(key, end);
    }
  }
  for (const { at } of ends.values()) {
    const arm = (x: number, y: number): Vec => ({ x: at.x + x, y: at.y + y });
    drawing.draw([
      pathMark('check', [stroke(arm(-ARM, 0), arm(ARM, 0))]),
      pathMark('check', [stroke(arm(0, -ARM), arm(0, ARM))]),
      pathMark(
        'check',
        polygon([arm(ARM / 2, 0), arm(0, ARM / 2), arm(-ARM / 2, 0), arm(0, -ARM / 2)]),
        true,
      ),
    ]);
  }
  for (const { at, names } of ends.values()) {
    const text = names.join(' \u00b7 ');
    letter(
      drawing,
      [2.5, 1.8].flatMap((height) =>
        [0, 1, 2, 3, 4, 5, 6, 7].map((eighth) => {
          const towards = add(at, polar((eighth * Math.PI) / 4 + Math.PI / 4, ARM + 1.2));
          const right = Math.cos((eighth * Math.PI) / 4 + Math.PI / 4);
          return textMark(
            text,
            { x: towards.x, y: towards.y - height / 2 },
            {
              height,
              align: right > 0.1 ? 'left' : right < -0.1 ? 'right' : 'middle',
              weight: 'semibold',
              role: 'check',
            },
          );
        }),
      ),
    );
  }
}
