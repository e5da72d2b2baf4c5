/** Another candidate that a misspelt name most likely means: at most two slips, one in a short name, none in a letter or two. */
export function suggest(name: string, candidates: readonly string[]): string | undefined {
  let best: string | undefined;
  let fewest = (name.length > 5 ? 2 : name.length > 2 ? 1 : 0) + 1;
  for (const candidate of candidates) {
    if (candidate === name) continue;
    if (Math.abs(candidate.length - name.length) >= fewest) continue;
    const slips = slipsBetween(name, candidate);
    if (slips < fewest) {
      best = candidate;
      fewest = slips;
    }
  }
  return best;
}

/** Letters to change, add, drop, or neighbours to swap (optimal string alignment). */
function slipsBetween(a: string, b: string): number {
  let before: readonly number[] = [];
  let row: readonly number[] = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      const isSwapped = a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const swap = isSwapped ? before[j - 2]! + 1 : Number.POSITIVE_INFINITY;
      next.push(Math.min(change, row[j]! + 1, next[j - 1]! + 1, swap));
    }
    before = row;
    row = next;
  }
  return row[b.length]!;
}
