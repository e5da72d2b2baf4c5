import { filled, unfilled } from '../memory/lists.ts';
import { VERTEX_SNAP } from '../tolerance.ts';
import { findMeetings } from './find-meetings.ts';
import type { Pieces } from './pieces.ts';
import { cutPieces, type Slices } from './slices.ts';
import type { TouchingPairs } from './touching-pairs.ts';

/**
 * Pieces cut wherever they meet, what coincides laid together, and the whole read as chains: runs of slices between
 * the vertices where more than two come together. Nothing changes sides along a chain, so that it is judged once, at
 * its longest slice, and kept or dropped as a whole.
 *
 * Slices that coincide become one, with a count for each operand: how much more often the operand winds round
 * points to its left than to its right. Counts that cancel leave nothing, which closes exact pinches and slits.
 */
export interface Arrangement {
  readonly pieces: Pieces;
  readonly slices: Slices;
  /** Winding to the left less winding to the right, for operand 0 and 1. */
  readonly counts: readonly [Int32Array, Int32Array];
  readonly chains: Chains;
  /** How far apart vertices lay that were made one, at most, mm. */
  readonly widestJoin: number;
}

export interface Chains {
  count: number;
  /** Slices of chain c: from offsets[c] to offsets[c + 1]; a slice s travelled backwards is written −1 − s. */
  readonly steps: Int32Array;
  readonly offsets: Int32Array;
  /** The longest slice of each chain, as in `steps`. */
  readonly longest: Int32Array;
}

/**
 * `grain` multiplies the tolerances (see `cuts.ts`). `touching`, where known, are the pairs that lie no
 * further apart than the snap. An arrangement is good until the lists that it is made of are released.
 */
export function arrange(pieces: Pieces, grain = 1, touching?: TouchingPairs): Arrangement {
  const cuts = findMeetings(pieces, grain, touching);
  const slices = cutPieces(pieces, cuts);
  const counts = [filled(slices.count), filled(slices.count)] as const;
  for (let s = 0; s < slices.count; s++) counts[pieces.side[slices.piece[s]!] === 0 ? 0 : 1][s] = 1;
  const around = slicesAround(pieces, slices);
  layTogether(slices, counts, around, grain * VERTEX_SNAP);
  peelLooseEnds(slices, counts, around);
  const chains = findChains(pieces, slices, counts, around);
  return { pieces, slices, counts, chains, widestJoin: Math.sqrt(cuts.union.widest) };
}

/** Slices at each vertex: those of v are `at[offsets[v]]` up to `at[offsets[v + 1]]`. */
interface Around {
  readonly at: Int32Array;
  readonly offsets: Int32Array;
}

function slicesAround(pieces: Pieces, slices: Slices): Around {
  const { count, start, end } = slices;
  const offsets = filled(pieces.vertexCount + 2);
  for (let s = 0; s < count; s++) {
    offsets[start[s]! + 2]!++;
    offsets[end[s]! + 2]!++;
  }
  for (let v = 2; v < offsets.length; v++) offsets[v]! += offsets[v - 1]!;
  const at = unfilled(2 * count);
  for (let s = 0; s < count; s++) {
    at[offsets[start[s]! + 1]!++] = s;
    at[offsets[end[s]! + 1]!++] = s;
  }
  return { at, offsets };
}

/** Adds the counts of coinciding slices to the first of them. */
function layTogether(slices: Slices, counts: Arrangement['counts'], around: Around, snap: number): void {
  const { count, start, end, middles } = slices;
  const [count0, count1] = counts;
  for (let s = 0; s < count; s++) {
    const v = start[s]!;
    const from = around.offsets[v]!;
    const to = around.offsets[v + 1]!;
    for (let k = from; k < to; k++) {
      const t = around.at[k]!;
      if (t <= s) continue;
      const same = start[t] === v && end[t] === end[s];
      if (!same && !(end[t] === v && start[t] === end[s])) continue;
      const dx = middles[2 * s]! - middles[2 * t]!;
      const dy = middles[2 * s + 1]! - middles[2 * t + 1]!;
      if (dx * dx + dy * dy > snap * snap) continue;
      const sign = same ? 1 : -1;
      count0[s]! += sign * count0[t]!;
      count1[s]! += sign * count1[t]!;
      count0[t] = 0;
      count1[t] = 0;
    }
  }
}

