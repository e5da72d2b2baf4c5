import type { Vec } from './api.ts';

export const vec = (x: number, y: number): Vec => ({ x, y });
export const add = (a: Vec, b: Vec): Vec => ({ x: a.x + b.x, y: a.y + b.y });
export const subtract = (a: Vec, b: Vec): Vec => ({ x: a.x - b.x, y: a.y - b.y });
export const scale = (a: Vec, factor: number): Vec => ({ x: a.x * factor, y: a.y * factor });
export const dot = (a: Vec, b: Vec): number => a.x * b.x + a.y * b.y;
/** z of the cross product: positive when b lies to the left of a. */
export const cross = (a: Vec, b: Vec): number => a.x * b.y - a.y * b.x;
/**
 * Length of (x, y). `Math.hypot` guards besides against numbers near 1e154, which no drawing holds, and takes more than ten times as long.
 */
export const norm = (x: number, y: number): number => Math.sqrt(x * x + y * y);
export const length = (a: Vec): number => norm(a.x, a.y);
export const distance = (a: Vec, b: Vec): number => norm(a.x - b.x, a.y - b.y);
/** Unit vector along a; a zero vector gives NaN, so test for it first. */
export const unit = (a: Vec): Vec => scale(a, 1 / length(a));
/** a turned a quarter anticlockwise: the left-hand normal. */
export const leftOf = (a: Vec): Vec => ({ x: -a.y, y: a.x });
/** Unit vector at an angle (rad, anticlockwise from +x). */
export const polar = (angle: number, radius = 1): Vec => ({
  x: radius * Math.cos(angle),
  y: radius * Math.sin(angle),
});
/** Direction of a, in (−π, π]. */
export const angleOf = (a: Vec): number => Math.atan2(a.y, a.x);
export const middle = (a: Vec, b: Vec): Vec => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
/** a + t (b − a). */
export const between = (a: Vec, b: Vec, t: number): Vec => ({
  x: a.x + t * (b.x - a.x),
  y: a.y + t * (b.y - a.y),
});
