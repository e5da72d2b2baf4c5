import type { EdgeTag, Outline, Vec } from '../api.ts';

/** A whole circle as one arc starting at its right; radius positive, mm. Anticlockwise unless turn is −1 (a hole). */
export function circleOutline(centre: Vec, radius: number, tag: EdgeTag, turn: 1 | -1 = 1): Outline {
  if (!(radius > 0)) throw new RangeError(`a circle needs a positive radius, not ${radius}`);
  const start = { x: centre.x + radius, y: centre.y };
  return { edges: [{ kind: 'arc', from: start, to: start, centre, radius, turn, tag }] };
}
