import { norm } from '../vec.ts';
import type { Arrangement } from './arrangement.ts';
import { SHAPE } from './pieces.ts';

interface Leaving {
  readonly x: number;
  readonly y: number;
  /** Signed curvature, positive to the left. */
  readonly bend: number;
}

/**
 * Of several chains that go out of a vertex, the one that bounds the interior to the left of the chain coming in: the first
 * met when turning clockwise from the way back. Directions that agree are told apart by curvature.
 */
export function leftmostOf(
  arrangement: Arrangement,
  incoming: number,
  keep: Int32Array,
  outgoing: readonly number[],
): number {
  const back = leavingOf(arrangement, incoming, -keep[incoming]!);
  let best = outgoing[0]!;
  let least = Infinity;
  let bestBend = 0;
  for (const c of outgoing) {
    const way = leavingOf(arrangement, c, keep[c]!);
    const dot = back.x * way.x + back.y * way.y;
    const cross = back.x * way.y - back.y * way.x;
    let clockwise = Math.atan2(-cross, dot);
    if (Math.abs(clockwise) < SAME_WAY) clockwise = way.bend < back.bend ? 0 : 2 * Math.PI;
    else if (clockwise < 0) clockwise += 2 * Math.PI;
    const same = Math.abs(clockwise - least) < SAME_WAY;
    if (same ? way.bend > bestBend : clockwise < least) {
      best = c;
      least = clockwise;
      bestBend = way.bend;
    }
  }
  return best;
}

/** Below this (rad) curvature tells more than the directions of two edges whose ends were snapped. */
const SAME_WAY = 1e-7;

function leavingOf({ pieces, slices, chains }: Arrangement, c: number, sense: number): Leaving {
  const step = sense > 0 ? chains.steps[chains.offsets[c]!]! : chains.steps[chains.offsets[c + 1]! - 1]!;
  const forward = step >= 0 === sense > 0;
  const s = step >= 0 ? step : -1 - step;
  const v0 = forward ? slices.start[s]! : slices.end[s]!;
  const v1 = forward ? slices.end[s]! : slices.start[s]!;
  const { vertices, shape } = pieces;
  const piece = slices.piece[s]!;
  const turn = forward ? pieces.turn[piece]! : -pieces.turn[piece]!;
  let x = vertices[2 * v1]! - vertices[2 * v0]!;
  let y = vertices[2 * v1 + 1]! - vertices[2 * v0 + 1]!;
  let bend = 0;
  if (turn !== 0) {
    const at = SHAPE * piece;
    x = -turn * (vertices[2 * v0 + 1]! - shape[at + 5]!);
    y = turn * (vertices[2 * v0]! - shape[at + 4]!);
    bend = turn / shape[at + 6]!;
  }
  const size = norm(x, y);
  return { x: x / size, y: y / size, bend };
}
