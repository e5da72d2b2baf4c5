import type { Pull } from './api.ts';

/** How fast a handle's ways and the slacks of the checks change, a mover each, for its whole range. */
export interface Rates {
  readonly ways: readonly (readonly number[])[];
  readonly slacks: readonly (readonly number[])[];
  /** The square of the fastest way, mm². */
  readonly steepest: number;
}

/** Step of the differences, as a share of a range: an even balance of rounding (1e-16) and curvature. */
const DIFFERENCE = 1e-6;

/** Rates by differences, without the steps of rounding in the form; nothing where the point cannot be made. */
export function ratesAt(shares: readonly number[], { look }: Pull): Rates | undefined {
  const still = look(shares, true);
  if (still === undefined) return undefined;
  const ways: (readonly number[])[] = [];
  const slacks: (readonly number[])[] = [];
  for (const [i, share] of shares.entries()) {
    // Away from the nearer end of the range.
    const by = share > 0.5 ? -DIFFERENCE : DIFFERENCE;
    const moved = look(shares.with(i, share + by), true);
    if (moved === undefined) return undefined;
    ways.push(moved.ways.map((way, k) => (way - still.ways[k]!) / by));
    slacks.push(moved.slacks.map((slack, k) => finiteOrNone((slack - still.slacks[k]!) / by)));
  }
  return { ways, slacks, steepest: Math.max(...ways.map((way) => Math.hypot(...way) ** 2)) };
}

const finiteOrNone = (rate: number): number => (Number.isFinite(rate) ? rate : 0);
