import type { NumericParameter } from '../cures/typed-figure.ts';

/** mm: nearer than this the length is what was measured. */
const NEAR = 1e-6;
/** Lengths are all but straight in every parameter: a few steps do. */
const MOST_STEPS = 30;
/** Share of a parameter's range by which it is moved to see how the length follows. */
const NUDGE = 1e-4;

/**
 * The value of a parameter, within its range, at which a length comes to `target`, by the secant rule from what it is now. Undefined where none is
 * found; `lengthWith` gives undefined where the form refuses a value.
 */
export function solveLength(
  { least, most }: Pick<NumericParameter, 'least' | 'most'>,
  now: number,
  target: number,
  lengthWith: (value: number) => number | undefined,
): number | undefined {
  const within = (value: number): number => Math.min(most, Math.max(least, value));
  const nudge = (most - least) * NUDGE;
  let [at, other] = [now, within(now + nudge) === now ? now - nudge : within(now + nudge)];
  let [length, otherLength] = [lengthWith(at), lengthWith(other)];
  for (let step = 0; step < MOST_STEPS; step++) {
    if (length === undefined) return undefined;
    if (Math.abs(length - target) <= NEAR) return at;
    if (otherLength === undefined || Math.abs(length - otherLength) < 1e-12) return undefined;
    const next = within(at + ((target - length) * (other - at)) / (otherLength - length));
    // At an end of the range for the second time: it does not reach.
    if (next === at) return undefined;
    [other, otherLength] = [at, length];
    at = next;
    length = lengthWith(at);
  }
  return undefined;
}
