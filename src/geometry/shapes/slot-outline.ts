import type { EdgeTag, Outline, Vec } from '../api.ts';
import { arc, line } from '../edge.ts';
import { add, leftOf, scale, subtract, unit } from '../vec.ts';
import { circleOutline } from './circle-outline.ts';

/**
 * A slot: all that a disc of the radius (mm, positive) covers as its centre runs from one point to another. Equal points
 * give a circle. Anticlockwise unless turn is −1 (a hole); begins with the straight side on the right of from → to.
 */
export function slotOutline(from: Vec, to: Vec, radius: number, tag: EdgeTag, turn: 1 | -1 = 1): Outline {
  if (from.x === to.x && from.y === to.y) return circleOutline(from, radius, tag, turn);
  if (!(radius > 0)) throw new RangeError(`a slot needs a positive radius, not ${radius}`);
  const aside = scale(leftOf(unit(subtract(to, from))), -turn * radius);
  const a = add(from, aside);
  const b = add(to, aside);
  const c = subtract(to, aside);
  const d = subtract(from, aside);
  const edges = [line(a, b, tag), arc(b, c, to, turn, tag), line(c, d, tag), arc(d, a, from, turn, tag)];
  return { edges };
}
