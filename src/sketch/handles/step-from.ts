import type { Pull, Standing } from './api.ts';
import { type Bound, leastStep } from './least-step.ts';
import { CHANGE } from './pull-of.ts';
import type { Rates } from './rates-at.ts';

/** How often a step is brought back to the checks, and then halved. */
const MOST_BENDS = 5;
/** What a way back goes beyond the check that it leads to, as a share: so that it ends on the right side of it. */
const BEYOND = 1e-6;
const MOST_HALVINGS = 12;

/** A better standing; nothing when no step of this damping leads to one. */
export function stepFrom(
  here: Standing,
  rates: Rates,
  damping: number,
  { start, stand }: Pull,
): Standing | undefined {
  const { shares, gaps, look, worth } = here;
  const h = rates.ways.map((a, i) =>
    rates.ways.map((b, j) => product(a, b) + (i === j ? CHANGE + damping : 0)),
  );
  const g = rates.ways.map((way, i) => product(way, gaps) + CHANGE * (shares[i]! - start[i]!));
  const axis = (i: number, rate: number): readonly number[] => shares.map((_, j) => (i === j ? rate : 0));
  const ends = shares.flatMap((share, i): readonly Bound[] => [
    { rates: axis(i, 1), slack: share },
    { rates: axis(i, -1), slack: 1 - share },
  ]);
  const after = (step: readonly number[], part: number): readonly number[] =>
    shares.map((share, i) => Math.min(1, Math.max(0, share + part * step[i]!)));
  const across = look.slacks.map((_, k) => rates.slacks.map((each) => each[k]!));
  const bounds = look.slacks.flatMap((slack, k) => boundOf(across[k]!, slack));
  const step = leastStep(h, g, [...ends, ...bounds]);
  const whole = stand(after(step, 1));
  const there = whole && (whole.look.broken ? broughtBack(whole, across, stand) : whole);
  if (there !== undefined && there.worth <= worth) return there;
  for (let part = 0.5, tries = 0; tries < MOST_HALVINGS; part /= 2, tries++) {
    const there = stand(after(step, part));
    if (there !== undefined && !there.look.broken && there.worth <= worth) return there;
  }
  return undefined;
}

/**
 * Checks that bend or go in steps may not hold at the end of a step that is straight: the shortest way back to each in turn (Newton's, on the
 * rates from where the step began). Nothing where that does not lead back.
 */
function broughtBack(
  from: Standing,
  across: readonly (readonly number[])[],
  stand: Pull['stand'],
): Standing | undefined {
  let there: Standing | undefined = from;
  for (let bend = 0; bend < MOST_BENDS && there?.look.broken; bend++) {
    let { shares } = there;
    for (const [k, slack] of there.look.slacks.entries()) {
      const rates = across[k]!;
      const square = product(rates, rates);
      if (slack >= 0 || square === 0) continue;
      const by = (-slack * (1 + BEYOND)) / square;
      shares = shares.map((share, i) => Math.min(1, Math.max(0, share + by * rates[i]!)));
    }
    there = stand(shares);
  }
  return there?.look.broken ? undefined : there;
}

function boundOf(rates: readonly number[], slack: number): readonly Bound[] {
  return Number.isFinite(slack) ? [{ rates, slack: Math.max(0, slack) }] : [];
}

function product(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, each, i) => sum + each * b[i]!, 0);
}
