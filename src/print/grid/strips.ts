/** Stretches of a line, listed by the equal strips of it that they enter. */
export interface Strips {
  readonly first: number;
  /** Indices of the stretches in each strip, rising. */
  readonly strips: readonly (readonly number[])[];
}

/** Width of a strip, mm: about the clearance of a corner. */
const WIDTH = 8;
const NONE: readonly number[] = [];

export function layInStrips(stretches: readonly { readonly low: number; readonly high: number }[]): Strips {
  let [first, last] = [Infinity, -Infinity];
  for (const { low, high } of stretches) {
    first = Math.min(first, Math.floor(low / WIDTH));
    last = Math.max(last, Math.floor(high / WIDTH));
  }
  const strips: number[][] = [];
  for (let strip = first; strip <= last; strip++) strips.push([]);
  for (const [i, { low, high }] of stretches.entries()) {
    const end = Math.floor(high / WIDTH);
    for (let strip = Math.floor(low / WIDTH); strip <= end; strip++) strips[strip - first]!.push(i);
  }
  return { first, strips };
}

/** All stretches that may reach a place. */
export function stripAt({ first, strips }: Strips, place: number): readonly number[] {
  return strips[Math.floor(place / WIDTH) - first] ?? NONE;
}