/** A slice with an end at which nothing else is left bounds nothing; its counts go, and those of what then hangs loose. */
function peelLooseEnds(slices: Slices, [count0, count1]: Arrangement['counts'], around: Around): void {
  const { count, start, end } = slices;
  const degrees = filled(around.offsets.length);
  for (let s = 0; s < count; s++) {
    if (count0[s] === 0 && count1[s] === 0) continue;
    degrees[start[s]!]!++;
    degrees[end[s]!]!++;
  }
  for (let first = 0; first < count; first++) {
    let s = first;
    while (s !== -1) {
      const v = degrees[start[s]!] === 1 ? start[s]! : end[s]!;
      if (degrees[v] !== 1 || (count0[s] === 0 && count1[s] === 0)) break;
      count0[s] = 0;
      count1[s] = 0;
      const far = v === start[s] ? end[s]! : start[s]!;
      degrees[v] = 0;
      degrees[far]!--;
      s = -1;
      if (degrees[far] !== 1) break;
      for (let k = around.offsets[far]!; k < around.offsets[far + 1]!; k++) {
        const t = around.at[k]!;
        if (count0[t] !== 0 || count1[t] !== 0) s = t;
      }
    }
  }
}

function findChains(pieces: Pieces, slices: Slices, counts: Arrangement['counts'], around: Around): Chains {
  const { count, start, end } = slices;
  const [count0, count1] = counts;
  const isLive = (s: number): boolean => count0[s] !== 0 || count1[s] !== 0;
  const steps = unfilled(count);
  const chains: Chains = { count: 0, steps, offsets: filled(count + 1), longest: unfilled(count) };
  let stepped = 0;
  const used = filled(count);
  /** The one other live slice at a vertex where just two meet and run on in the same sense, else NaN. */
  const onward = (v: number, from: number): number => {
    const own = from >= 0 ? from : -1 - from;
    let other = -1;
    for (let k = around.offsets[v]!; k < around.offsets[v + 1]!; k++) {
      const t = around.at[k]!;
      if (t === own || !isLive(t)) continue;
      if (other !== -1) return Number.NaN;
      other = t;
    }
    if (other === -1 || used[other] === 1) return Number.NaN;
    const forward = start[other] === v;
    const sense = from >= 0 === forward ? 1 : -1;
    if (count0[own] !== sense * count0[other]! || count1[own] !== sense * count1[other]!) return Number.NaN;
    return forward ? other : -1 - other;
  };
  for (let s = 0; s < count; s++) {
    if (used[s] === 1 || !isLive(s)) continue;
    used[s] = 1;
    // Back to where the chain begins, then forward from there.
    let first = s;
    for (let back = onward(start[s]!, -1 - s); !Number.isNaN(back); ) {
      const slice = back >= 0 ? back : -1 - back;
      used[slice] = 1;
      first = -1 - back;
      back = onward(back >= 0 ? end[slice]! : start[slice]!, back);
    }
    const from = stepped;
    let step = first;
    // What was marked on the way back is travelled again, so it is unmarked step by step ahead.
    for (;;) {
      const slice = step >= 0 ? step : -1 - step;
      steps[stepped++] = step;
      used[slice] = 1;
      if (slice === s) break;
      step = stepAhead(slices, around, isLive, step);
    }
    for (let next = onward(end[s]!, s); !Number.isNaN(next); ) {
      const slice = next >= 0 ? next : -1 - next;
      used[slice] = 1;
      steps[stepped++] = next;
      next = onward(next >= 0 ? end[slice]! : start[slice]!, next);
    }
    chains.longest[chains.count++] = longestOf(pieces, slices, steps, from, stepped);
    chains.offsets[chains.count] = stepped;
  }
  return chains;
}

/** The next slice where it is known that just two meet. */
function stepAhead(slices: Slices, around: Around, isLive: (s: number) => boolean, step: number): number {
  const own = step >= 0 ? step : -1 - step;
  const v = step >= 0 ? slices.end[own]! : slices.start[own]!;
  for (let k = around.offsets[v]!; k < around.offsets[v + 1]!; k++) {
    const t = around.at[k]!;
    if (t !== own && isLive(t)) return slices.start[t] === v ? t : -1 - t;
  }
  return step;
}

function longestOf(pieces: Pieces, slices: Slices, steps: Int32Array, from: number, to: number): number {
  const { vertices } = pieces;
  let best = steps[from]!;
  let longest = -1;
  for (let k = from; k < to; k++) {
    const step = steps[k]!;
    const s = step >= 0 ? step : -1 - step;
    const v0 = slices.start[s]!;
    const v1 = slices.end[s]!;
    const square =
      (vertices[2 * v0]! - vertices[2 * v1]!) ** 2 + (vertices[2 * v0 + 1]! - vertices[2 * v1 + 1]!) ** 2;
    if (square > longest) {
      longest = square;
      best = step;
    }
  }
  return best;
}
