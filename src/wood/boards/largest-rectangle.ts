import type { Box, Region } from '../../geometry/index.ts';
import { sidesOf } from '../layout/sides.ts';
import { slabsOf } from '../layout/slabs.ts';

/** Slabs thicker than this share of the height are cut thinner, so that a sloping side costs little of the rectangle. */
const FINEST = 1 / 64;

/**
 * The largest rectangle, by area, along the axes within a region, mm, at least `least` both ways; undefined when there is none. Its sides
 * along x lie at the heights of corners or of cuts between them: exact for regions of straight sides along the axes, and otherwise
 * smaller than the true one by what a cut's height costs.
 */
export function largestRectangle(region: Region, least: number): Box | undefined {
  const polygons = [region.outer, ...region.holes].map((loop) => sidesOf(loop, 'within'));
  const { heights, spans } = spansBetween(polygons);
  let best: Box | undefined;
  let most = 0;
  for (let low = 0; low < spans.length; low++) {
    let free = spans[low]!;
    for (let high = low; high < spans.length && free.length > 0; high++) {
      if (high > low) free = common(free, spans[high]!);
      const tall = heights[high + 1]! - heights[low]!;
      if (tall < least) continue;
      for (let k = 0; k < free.length; k += 2) {
        const wide = free[k + 1]! - free[k]!;
        if (wide < least || wide * tall <= most) continue;
        most = wide * tall;
        best = { minX: free[k]!, minY: heights[low]!, maxX: free[k + 1]!, maxY: heights[high + 1]! };
      }
    }
  }
  return best;
}

/** What is inside over the whole height of each slab. */
function spansBetween(polygons: readonly (readonly { readonly x: number; readonly y: number }[])[]): {
  heights: readonly number[];
  spans: readonly (readonly number[])[];
} {
  const rough = slabsOf(polygons);
  const step = (rough.heights.at(-1)! - rough.heights[0]!) * FINEST;
  const heights = [rough.heights[0]!];
  const spans: number[][] = [];
  rough.slabs.forEach((row, i) => {
    const bottom = rough.heights[i]!;
    const tall = rough.heights[i + 1]! - bottom;
    const isSlanting = row.some((x, k) => k % 4 < 2 && x !== row[k + 2]);
    const count = isSlanting ? Math.max(1, Math.ceil(tall / step)) : 1;
    for (let k = 0; k < count; k++) {
      heights.push(bottom + (tall * (k + 1)) / count);
      spans.push(insideOver(row, k / count, (k + 1) / count));
    }
  });
  return { heights, spans };
}

function insideOver(row: readonly number[], from: number, to: number): number[] {
  const at = (index: number, share: number) => row[index]! + share * (row[index + 2]! - row[index]!);
  const found: number[] = [];
  for (let p = 0; p < row.length; p += 4) {
    const left = Math.max(at(p, from), at(p, to));
    const right = Math.min(at(p + 1, from), at(p + 1, to));
    // Two that share a side are one.
    if (found.length > 0 && left <= found.at(-1)!) found[found.length - 1] = Math.max(right, found.at(-1)!);
    else if (right > left) found.push(left, right);
  }
  return found;
}

function common(a: readonly number[], b: readonly number[]): number[] {
  const found: number[] = [];
  for (let i = 0, k = 0; i < a.length && k < b.length; ) {
    const left = Math.max(a[i]!, b[k]!);
    const right = Math.min(a[i + 1]!, b[k + 1]!);
    if (right > left) found.push(left, right);
    if (a[i + 1]! < b[k + 1]!) i += 2;
    else k += 2;
  }
  return found;
}
