import { compute, type Design, lookAtDesign } from '../../../design/index.ts';
import { answerTo } from '../answers/answer-to.ts';
import { known } from '../known.ts';
import type { AskedQuestion, ToldAnswer } from '../protocol.ts';
import { solidsHere } from './solids-here.ts';

interface Asked {
  readonly design: Design;
  readonly questions: readonly AskedQuestion[];
}

/** Answers what hangs on weights and on how the base stands, by far the longest to reckon; nothing of a design that cannot be used. */
export async function rest({ design, questions }: Asked): Promise<readonly ToldAnswer[]> {
  const solids = await solidsHere();
  const hasBook = questions.some(({ question }) => question === 'book');
  const wanted = hasBook ? {} : { patterns: [] };
  const computed = compute(design, { memo: known, solids, wanted });
  if (!computed.ok) return [];
  const looked = lookAtDesign(design, [], known);
  const from = { design, looked: looked.ok ? looked.value : undefined, computed: computed.value, solids };
  const answers: ToldAnswer[] = [];
  for (const { key, question, options } of questions) {
    const answer = (await answerTo(question))(from, options);
    if (answer !== undefined) answers.push({ key, answer });
  }
  return answers;
}
