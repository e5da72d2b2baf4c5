import type { Result } from '../core/index.ts';
import { type ComputeOptions, computeInSteps } from './compute.ts';
import type { Computed } from './computed.ts';
import type { Design } from './design-schema.ts';
import type { Memo } from './memo.ts';

/**
 * Computations one after another for a maker who goes on changing the design meanwhile, in a worker for instance:
 *
 *     const session = openSession({ pause: nextTask });
 *     onmessage = async ({ data }) => {
 *       const outcome = await session.compute(data.design, { wanted: { standing: false } });
 *       if (outcome.kind === 'computed') …
 *     };
 *
 * What was found is remembered from one to the next. Stages whose inputs are as they were give the very same object again, so that what
 * comes of it may be compared and remembered by identity.
 */
export interface Session {
  /**
   * As `compute` does, with a pause between any two steps. A computation still under way is abandoned: its promise tells so, and what it
   * has found is not lost. Rejects with what a step throws, which is a fault of the program.
   */
  readonly compute: (design: Design, options?: Omit<ComputeOptions, 'memo'>) => Promise<SessionOutcome>;
  /** Abandons the computation under way, if there is one. */
  readonly abandon: () => void;
}

export type SessionOutcome =
  | { readonly kind: 'computed'; readonly result: Result<Computed> }
  | { readonly kind: 'abandoned' };

export interface SessionOptions {
  /** What was found before, to be gone on with; otherwise the session begins with nothing remembered. */
  readonly memo?: Memo;
  /**
   * Asked between two steps: a promise for when to go on (once messages that wait have been heard), or nothing to go on at
   * once: short steps follow each other closely, so a caller may look at its clock and pause only now and then.
   */
  readonly pause: () => Promise<void> | undefined;
}

export function openSession({ pause, memo = new Map() }: SessionOptions): Session {
  let newest = 0;
  return {
    compute: async (design, options = {}) => {
      newest += 1;
      const own = newest;
      const steps = computeInSteps(design, { ...options, memo });
      for (;;) {
        const step = steps.next();
        if (step.done) return { kind: 'computed', result: step.value };
        const paused = pause();
        if (paused === undefined) continue;
        await paused;
        if (newest !== own) return { kind: 'abandoned' };
      }
    },
    abandon: () => {
      newest += 1;
    },
  };
}
