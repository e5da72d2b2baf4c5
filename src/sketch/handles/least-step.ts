import { solveLinear } from '../../geometry/index.ts';

/** One side that a step keeps to: rates · step + slack ≥ 0. */
export interface Bound {
  readonly rates: readonly number[];
  readonly slack: number;
}

/** Rates and multipliers smaller than this are rounding: steps are shares of a parameter's range. */
const NONE = 1e-12;

/**
 * The step d that makes ½ dᵀ H d + gᵀ d least among those within bounds, from a start (d = 0) that is within them all: a primal
 * active-set method (J. Nocedal and S. J. Wright, Numerical Optimization, 2nd edition, algorithm 16.3). H is symmetric and positive
 * definite; few unknowns.
 */
export function leastStep(
  h: readonly (readonly number[])[],
  g: readonly number[],
  bounds: readonly Bound[],
): readonly number[] {
  let d: readonly number[] = g.map(() => 0);
  let active: readonly Bound[] = [];
  // Each round adds a bound or drops one; the limit only stands against going round in circles on rounding.
  for (let round = 0; round < 10 * (bounds.length + g.length); round++) {
    const { step, pressures } = towards(h, g, d, active);
    const blocking = firstBlocked(d, step, bounds, active);
    if (blocking !== undefined) {
      d = d.map((each, i) => each + blocking.share * step[i]!);
      active = [...active, blocking.bound];
      continue;
    }
    d = d.map((each, i) => each + step[i]!);
    const least = Math.min(...pressures, 0);
    if (least >= -NONE) return d;
    active = active.filter((_, at) => at !== pressures.indexOf(least));
  }
  return d;
}

/** From d to the least value on the active bounds, and how hard each of them holds it there. */
function towards(
  h: readonly (readonly number[])[],
  g: readonly number[],
  d: readonly number[],
  active: readonly Bound[],
): { readonly step: readonly number[]; readonly pressures: readonly number[] } {
  const slope = h.map((row, i) => g[i]! + times(row, d));
  const rows = [
    ...h.map((row, i) => [...row, ...active.map(({ rates }) => -rates[i]!), -slope[i]!]),
    ...active.map(({ rates }) => [...rates, ...active.map(() => 0), 0]),
  ];
  const found = solveLinear(rows);
  return { step: found.slice(0, g.length), pressures: found.slice(g.length) };
}

function firstBlocked(
  d: readonly number[],
  step: readonly number[],
  bounds: readonly Bound[],
  active: readonly Bound[],
): { readonly bound: Bound; readonly share: number } | undefined {
  let first: { readonly bound: Bound; readonly share: number } | undefined;
  for (const bound of bounds) {
    if (active.includes(bound)) continue;
    const rate = times(bound.rates, step);
    if (rate >= -NONE) continue;
    const share = Math.max(0, (bound.slack + times(bound.rates, d)) / -rate);
    if (share < (first?.share ?? 1)) first = { bound, share };
  }
  return first;
}

function times(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, each, i) => sum + each * b[i]!, 0);
}
