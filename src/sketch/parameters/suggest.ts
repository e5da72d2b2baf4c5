/** The candidate that a misspelt name most likely means: at most two slips, and fewer than half its letters. */
export function suggest(name: string, candidates: readonly string[]): string | undefined {
  let best: string | undefined;
  let fewest = Math.min(2, Math.floor(name.length / 2)) + 1;
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - name.length) >= fewest) continue;
    const slips = slipsBetween(name, candidate);
    if (slips < fewest) {
      best = candidate;
      fewest = slips;
    }
  }
  return best;
}

/** Letters to change, add or drop (Levenshtein). */
function slipsBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}
