import { angleOf, distance, dot, norm, pointAt, type Region, subtract } from '../../geometry/index.ts';
import type { KeyDimension } from '../api.ts';
import type { DimensionSpec } from '../schema/construction.ts';
import type { Place } from '../source/place.ts';
import type { Desk } from './desk.ts';
import { headingOf } from './heading.ts';

/** A figure printed beside the pattern; nothing when it cannot be measured. */
export function makeDimension(
  name: string,
  spec: DimensionSpec,
  region: Region,
  place: Place,
  desk: Desk,
): KeyDimension | undefined {
  const { label } = spec;
  if ('radius' in spec) return radiusOf(name, spec, region, desk);
  if ('angle' in spec) {
    const points = desk.points(spec.angle);
    if (points === undefined) return undefined;
    const [p, at, q] = points;
    const arms = [subtract(p, at), subtract(q, at)] as const;
    if (arms.some((arm) => norm(arm.x, arm.y) === 0)) {
      return desk.refuse(
        place,
        'form.dimension',
        `${name} has no arms: two of its points are the same place`,
        'points apart',
      );
    }
    const turn = Math.abs(angleOf(arms[0]) - angleOf(arms[1]));
    return { kind: 'angle', name, label, at, value: Math.min(turn, 2 * Math.PI - turn) };
  }
  const points = desk.points(spec.between);
  const along = spec.along === undefined ? 'free' : desk.figure(spec.along);
  if (points === undefined || along === undefined) return undefined;
  const [from, to] = points;
  if (along === 'free') return { kind: 'length', name, label, from, to, value: distance(from, to) };
  const value = Math.abs(dot(subtract(to, from), headingOf(along)));
  return { kind: 'length', name, label, from, to, along, value };
}

function radiusOf(
  name: string,
  spec: Extract<DimensionSpec, { radius: unknown }>,
  region: Region,
  desk: Desk,
): KeyDimension | undefined {
  const { text: edge, place } = spec.radius;
  const loops = [region.outer, ...region.holes];
  const pieces = loops.flatMap((loop) => loop.edges).filter((piece) => piece.tag.id === edge);
  const [only] = pieces;
  if (only?.kind === 'arc' && pieces.length === 1) {
    return { kind: 'radius', name, label: spec.label, edge, at: pointAt(only, 0.5), value: only.radius };
  }
  const why = only === undefined ? 'is not on the part with these numbers' : 'is not one arc';
  return desk.refuse(
    place,
    'form.dimension',
    `${edge} ${why}, so it has no radius`,
    'an arc or a round, or a condition on the dimension',
  );
}
