/**
 * Lists of numbers for the inner loops. Ordinary arrays: for the dozens of short lists that a small outline needs they are made
 * several times faster than typed arrays, and long ones are read as fast.
 */

/** An empty list that the engine keeps as doubles, even when the first numbers put in happen to be whole. */
export function doubles(): number[] {
  const list = [0.5];
  list.pop();
  return list;
}

/** A list of so many equal whole numbers. */
export function filled(count: number, value = 0): number[] {
  return new Array<number>(count).fill(value);
}
