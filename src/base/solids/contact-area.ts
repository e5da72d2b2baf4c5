import { CONTACT_TOLERANCE, scale3, unit3, type Vec3 } from '../../geometry/index.ts';
import type { Solid } from './api.ts';
import { withScratch } from './scratch.ts';

/**
 * The area (mm²) of the contact between two parts that touch within CONTACT_TOLERANCE: b is moved against `out` (the direction from a into b, square to
 * the contact) by one, two and three times as much; the wood shared grows by area times way. The growth is carried back to the touch
 * in a straight line, which is right for slanting walls round the contact, too.
 */
export function contactArea(a: Solid, b: Solid, out: Vec3): number {
  const step = CONTACT_TOLERANCE;
  const back = unit3(out);
  const [one, two, three] = [1, 2, 3].map((times) => sharedAfter(a, b, scale3(back, -times * step)));
  const [first, second] = [(two! - one!) / step, (three! - two!) / step];
  return first + 1.5 * (first - second);
}

function sharedAfter(a: Solid, b: Solid, by: Vec3): number {
  return withScratch((keep) => {
    const moved = keep(b.body.translate(by.x, by.y, by.z));
    return keep(a.body.intersect(moved)).volume();
  });
}
