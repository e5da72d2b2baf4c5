import type { Vec3 } from './api.ts';

export const vec3 = (x: number, y: number, z: number): Vec3 => ({ x, y, z });

export const add3 = (a: Vec3, b: Vec3): Vec3 => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z });

export const subtract3 = (a: Vec3, b: Vec3): Vec3 => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });

export const scale3 = (a: Vec3, by: number): Vec3 => ({ x: a.x * by, y: a.y * by, z: a.z * by });

export const dot3 = (a: Vec3, b: Vec3): number => a.x * b.x + a.y * b.y + a.z * b.z;

export const cross3 = (a: Vec3, b: Vec3): Vec3 => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});

export const length3 = (a: Vec3): number => Math.sqrt(dot3(a, a));

export const distance3 = (a: Vec3, b: Vec3): number => length3(subtract3(a, b));

/** The same direction at length 1. Throws for a vector of no length. */
export function unit3(a: Vec3): Vec3 {
  const length = length3(a);
  if (length === 0) throw new RangeError('a vector of no length has no direction');
  return scale3(a, 1 / length);
}

/** Turned about an axis (unit vector) through the origin, rad, anticlockwise for one who looks against the axis (Rodrigues' formula). */
export function turn3(a: Vec3, axis: Vec3, angle: number): Vec3 {
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  return add3(
    add3(scale3(a, cosine), scale3(cross3(axis, a), sine)),
    scale3(axis, dot3(axis, a) * (1 - cosine)),
  );
}
