/** Heights as near to the wanted ones as they come with so much room between neighbours, in the wanted order from the top down. */
export function spreadDown(wanted: readonly number[], room: number): readonly number[] {
  const placed: number[] = [];
  for (const [at, y] of wanted.entries()) placed.push(at === 0 ? y : Math.min(y, placed[at - 1]! - room));
  // What was pushed down is shared out upwards and downwards.
  const off = wanted.map((y, at) => y - placed[at]!);
  const shift = off.length === 0 ? 0 : (Math.max(...off) + Math.min(...off)) / 2;
  return placed.map((y) => y + shift);
}
