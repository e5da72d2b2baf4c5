import type { Vec } from '../api.ts';
import type { Projection } from './api.ts';

/** Where a point goes; undefined on the horizon and beyond it, where no camera sees the plane. */
export function project(p: Vec, [a, b, c, d, e, f, g, h, i]: Projection): Vec | undefined {
  const w = g * p.x + h * p.y + i;
  if (!(w > 0)) return undefined;
  return { x: (a * p.x + b * p.y + c) / w, y: (d * p.x + e * p.y + f) / w };
}
