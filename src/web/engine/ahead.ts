import { type Design, lookAtDesign, type Memo, openSession, type Session } from '../../design/index.ts';
import type { Answering } from './answers/answering.ts';
import { ANSWERS } from './answers/index.ts';
import { type Pass, passOf, viewsWanted } from './answers/passes.ts';
import type { AskedQuestion } from './protocol.ts';

/** Computes what nobody has asked for yet. */
export interface Ahead {
  /**
   * Computes a design and answers questions about it, pass by pass, for the memo and what hangs on it alone: nothing is told, and
   * nothing counts as shown. False when it was stopped or the design cannot be used.
   */
  readonly goThrough: (design: Design, questions: readonly AskedQuestion[], memo: Memo) => Promise<boolean>;
  readonly stop: () => void;
}

/** `pause` comes back once messages that wait have been heard. */
export function createAhead(pause: () => Promise<void> | undefined): Ahead {
  /** Counts what was begun and stopped: only the newest goes on. */
  let turn = 0;
  let session: Session | undefined;
  return {
    goThrough: async (design, questions, memo) => {
      turn += 1;
      const own = turn;
      const under = openSession({ memo, pause });
      session = under;
      await pause();
      if (turn !== own) return false;
      const seen = lookAtDesign(design, viewsWanted(questions), memo);
      if (!seen.ok) return false;
      const from = { design, looked: seen.value, isAhead: true };
      answerAll(questions, 'seen', { ...from, computed: undefined });
      for (const pass of ['checked', 'laid'] as const) {
        await pause();
        if (turn !== own) return false;
        const wanted = { standing: false, ...(pass === 'checked' ? { patterns: [] } : {}) };
        const outcome = await under.compute(design, { wanted });
        if (turn !== own || outcome.kind === 'abandoned' || !outcome.result.ok) return false;
        answerAll(questions, pass, { ...from, computed: outcome.result.value });
      }
      return true;
    },
    stop: () => {
      turn += 1;
      session?.abandon();
    },
  };
}

/** Answers the questions of the first screens; the others are not fetched for this. */
function answerAll(questions: readonly AskedQuestion[], pass: Pass, from: Answering): void {
  for (const asked of questions) {
    if (passOf(asked) !== pass || !(asked.question in ANSWERS)) continue;
    const answer = ANSWERS[asked.question as keyof typeof ANSWERS] as (
      from: Answering,
      options: unknown,
    ) => unknown;
    answer(from, asked.options);
  }
}
