import type { Vec } from '../../geometry/index.ts';

/**
 * A shape cut across at the height of each of its corners: between two heights it is a row of trapezoids. Numbers in one flat list, four
 * for each trapezoid: left and right at its lower height, left and right at its upper one.
 */
export interface Slabs {
  /** Rising, one more than there are slabs. */
  readonly heights: readonly number[];
  readonly slabs: readonly (readonly number[])[];
}

/** Heights nearer to each other than this, mm, are one: no slab is thinner. */
const THINNEST = 1e-9;

/** The slabs of polygons, a point inside an odd number of them being inside. */
export function slabsOf(polygons: readonly (readonly Vec[])[]): Slabs {
  const sides = polygons.flatMap((points) =>
    points.map((from, i) => {
      const to = points[(i + 1) % points.length]!;
      return from.y < to.y ? { low: from, high: to } : { low: to, high: from };
    }),
  );
  const heights = distinct(polygons.flatMap((points) => points.map(({ y }) => y)));
  const slabs = heights.slice(1).map((top, i) => {
    const bottom = heights[i]!;
    const crossing = sides.filter(
      ({ low, high }) => low.y < top - THINNEST / 2 && high.y > bottom + THINNEST / 2,
    );
    const spans = crossing
      .map(({ low, high }) => [xAt(low, high, bottom), xAt(low, high, top)] as const)
      .sort((a, b) => a[0] + a[1] - b[0] - b[1]);
    const row: number[] = [];
    for (let k = 0; k + 1 < spans.length; k += 2) {
      const [left, right] = [spans[k]!, spans[k + 1]!];
      row.push(left[0], right[0], left[1], right[1]);
    }
    return row;
  });
  return { heights, slabs };
}

function xAt(low: Vec, high: Vec, y: number): number {
  const t = (y - low.y) / (high.y - low.y);
  if (t <= 0) return low.x;
  if (t >= 1) return high.x;
  return low.x + t * (high.x - low.x);
}

function distinct(heights: readonly number[]): number[] {
  const found: number[] = [];
  for (const y of heights.toSorted((a, b) => a - b)) {
    if (found.length === 0 || y - found.at(-1)! > THINNEST) found.push(y);
  }
  return found;
}
