import type { Design } from './design-schema.ts';

type Revision = Design['revision'];

/**
 * The revision after this one: `A` → `B`, `Z` → `AA`, `3` → `4`, `B2` → `B3`; the letters I and O are passed over, because
 * they read as figures (ASME Y14.35 leaves them out, with others, for the same reason).
 */
export function nextRevision({ index }: Revision, today: string): Revision {
  const figures = /\d+$/.exec(index)?.[0];
  if (figures !== undefined) {
    const next = String(Number(figures) + 1).padStart(figures.length, '0');
    return { index: `${index.slice(0, -figures.length)}${next}`, date: today };
  }
  return { index: nextLetters(index), date: today };
}

const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

function nextLetters(index: string): string {
  const at = LETTERS.indexOf(index.at(-1) ?? '');
  // Words of the maker's own are counted by a figure after them.
  if (at < 0) return `${index}2`;
  const before = index.slice(0, -1);
  if (at < LETTERS.length - 1) return before + LETTERS[at + 1]!;
  return (before === '' ? 'A' : nextLetters(before)) + LETTERS[0]!;
}
