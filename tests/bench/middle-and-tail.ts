/** The median of some times and the one that 95 of 100 keep within. */
export function middleAndTail(times: readonly number[]): string {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number): string =>
    (sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN).toFixed(1);
  return `${at(0.5).padStart(6)} / ${at(0.95).padStart(6)}`;
}
