import { cross, distance, POSITION_TOLERANCE, subtract, type Vec } from '../../geometry/index.ts';

/** A named place on the floor (mm) that a base stands on; a wide foot is several, one for each corner. */
export interface Foot {
  readonly name: string;
  readonly at: Vec;
}

/**
 * The feet at the corners of what the base stands on, anticlockwise: their convex hull. Feet within POSITION_TOLERANCE of a side are no corners.
 * Feet in one line give its two ends, feet in one place one of them. Method: monotone chain (Andrew 1979).
 */
export function supportPolygon(feet: readonly Foot[]): readonly Foot[] {
  const sorted = [...feet].sort((a, b) => a.at.x - b.at.x || a.at.y - b.at.y);
  const lower = chain(sorted);
  const upper = chain(sorted.toReversed());
  const corners = [...lower.slice(0, -1), ...upper.slice(0, -1)];
  return corners.length > 0 ? corners : sorted.slice(0, 1);
}

function chain(sorted: readonly Foot[]): readonly Foot[] {
  const kept: Foot[] = [];
  for (const foot of sorted) {
    while (kept.length > 0 && !turnsLeft(kept, foot)) kept.pop();
    kept.push(foot);
  }
  return kept;
}

/** Does the way to the next foot turn left at the last one kept? */
function turnsLeft(kept: readonly Foot[], { at: next }: Foot): boolean {
  const last = kept.at(-1)!.at;
  if (distance(last, next) <= POSITION_TOLERANCE) return false;
  const before = kept.at(-2)?.at;
  if (before === undefined) return true;
  return cross(subtract(last, before), subtract(next, last)) > POSITION_TOLERANCE * distance(before, next);
}
