import type { Question } from '../protocol.ts';
import type { Answering } from './answering.ts';
import { ANSWERS, FURTHER } from './index.ts';

type Answer = (from: Answering, options: unknown) => unknown;

/** What answers a question, fetched where it is not one of the first. */
export async function answerTo(question: Question): Promise<Answer> {
  const own = question in ANSWERS ? ANSWERS[question as keyof typeof ANSWERS] : undefined;
  return (own ?? (await FURTHER[question as keyof typeof FURTHER]())) as Answer;
}
