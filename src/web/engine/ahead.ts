import { type Design, lookAtDesign, type Memo, openSession, type Session } from '../../design/index.ts';
import { answerTo } from './answers/answer-to.ts';
import type { Answering } from './answers/answering.ts';
import { type Pass, passOf, viewsWanted } from './answers/passes.ts';
import type { AskedQuestion } from './protocol.ts';

/** Computes what nobody has asked for yet. */
export interface Ahead {
  /**
   * Computes a design and answers questions about it, pass by pass: the answers by key, which do not count as shown. Nothing when it
   * was stopped or the design cannot be used.
   */
  readonly goThrough: (
    design: Design,
    questions: readonly AskedQuestion[],
    memo: Memo,
  ) => Promise<ReadonlyMap<string, unknown> | undefined>;
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
      if (turn !== own) return undefined;
      const seen = lookAtDesign(design, viewsWanted(questions), memo);
      if (!seen.ok) return undefined;
      const from = { design, looked: seen.value, isAhead: true };
      const answers = new Map<string, unknown>();
      await addAnswers(answers, questions, 'seen', { ...from, computed: undefined });
      for (const pass of ['checked', 'laid'] as const) {
        await pause();
        if (turn !== own) return undefined;
        const wanted = { standing: false, ...(pass === 'checked' ? { patterns: [] } : {}) };
        const outcome = await under.compute(design, { wanted });
        if (turn !== own || outcome.kind === 'abandoned' || !outcome.result.ok) return undefined;
        await addAnswers(answers, questions, pass, { ...from, computed: outcome.result.value });
      }
      return answers;
    },
    stop: () => {
      turn += 1;
      session?.abandon();
    },
  };
}

/** Adds the answers to the questions of one pass. */
async function addAnswers(
  answers: Map<string, unknown>,
  questions: readonly AskedQuestion[],
  pass: Pass,
  from: Answering,
): Promise<void> {
  for (const asked of questions) {
    if (passOf(asked) !== pass) continue;
    const answer = (await answerTo(asked.question))(from, asked.options);
    if (answer !== undefined) answers.set(asked.key, answer);
  }
}
