import type { Design, Memo } from '../../design/index.ts';
import { createAhead } from './ahead.ts';
import type { AskedQuestion } from './protocol.ts';

/** A change that is not made yet, by its number, and what will be answered should it be made. */
interface Foreseen {
  readonly number: number;
  readonly design: Design;
  readonly answers: ReadonlyMap<string, unknown>;
}

/** Goes through what seems to come while there is time for it; of several the newest. */
export interface Foreseer {
  readonly expect: (what: Pick<Foreseen, 'number' | 'design'>) => void;
  readonly isExpecting: () => boolean;
  /** Nothing where it was stopped or cannot be used; a fault of the program as well, which will show again should it come. */
  readonly go: (questions: readonly AskedQuestion[], memo: Memo) => Promise<Foreseen | undefined>;
  /** Stops what is under way: there is something else to do. */
  readonly stop: () => void;
  /** Expects nothing any more. */
  readonly drop: () => void;
  /** The answers to what was gone through last, if that is it. */
  readonly answersOf: (number: number | undefined) => Foreseen['answers'];
}

const NONE: Foreseen['answers'] = new Map();

/** `pause` comes back once messages that wait have been heard. */
export function createForeseer(pause: () => Promise<void> | undefined): Foreseer {
  const ahead = createAhead(pause);
  let expected: Pick<Foreseen, 'number' | 'design'> | undefined;
  let found: Foreseen | undefined;
  return {
    expect: (what) => {
      expected = what;
    },
    isExpecting: () => expected !== undefined,
    go: async (questions, memo) => {
      const now = expected;
      expected = undefined;
      if (now === undefined) return undefined;
      const answers = await ahead.goThrough(now.design, questions, memo).catch(() => undefined);
      if (answers === undefined) return undefined;
      found = { ...now, answers };
      return found;
    },
    stop: ahead.stop,
    drop: () => {
      expected = undefined;
    },
    answersOf: (number) => (found !== undefined && found.number === number ? found.answers : NONE),
  };
}
