import type { Problem } from '../../../core/index.ts';
import type { Computed, Design } from '../../../design/index.ts';

/** What an answer is made from: the design as it is typed and, where it can be used, all that follows from it. */
export interface Answering {
  readonly design: Design;
  readonly computed: Computed | undefined;
  readonly problems: readonly Problem[];
}

/** Marks an answer that cannot be given while the design cannot be used: the page keeps the one before, and says so. */
export const NO_ANSWER = undefined;
