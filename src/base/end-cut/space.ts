import type { Vec3 } from './api.ts';

export const vec3 = (x: number, y: number, z: number): Vec3 => ({ x, y, z });
export const dot3 = (a: Vec3, b: Vec3): number => a.x * b.x + a.y * b.y + a.z * b.z;
export const cross3 = (a: Vec3, b: Vec3): Vec3 => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});
export const scale3 = (a: Vec3, factor: number): Vec3 => ({
  x: a.x * factor,
  y: a.y * factor,
  z: a.z * factor,
});
export const add3 = (a: Vec3, b: Vec3): Vec3 => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z });
export const length3 = (a: Vec3): number => Math.hypot(a.x, a.y, a.z);

/** Unit vector along a. Throws on a zero or endless vector: no plane has such a normal. */
export function unit3(a: Vec3): Vec3 {
  const length = length3(a);
  if (!(length > 0 && Number.isFinite(length))) throw new RangeError(`no direction: ${a.x}, ${a.y}, ${a.z}`);
  return scale3(a, 1 / length);
}

/** v turned anticlockwise about a unit axis by an angle (rad), seen against the axis. Rodrigues' rotation formula. */
export function turn3(v: Vec3, axis: Vec3, angle: number): Vec3 {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return add3(add3(scale3(v, c), scale3(cross3(axis, v), s)), scale3(axis, dot3(axis, v) * (1 - c)));
}
