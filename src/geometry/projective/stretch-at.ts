import type { Vec } from '../api.ts';
import { norm } from '../vec.ts';
import type { Projection } from './api.ts';
import { project } from './project.ts';

/** How a projection stretches what lies close round a point. */
export interface Stretch {
  /** Units after for one unit before, in the directions that are stretched most and least. */
  readonly most: number;
  readonly least: number;
}

/** The stretch of a projection at a point; undefined on the horizon and beyond it. The singular values of its derivative there. */
export function stretchAt(p: Vec, projection: Projection): Stretch | undefined {
  const to = project(p, projection);
  if (to === undefined) return undefined;
  const [a, b, , d, e, , g, h, i] = projection;
  const w = g * p.x + h * p.y + i;
  const xx = (a - g * to.x) / w;
  const xy = (b - h * to.x) / w;
  const yx = (d - g * to.y) / w;
  const yy = (e - h * to.y) / w;
  const sum = norm(xx + yy, yx - xy);
  const difference = norm(xx - yy, yx + xy);
  return { most: (sum + difference) / 2, least: Math.abs(sum - difference) / 2 };
}
