import { sameValue } from './same-value.ts';

/**
 * What earlier computations found, by step, the youngest first. The caller keeps it from one computation to the next; a `new Map()`
 * begins cold. The values are readonly and may be shared.
 */
export type Memo = Map<string, readonly Kept[]>;

interface Kept {
  readonly inputs: readonly unknown[];
  readonly outcome: unknown;
}

/** Outcomes of one step of one thing: enough to go back and forth over the last changes; each costs a look at every new change. */
const MOST_KEPT = 12;

/** One step of the computation. */
export interface StageKey {
  /** Names the step; two steps of one name are the same function. */
  readonly stage: string;
  /** What of the design it is about, where there are several: each keeps outcomes of its own. */
  readonly of?: string;
  /** Everything that the step's outcome depends on: plain data. */
  readonly inputs: readonly unknown[];
}

/**
 * The outcome of a step, from the memo when its inputs are those of an earlier one: the very same or made up alike. What a step was
 * given and what it found is never changed, so that the same object is known at once.
 */
export function remember<T>(memo: Memo, { stage, of, inputs }: StageKey, step: () => T): T {
  const slot = of === undefined ? stage : `${stage} ${of}`;
  const kept = memo.get(slot) ?? [];
  const found = kept.find((each) => sameValue(each.inputs, inputs));
  const now = found ?? { inputs, outcome: step() };
  if (kept[0] !== now) {
    // Read again: the step may have remembered steps of its own.
    const others = (memo.get(slot) ?? []).filter((each) => each !== now);
    memo.set(slot, [now, ...others.slice(0, MOST_KEPT - 1)]);
  }
  return now.outcome as T;
}

/** The object known from before that a value equals, or itself: so that what is made up alike is the very same from then on. */
export function same<T>(memo: Memo, stage: string, value: T, of?: string): T {
  return remember(memo, { stage, ...(of === undefined ? {} : { of }), inputs: [value] }, () => value);
}
