import {
  add,
  arc,
  cross,
  directionAt,
  distance,
  dot,
  type Edge,
  leftOf,
  line,
  middle,
  norm,
  POSITION_TOLERANCE,
  STRAIGHT_RADIUS,
  scale,
  subtract,
  unit,
  type Vec,
} from '../../geometry/index.ts';
import { show, showLeast } from '../evaluate/show.ts';
import type { EdgeSpec } from '../schema/construction.ts';
import type { Stroke } from './stroke.ts';

type ArcSpec = Extract<EdgeSpec, { arc: unknown }>;

/** The arc of a form. What stands off its chord by less than a position can be told apart is a line. */
export function drawArc(spec: ArcSpec, stroke: Stroke): Edge | undefined {
  if (spec.radius !== undefined) return byRadius(spec, spec.radius, stroke);
  if (spec.rise !== undefined) return byRise(spec, spec.rise, stroke);
  if (spec.through !== undefined) return throughPoint(spec.through, stroke);
  return smoothOn(spec, stroke);
}

/** An arc so flat that its centre can no longer be told is a line. */
function arcOrLine(centre: Vec, turn: 1 | -1, { from, to, tag }: Stroke): Edge {
  return distance(from, centre) > STRAIGHT_RADIUS ? line(from, to, tag) : arc(from, to, centre, turn, tag);
}

/** An arc that swells to its left turns clockwise. */
function turnOf(spec: ArcSpec): 1 | -1 {
  return spec.bows === 'left' ? -1 : 1;
}

function byRadius(spec: ArcSpec, asked: NonNullable<ArcSpec['radius']>, stroke: Stroke): Edge | undefined {
  const { from, to, desk } = stroke;
  const radius = desk.size(asked, 'a radius');
  if (radius === undefined) return undefined;
  const span = distance(from, to);
  if (span > 2 * radius + POSITION_TOLERANCE) {
    const { style } = desk.sheet;
    const least = showLeast(span / 2, style);
    const message = `an arc of radius ${show(radius, style)} cannot span ${show(span, style)}: the least is ${least}`;
    return desk.refuse(asked.source.place, 'form.radius', message, `${least} or more`);
  }
  const turn = turnOf(spec);
  const height = Math.sqrt(Math.max(0, radius * radius - (span * span) / 4)) * (spec.long === 'yes' ? -1 : 1);
  const centre = add(middle(from, to), scale(leftOf(unit(subtract(to, from))), turn * height));
  const drawn = arcOrLine(centre, turn, stroke);
  return drawn.kind === 'arc' ? { ...drawn, radius: Math.max(radius, span / 2) } : drawn;
}

function byRise(spec: ArcSpec, asked: NonNullable<ArcSpec['rise']>, stroke: Stroke): Edge | undefined {
  const { from, to, tag, desk } = stroke;
  const rise = desk.figure(asked);
  if (rise === undefined) return undefined;
  if (rise < 0) {
    const message = `a rise of ${show(rise, desk.sheet.style)} is less than 0: bows says to which side the arc swells`;
    return desk.refuse(asked.source.place, 'form.rise', message, '0 or more');
  }
  if (rise <= POSITION_TOLERANCE) return line(from, to, tag);
  const span = distance(from, to);
  const radius = (span * span) / (8 * rise) + rise / 2;
  const turn = turnOf(spec);
  const centre = add(middle(from, to), scale(leftOf(unit(subtract(to, from))), turn * (radius - rise)));
  return arcOrLine(centre, turn, stroke);
}

function throughPoint(asked: NonNullable<ArcSpec['through']>, stroke: Stroke): Edge | undefined {
  const { from, to, tag, desk } = stroke;
  const through = desk.point(asked);
  if (through === undefined) return undefined;
  const chord = subtract(to, from);
  const arm = subtract(through, from);
  const area = cross(chord, arm);
  const apart = Math.min(distance(from, through), distance(through, to));
  const offLine = Math.abs(area) / norm(chord.x, chord.y);
  if (apart <= POSITION_TOLERANCE || offLine <= POSITION_TOLERANCE) {
    const message = `${tag.id} cannot pass through ${asked.source.text}: the three points lie on one straight line`;
    return desk.refuse(
      asked.source.place,
      'form.through',
      message,
      'a point off the straight line, or a line',
    );
  }
  // Centre of the circle through three points, from the squares of the two arms at `from`.
  const [c2, a2] = [dot(chord, chord), dot(arm, arm)];
  const centre = add(from, {
    x: (arm.y * c2 - chord.y * a2) / (2 * area),
    y: (chord.x * a2 - arm.x * c2) / (2 * area),
  });
  return arcOrLine(centre, area < 0 ? 1 : -1, stroke);
}

function smoothOn(spec: ArcSpec, stroke: Stroke): Edge | undefined {
  const { from, to, tag, desk, before } = stroke;
  if (before === undefined) {
    const message = `${tag.id} is the first edge drawn: there is none before it to follow smoothly`;
    return desk.refuse(spec.arc.place, 'form.smooth', message, 'an edge before it');
  }
  const direction = directionAt(before.pieces.at(-1)!, 1);
  const chord = subtract(to, from);
  const aside = cross(direction, chord);
  if (Math.abs(aside) <= POSITION_TOLERANCE) {
    if (dot(direction, chord) > 0) return line(from, to, tag);
    const message = `${tag.id} cannot follow ${before.name} smoothly: ${spec.to.source.text} lies straight behind`;
    return desk.refuse(spec.arc.place, 'form.smooth', message, 'an end that is not straight behind');
  }
  // The radius stands square to the direction; half the chord is its sine of the angle between direction and chord.
  const radius = dot(chord, chord) / (2 * aside);
  return arcOrLine(add(from, scale(leftOf(direction), radius)), aside > 0 ? 1 : -1, stroke);
}
