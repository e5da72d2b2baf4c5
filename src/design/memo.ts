import { sha256 } from '../core/index.ts';

/**
 * What earlier computations found, by the hash of what each stage was given. The caller keeps it from one computation
 * to the next; a `new Map()` begins cold. The values are readonly and may be shared.
 */
export type Memo = Map<string, unknown>;

/** Enough for some dozens of steps back and forth over one design with many parts; the oldest go first. */
const MOST_ENTRIES = 600;

/** One step of the computation. */
export interface StageKey {
  /** Names the step; two steps of one name are the same function. */
  readonly stage: string;
  /** Everything that the step's outcome depends on: plain data. */
  readonly inputs: readonly unknown[];
}

/** The outcome of a step, from the memo when its inputs are those of an earlier one. */
export function remember<T>(memo: Memo, { stage, inputs }: StageKey, step: () => T): T {
  const key = `${stage}:${sha256(JSON.stringify(inputs))}`;
  const known = memo.has(key);
  const outcome = known ? (memo.get(key) as T) : step();
  // Set again so that what is in use stays youngest.
  memo.delete(key);
  memo.set(key, outcome);
  for (const oldest of memo.keys()) {
    if (memo.size <= MOST_ENTRIES) break;
    memo.delete(oldest);
  }
  return outcome;
}
