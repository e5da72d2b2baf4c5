import { useEffect } from 'preact/hooks';
import { answerOf, keyOf, want } from './engine.ts';
import type { AnswerTo, OptionsOf, Question } from './protocol.ts';

/**
 * The engine's answer to a question about the design in hand, kept up as the design changes; nothing before the first one has come. While a
 * design cannot be used it stays what it was. `options` are plain data: other ones are another question.
 */
export function useAnswer<Q extends Question>(
  question: Q,
  ...[options]: undefined extends OptionsOf<Q> ? [OptionsOf<Q>?] : [OptionsOf<Q>]
): AnswerTo<Q> | undefined {
  const key = keyOf(question, options as OptionsOf<Q>);
  // The key holds all that the options say.
  useEffect(() => want(question, options as OptionsOf<Q>), [key]);
  return answerOf(key).value as AnswerTo<Q> | undefined;
}
