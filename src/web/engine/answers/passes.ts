import type { BaseView } from '../../../design/index.ts';
import type { AskedQuestion, Question } from '../protocol.ts';
import type { PictureOptions } from './picture.ts';

/**
 * When a question is answered: at first what one sees of the base, which hangs on nothing but the form and its figures; then what hangs on joints,
 * routing and checks, then what hangs on sheets of paper; and once the maker is still for a moment what nobody waits for.
 */
export type Pass = 'seen' | 'checked' | 'laid' | 'rest';

const CHECKED: ReadonlySet<Question> = new Set([
  'comb',
  'findings',
  'handles',
  'parts',
  'picture',
  'routing',
]);
const REST: ReadonlySet<Question> = new Set(['thumbnail', 'meshes']);
/** What is answered once without and once with weights and standing. */
const AGAIN: ReadonlySet<Question> = new Set(['findings', 'book']);

export function passOf({ question, options }: AskedQuestion): Pass {
  if (question === 'form') return 'seen';
  const isSide =
    (question === 'picture' || question === 'handles') && 'side' in (options as PictureOptions).of;
  if (isSide) return 'seen';
  if (CHECKED.has(question)) return 'checked';
  return REST.has(question) ? 'rest' : 'laid';
}

/** Questions whose answers weights and standing change, or that nobody waits for. */
export const isOfRest = (asked: AskedQuestion): boolean =>
  passOf(asked) === 'rest' || AGAIN.has(asked.question);

/** The views of the base that the questions ask for. */
export function viewsWanted(questions: readonly AskedQuestion[]): readonly BaseView[] {
  const sides = questions.flatMap(({ question, options }): readonly BaseView[] => {
    if (question !== 'picture') return [];
    const { of } = options as PictureOptions;
    return 'side' in of ? [of.side] : [];
  });
  return [...new Set(sides)];
}

/** The views that will be asked for next: a page that has just opened asks for the form, and measures its room meanwhile. */
export function viewsToCome(questions: readonly AskedQuestion[]): readonly BaseView[] {
  const asks = (name: Question): boolean => questions.some(({ question }) => question === name);
  return asks('form') && !asks('picture') ? ['front'] : [];
}
