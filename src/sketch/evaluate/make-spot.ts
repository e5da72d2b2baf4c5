import { length3, scale3, type Vec3, vec3 } from '../../geometry/index.ts';
import type { DirectionSpec, SpaceSpec } from '../schema/base.ts';
import type { Expression } from '../schema/expression.ts';
import { FARTHEST } from '../source/limits.ts';
import type { Desk } from './desk.ts';

/** Shorter than this (mm, or plain) a direction leads nowhere: what rounding leaves of none. */
const NO_DIRECTION = 1e-9;

/** A place in space, mm; nothing when it cannot be made or lies too far away. */
export function makeSpot(spec: SpaceSpec, desk: Desk): Vec3 | undefined {
  const spot = threeOf(spec, desk);
  if (spot === undefined || Math.max(Math.abs(spot.x), Math.abs(spot.y), Math.abs(spot.z)) <= FARTHEST)
    return spot;
  const message = `this place lies more than ${FARTHEST / 1000} m away`;
  return desk.refuse(spec[0].source.place, 'form.far', message, `at most ${FARTHEST / 1000} m`);
}

/** A direction in space as a unit vector; nothing when it cannot be made or has no length. */
export function makeDirection({ ways }: DirectionSpec, desk: Desk): Vec3 | undefined {
  const way = threeOf(ways, desk);
  if (way === undefined) return undefined;
  const long = length3(way);
  if (long > NO_DIRECTION) return scale3(way, 1 / long);
  return desk.refuse(
    ways[0].source.place,
    'form.direction',
    'this direction has no length',
    'three figures that are not all 0',
  );
}

function threeOf(
  three: readonly [
    Expression<'length' | 'number or length'>,
    Expression<'length' | 'number or length'>,
    Expression<'length' | 'number or length'>,
  ],
  desk: Desk,
): Vec3 | undefined {
  const [x, y, z] = three.map((each) => desk.value(each) as number | undefined);
  return x === undefined || y === undefined || z === undefined ? undefined : vec3(x, y, z);
}
