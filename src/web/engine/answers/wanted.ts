import type { BaseView, Wanted } from '../../../design/index.ts';
import type { AskedQuestion, Question } from '../protocol.ts';
import type { PictureOptions } from './picture.ts';

/** Questions that are answered before patterns are laid on sheets: what one looks at while a figure changes. */
const EARLY: ReadonlySet<Question> = new Set([
  'comb',
  'form',
  'picture',
  'findings',
  'parts',
  'handles',
  'routing',
]);

export const isEarly = ({ question }: AskedQuestion): boolean => EARLY.has(question);

/** What nobody waits for: answered once the maker is still for a moment. */
const LAST: ReadonlySet<Question> = new Set(['thumbnail', 'meshes']);

export const isLast = ({ question }: AskedQuestion): boolean => LAST.has(question);

/** The views of the base that the questions ask for. */
export function viewsWanted(questions: readonly AskedQuestion[]): NonNullable<Wanted['views']> {
  const sides = questions.flatMap(({ question, options }): readonly BaseView[] => {
    if (question !== 'picture') return [];
    const { of } = options as PictureOptions;
    return 'side' in of ? [of.side] : [];
  });
  return [...new Set(sides)];
}
