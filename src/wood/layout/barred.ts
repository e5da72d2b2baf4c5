import type { Slabs } from './slabs.ts';

/** Overlaps thinner than this, mm, are touches. */
export const TOUCH = 1e-7;

/**
 * The shifts along x that bar a shape from standing `dy` above where another stands: open intervals, rising, from and to one after the
 * other. Within a slab that both have in common their trapezoids overlap for the shifts from (left of the one − right of the other) to
 * (right − left), and over the slab's height those are linear in y: so their union is told exactly by its two ends.
 */
export function barredShifts(standing: Slabs, moving: Slabs, dy: number): readonly number[] {
  const found: number[] = [];
  const a = standing.heights;
  const b = moving.heights;
  let i = firstAbove(a, b[0]! + dy);
  let j = firstAbove(b, a[0]! - dy);
  while (i < standing.slabs.length && j < moving.slabs.length) {
    const low = Math.max(a[i]!, b[j]! + dy);
    const high = Math.min(a[i + 1]!, b[j + 1]! + dy);
    if (high - low > TOUCH) {
      const high1 = a[i + 1]! - a[i]!;
      const high2 = b[j + 1]! - b[j]!;
      const t0 = (low - a[i]!) / high1;
      const t1 = (high - a[i]!) / high1;
      const u0 = (low - dy - b[j]!) / high2;
      const u1 = (high - dy - b[j]!) / high2;
      barBetween(standing.slabs[i]!, t0, t1, moving.slabs[j]!, u0, u1, found);
    }
    if (a[i + 1]! < b[j + 1]! + dy) i++;
    else j++;
  }
  return joined(found);
}

/** The slab in which a height lies, or the first above it. */
function firstAbove(heights: readonly number[], y: number): number {
  let index = 0;
  while (index + 1 < heights.length && heights[index + 1]! <= y) index++;
  return index;
}

function barBetween(
  a: readonly number[],
  t0: number,
  t1: number,
  b: readonly number[],
  u0: number,
  u1: number,
  found: number[],
): void {
  for (let p = 0; p < a.length; p += 4) {
    const leftLow = at(a, p, t0);
    const leftHigh = at(a, p, t1);
    const rightLow = at(a, p + 1, t0);
    const rightHigh = at(a, p + 1, t1);
    for (let q = 0; q < b.length; q += 4) {
      const from = Math.min(leftLow - at(b, q + 1, u0), leftHigh - at(b, q + 1, u1));
      const to = Math.max(rightLow - at(b, q, u0), rightHigh - at(b, q, u1));
      if (to - from > TOUCH) put(found, from, to);
    }
  }
}

/** Neighbouring slabs mostly bar shifts that overlap: then the last interval grows. */
function put(found: number[], from: number, to: number): void {
  const last = found.length - 2;
  if (last >= 0 && from < found[last + 1]! - TOUCH && to > found[last]! + TOUCH) {
    if (from < found[last]!) found[last] = from;
    if (to > found[last + 1]!) found[last + 1] = to;
  } else found.push(from, to);
}

/** x of a side of a trapezoid at a share of its height. */
function at(row: readonly number[], index: number, share: number): number {
  const low = row[index]!;
  return low + share * (row[index + 2]! - low);
}

function joined(found: readonly number[]): readonly number[] {
  if (found.length <= 2) return found;
  const intervals: [number, number][] = [];
  for (let k = 0; k < found.length; k += 2) intervals.push([found[k]!, found[k + 1]!]);
  intervals.sort((p, q) => p[0] - q[0]);
  const all: number[] = [];
  for (const [from, to] of intervals) {
    const last = all.length - 1;
    if (last > 0 && from < all[last]! - TOUCH) all[last] = Math.max(all[last]!, to);
    else all.push(from, to);
  }
  return all;
}
