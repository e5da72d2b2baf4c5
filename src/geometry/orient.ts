import { orient2d } from 'robust-predicates';
import type { Vec } from './api.ts';

/**
 * Positive when p lies to the left of the line from a to b, negative to the right, zero exactly on it; the sign
 * is exact. The value is twice the area of the triangle, mm². (The library counts y downwards, hence the minus.)
 */
export function orientation(a: Vec, b: Vec, p: Vec): number {
  return -orient2d(a.x, a.y, b.x, b.y, p.x, p.y);
}
