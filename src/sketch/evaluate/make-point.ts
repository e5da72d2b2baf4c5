import { add, between, distance, lengthOf, pointAt, scale, type Vec } from '../../geometry/index.ts';
import { keyOf } from '../form/check-cycles.ts';
import { edgeName } from '../form/outline-names.ts';
import type { DrawnEdge } from '../outline/drawn-edge.ts';
import type { PointSpec } from '../schema/construction.ts';
import type { Place } from '../source/place.ts';
import { crossingOf, type Desk, dropOnto, mirrorOver } from './desk.ts';
import { headingOf } from './heading.ts';
import { show } from './show.ts';

type Along = Extract<PointSpec, { along: unknown }>;

/** A named point of a form; nothing when it cannot be made, the desk then having the reason. */
export function makePoint(spec: PointSpec, place: Place, desk: Desk): Vec | undefined {
  if ('kind' in spec) return desk.point(spec);
  if ('at' in spec) return desk.point(spec.at);
  if ('from' in spec) return makeFrom(spec, desk);
  if ('between' in spec) return makeBetween(spec, place, desk);
  if ('along' in spec) return makeAlong(spec, desk);
  if ('cross' in spec) {
    const [a, b] = [desk.straight(spec.cross[0]), desk.straight(spec.cross[1])];
    if (a === undefined || b === undefined) return undefined;
    const crossing = crossingOf(a, b);
    if (crossing !== undefined) return crossing;
    return desk.refuse(
      place,
      'form.parallel',
      'the two lines are parallel: they cross nowhere',
      'lines that are not parallel',
    );
  }
  if ('turn' in spec) {
    const [p, about, by] = [desk.point(spec.turn), desk.point(spec.about), desk.figure(spec.by)];
    if (p === undefined || about === undefined || by === undefined) return undefined;
    const arm = { x: p.x - about.x, y: p.y - about.y };
    const { x: c, y: s } = headingOf(by);
    return add(about, { x: c * arm.x - s * arm.y, y: s * arm.x + c * arm.y });
  }
  const p = desk.point('mirror' in spec ? spec.mirror : spec.drop);
  const line = desk.straight('mirror' in spec ? spec.over : spec.onto);
  if (p === undefined || line === undefined) return undefined;
  return 'mirror' in spec ? mirrorOver(p, line) : dropOnto(p, line);
}

function makeFrom(spec: Extract<PointSpec, { from: unknown }>, desk: Desk): Vec | undefined {
  const from = desk.point(spec.from);
  if (spec.by !== undefined && spec.toward !== undefined) {
    const [by, toward] = [desk.figure(spec.by), desk.figure(spec.toward)];
    return from && by !== undefined && toward !== undefined
      ? add(from, scale(headingOf(toward), by))
      : undefined;
  }
  const x = spec.over === undefined ? 0 : desk.figure(spec.over);
  const y = spec.up === undefined ? 0 : desk.figure(spec.up);
  return from && x !== undefined && y !== undefined ? add(from, { x, y }) : undefined;
}

function makeBetween(
  spec: Extract<PointSpec, { between: unknown }>,
  place: Place,
  desk: Desk,
): Vec | undefined {
  const ends = desk.points(spec.between);
  if (spec.share !== undefined) {
    const share = desk.figure(spec.share);
    return ends && share !== undefined ? between(ends[0], ends[1], share) : undefined;
  }
  const by = desk.figure(spec.by!);
  if (ends === undefined || by === undefined) return undefined;
  const apart = distance(ends[0], ends[1]);
  if (apart > 0) return between(ends[0], ends[1], by / apart);
  return desk.refuse(
    place,
    'form.line',
    'the two points are the same place, so no direction lies between them',
    'points apart',
  );
}

function makeAlong(spec: Along, desk: Desk): Vec | undefined {
  const edge = findEdge(spec, desk);
  const measure = spec.by ?? spec.back ?? spec.share!;
  const figure = desk.figure(measure);
  if (edge === undefined || figure === undefined) return undefined;
  const long = edge.pieces.reduce((sum, piece) => sum + lengthOf(piece), 0);
  const by = spec.share !== undefined ? figure * long : spec.back !== undefined ? long - figure : figure;
  if (by < 0 || by > long) {
    const { style } = desk.sheet;
    const asked = spec.share === undefined ? show(figure, style) : `a share of ${figure}`;
    const possible = spec.share === undefined ? `from 0 to ${show(long, style)}` : 'from 0 to 1';
    const message = `${asked} along ${spec.along.source.text} is not on it: the edge is ${show(long, style)} long`;
    return desk.refuse(measure.source.place, 'form.along', message, possible);
  }
  let left = by;
  for (const piece of edge.pieces) {
    const length = lengthOf(piece);
    if (left <= length) return pointAt(piece, length === 0 ? 0 : left / length);
    left -= length;
  }
  return edge.to;
}

/** The edge of that name that is present. */
function findEdge(spec: Along, desk: Desk): DrawnEdge | undefined {
  const { outline, edge, source } = spec.along;
  for (const [index, each] of desk.sheet.form.data.outlines[outline]!.edges.entries()) {
    if (edgeName(each).text !== edge) continue;
    const drawn = desk.take(desk.sheet.edges.get(keyOf(outline, index))!);
    if (drawn === undefined) return undefined;
    if (drawn !== 'absent') return drawn;
  }
  return desk.refuse(
    source.place,
    'form.absent',
    `${source.text} is absent with these numbers`,
    'an edge that is present',
  );
}
