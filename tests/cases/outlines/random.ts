/** Repeatable random numbers: the same seed gives the same run everywhere. */
export interface Random {
  /** In [0, 1). */
  readonly next: () => number;
  readonly between: (low: number, high: number) => number;
  /** A whole number from low to high, both included. */
  readonly whole: (low: number, high: number) => number;
  readonly pick: <T>(items: readonly T[]) => T;
  /** A size between low and high, as likely small as large by ratio; both positive. */
  readonly ratio: (low: number, high: number) => number;
}

/** Generator after Tommy Ettinger's mulberry32 (public domain), good enough for shapes. */
export function randomFrom(seed: number): Random {
  let state = seed | 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const between = (low: number, high: number): number => low + (high - low) * next();
  return {
    next,
    between,
    whole: (low, high) => low + Math.floor((high - low + 1) * next()),
    pick: (items) => items[Math.floor(items.length * next())]!,
    ratio: (low, high) => low * (high / low) ** next(),
  };
}
