import type { Vec } from '../../geometry/index.ts';
import type { Grip, Pull, Seen } from './api.ts';
import { lookAt } from './look.ts';

/** What a change over a whole range weighs, mm²: nothing beside the way to the target, but it decides between equal ones. */
export const CHANGE = 1e-4;

/** A pull of a handle to a target, as functions of shares of the ranges of what follows. */
export function pullOf(grip: Grip, target: Vec, seen: Seen | undefined): Pull {
  const { movers } = grip;
  const start = movers.map(
    ({ name, least, most }) => ((grip.values[name] as number) - least) / (most - least),
  );
  const valuesAt: Pull['valuesAt'] = (shares) => ({
    ...grip.values,
    ...Object.fromEntries(
      // A share that was not changed gives the very value back, and a whole one the end of the range.
      movers.map(({ name, least, most }, i) => [
        name,
        shares[i] === start[i] ? grip.values[name]! : Math.min(most, least + shares[i]! * (most - least)),
      ]),
    ),
  });
  const look: Pull['look'] = (shares, stepless) => lookAt(grip, valuesAt(shares), seen, stepless);
  const stand: Pull['stand'] = (shares) => {
    const found = look(shares, false);
    if (found === undefined) return undefined;
    const change = shares.reduce((sum, share, i) => sum + (share - start[i]!) ** 2, 0);
    const gaps = found.waysFrom(target);
    return { shares, look: found, gaps, worth: gaps.reduce((sum, gap) => sum + gap * gap, CHANGE * change) };
  };
  return { grip, start, valuesAt, look, stand };
}
