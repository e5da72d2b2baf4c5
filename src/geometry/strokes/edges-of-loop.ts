import type { Edge, Vec } from '../api.ts';
import { arc, directionAt, line } from '../edge.ts';
import { fairBatten } from '../fairing/fair-batten.ts';
import { FLAT_ARC } from '../tolerance.ts';
import { cross, distance, dot, norm, subtract } from '../vec.ts';
import type { Stroke, StrokeLoop } from './api.ts';

/** What a stroke comes to from a point; a straight line for now where it cannot be drawn. */
export function edgesOfStroke(
  stroke: Stroke,
  from: Vec,
  before: Edge | undefined,
  id: string,
): readonly Edge[] {
  const tag = { id, role: stroke.role };
  const { to } = stroke;
  switch (stroke.kind) {
    case 'line':
      return [line(from, to, tag)];
    case 'arc': {
      const centre = centreThrough(from, stroke.through, to);
      if (centre === undefined) return [line(from, to, tag)];
      return [arc(from, to, centre.at, centre.turn, tag)];
    }
    case 'batten': {
      const leaving = stroke.smooth && before !== undefined ? { leaving: directionAt(before, 1) } : {};
      const nails = [from, ...stroke.nails, to];
      const bent = nails.some((nail, i) => i > 0 && distance(nail, nails[i - 1]!) < FLAT_ARC)
        ? undefined
        : fairBatten(nails, leaving, tag);
      return bent?.ok ? bent.edges : nails.slice(1).map((nail, i) => line(nails[i]!, nail, tag));
    }
    default:
      return stroke satisfies never;
  }
}

/** The edges of a loop as far as it is drawn, each with the number of its stroke as its identity, from 1. */
export function edgesOfLoop({ start, strokes }: StrokeLoop): readonly Edge[] {
  const edges: Edge[] = [];
  let from = start;
  for (const [at, stroke] of strokes.entries()) {
    if (stroke.kind !== 'batten' && distance(from, stroke.to) < FLAT_ARC) continue;
    edges.push(...edgesOfStroke(stroke, from, edges.at(-1), `${at + 1}`));
    from = stroke.to;
  }
  return edges;
}

/** Centre of the circle through three points, and which way it runs; nothing where they lie on one straight line. */
function centreThrough(
  from: Vec,
  through: Vec,
  to: Vec,
): { readonly at: Vec; readonly turn: 1 | -1 } | undefined {
  const chord = subtract(to, from);
  const arm = subtract(through, from);
  const area = cross(chord, arm);
  const apart = Math.min(distance(from, through), distance(through, to));
  if (apart < FLAT_ARC || Math.abs(area) < FLAT_ARC * norm(chord.x, chord.y)) return undefined;
  // From the squares of the two arms at `from`.
  const [c2, a2] = [dot(chord, chord), dot(arm, arm)];
  const at = {
    x: from.x + (arm.y * c2 - chord.y * a2) / (2 * area),
    y: from.y + (chord.x * a2 - arm.x * c2) / (2 * area),
  };
  return { at, turn: area < 0 ? 1 : -1 };
}
