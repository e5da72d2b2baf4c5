/**
 * The known name that a mistyped one most likely means; undefined when none is close (more than a third of its letters
 * wrong). Distance by insertions, deletions, changes and swaps of neighbours (optimal string alignment).
 */
export function nearestName(typed: string, known: Iterable<string>): string | undefined {
  const word = typed.toLowerCase().slice(0, LONGEST_COMPARED);
  let best: string | undefined;
  let least = Math.max(1, Math.floor(word.length / 3)) + 1;
  for (const name of known) {
    const away = editsBetween(word, name.toLowerCase().slice(0, LONGEST_COMPARED));
    if (away < least) [best, least] = [name, away];
  }
  return best;
}

/** Hostile names may be of any length; nobody means a name by more letters than this. */
const LONGEST_COMPARED = 60;

function editsBetween(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let edits = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + change);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) edits = Math.min(edits, beforeLast[j - 2]! + 1);
      row.push(edits);
    }
    [beforeLast, last] = [last, row];
  }
  return last[b.length]!;
}
