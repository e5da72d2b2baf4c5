import type { Line } from '../../geometry/index.ts';

/** So many of the longest lines, longest first; those as long as others stay in their order. */
export function longestLines(lines: readonly Line[], most: number): readonly Line[] {
  const lengths = new Float64Array(lines.length);
  for (const [i, { from, to }] of lines.entries()) {
    lengths[i] = Math.sqrt((to.x - from.x) ** 2 + (to.y - from.y) ** 2);
  }
  // Sorting bare numbers is quick: only the few lines kept are sorted as such.
  const least = lines.length > most ? lengths.toSorted()[lines.length - most]! : 0;
  const kept: number[] = [];
  for (let i = 0; i < lines.length; i++) if (lengths[i]! >= least) kept.push(i);
  kept.sort((a, b) => lengths[b]! - lengths[a]!);
  return kept.slice(0, most).map((i) => lines[i]!);
}
