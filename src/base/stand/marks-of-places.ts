import type { Vec3 } from '../../geometry/index.ts';

/** Nearer to a middle plane than this, mm, a part stands in the middle. */
const MIDDLE = 1;

/**
 * What each copy of a place is marked with, as seen by the sitter (at negative y): F or B for front and back, L or R for left and
 * right, only as far as the copies differ in it; a number where that does not tell them apart; nothing for a single one.
 */
export function marksOfCopies(middles: readonly Vec3[]): readonly string[] {
  if (middles.length < 2) return middles.map(() => '');
  const sides = middles.map(({ x, y }) => ({ depth: sideOf(y, 'F', 'B'), length: sideOf(x, 'L', 'R') }));
  const differ = (pick: (side: (typeof sides)[number]) => string): boolean =>
    new Set(sides.map(pick)).size > 1;
  const [depths, lengths] = [differ(({ depth }) => depth), differ(({ length }) => length)];
  const words = sides.map(({ depth, length }) => `${depths ? depth : ''}${lengths ? length : ''}`);
  return words.map((word, at) => {
    const same = words.filter((other) => other === word).length;
    return same === 1 ? word : `${word}${1 + words.slice(0, at).filter((other) => other === word).length}`;
  });
}

function sideOf(value: number, low: string, high: string): string {
  if (Math.abs(value) < MIDDLE) return '';
  return value < 0 ? low : high;
}
