import type { Membership } from '../membership.ts';
import { castFrom } from './cast-from.ts';
import { PLAIN_SHAPE, type Workspace } from './workspace.ts';

/**
 * Marks the stretches of the loops between crossings that part what belongs from what does not. How often the operands wind round the
 * points beside a loop is asked once, by a ray; from there every crossing passed on the way round changes it by one. False when
 * the way round does not end with what it began with.
 */
export function keepStretches(w: Workspace, belongs: Membership): boolean {
  for (let loop = 0; loop < w.loopCount; loop++) if (!keepLoop(w, loop, belongs)) return false;
  return true;
}

function keepLoop(w: Workspace, loop: number, belongs: Membership): boolean {
  const { entryStart, order, entryPiece, entryStep, loopOf, sideOf, keep } = w;
  const from = entryStart[loop]!;
  const to = entryStart[loop + 1]!;
  const side = sideOf[loop]!;
  const base = basePiece(w, loop, from, to);
  // The stretch in which the ray begins: before the first entry of its piece.
  let start = from - 1;
  while (start + 1 < to && entryPiece[order[start + 1]!]! < base) start++;
  if (start < from) start = to - 1;
  const end = from < to && entryPiece[order[start + 1 < to ? start + 1 : from]!] === base;
  const winding = castFrom(w, base, end ? order[start + 1 < to ? start + 1 : from]! : -1);
  let left0 = winding.left0;
  let left1 = winding.left1;
  if (from === to) {
    w.keepLoop[loop] = keepOf(belongs, left0, left1, side);
    return true;
  }
  const begin0 = left0;
  const begin1 = left1;
  let at = start;
  do {
    keep[at] = keepOf(belongs, left0, left1, side);
    at = at + 1 < to ? at + 1 : from;
    const k = order[at]!;
    if (sideOf[loopOf[entryPiece[k ^ 1]!]!] === 0) left0 += entryStep[k]!;
    else left1 += entryStep[k]!;
  } while (at !== start);
  return left0 === begin0 && left1 === begin1;
}

function keepOf(belongs: Membership, left0: number, left1: number, side: number): number {
  const left = belongs(left0, left1);
  const right = side === 0 ? belongs(left0 - 1, left1) : belongs(left0, left1 - 1);
  return left === right ? 0 : left ? 1 : -1;
}

/** The longest piece of a loop that nothing crosses, or else its first. */
function basePiece(
  { shape, pieceStart, order, entryPiece }: Workspace,
  loop: number,
  from: number,
  to: number,
): number {
  const first = pieceStart[loop]!;
  const last = pieceStart[loop + 1]!;
  let best = first;
  let longest = -1;
  let next = from;
  for (let i = first; i < last; i++) {
    if (next < to && entryPiece[order[next]!] === i) {
      while (next < to && entryPiece[order[next]!] === i) next++;
      continue;
    }
    const at = PLAIN_SHAPE * i;
    const chord = (shape[at]! - shape[at + 2]!) ** 2 + (shape[at + 1]! - shape[at + 3]!) ** 2;
    if (chord > longest) {
      longest = chord;
      best = i;
    }
  }
  return best;
}
