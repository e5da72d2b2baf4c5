import { HANDLE_TOLERANCE, type Vec } from '../../geometry/index.ts';
import type { Grip, Pull, Pulled, Seen, Standing } from './api.ts';
import { keptBy } from './kept-by.ts';
import { CHANGE, pullOf } from './pull-of.ts';
import { ratesAt } from './rates-at.ts';
import { stepFrom } from './step-from.ts';

/** A step smaller than this share of a range is none. */
const STILL = 1e-9;
const MOST_ROUNDS = 40;
/** More damping than this, mm² for a whole range, leaves steps that are none. */
const MOST_DAMPING = 1e12;

/**
 * The parameters at which a handle comes to a target (mm, in the part's plane, or in the picture of the base that `seen` gives), within the
 * ranges and checks, with the least change by shares of the ranges; where it cannot, the nearest that it reaches from where it is.
 *
 * Gauss and Newton's steps on differences of the form as evaluated; each is the best of those within the ranges and the checks made
 * straight (sequential quadratic programming), shortened or bent back where the checks are not straight, damped where it does no good.
 * Nothing when the form's checks do not hold before the pull, or its point cannot be made.
 */
export function pullHandle(grip: Grip, target: Vec, seen?: Seen): Pulled | undefined {
  const pull = pullOf(grip, target, seen);
  let here = pull.stand(pull.start);
  if (here === undefined || here.look.broken) return undefined;
  let damping = 0;
  for (let round = 0; round < MOST_ROUNDS && damping < MOST_DAMPING; round++) {
    const rates = ratesAt(here.shares, pull);
    if (rates === undefined) break;
    const next = stepFrom(here, rates, damping, pull);
    if (next === undefined) {
      damping = Math.max(10 * damping, rates.steepest / 1e3, CHANGE);
      continue;
    }
    const { shares } = here;
    const moved = Math.max(...next.shares.map((share, i) => Math.abs(share - shares[i]!)));
    here = next;
    damping = damping <= CHANGE ? 0 : damping / 10;
    if (moved < STILL) break;
  }
  return pulledTo(here, pull);
}

/** What is told of a standing. */
export function pulledTo({ shares, look, gaps }: Standing, { grip, valuesAt }: Pull): Pulled {
  const off = Math.hypot(...gaps);
  const values = valuesAt(shares);
  return { values, at: look.at, off, reached: off <= HANDLE_TOLERANCE, kept: keptBy(grip, values, look) };
}
