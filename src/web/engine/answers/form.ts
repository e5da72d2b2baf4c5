import { describeForm, isBaseForm, type ParameterValue, readForm } from '../../../sketch/index.ts';
import { type Answering, madeOf } from './answering.ts';

type Described = ReturnType<typeof describeForm>;

/** What the maker decides in the form, and every parameter in force (mm, rad): of the last design that could be used. */
export interface FormInHand extends Described {
  /** Does it place its parts in space? */
  readonly isBase: boolean;
  readonly values: Readonly<Record<string, ParameterValue>>;
}

/** The form of the design in hand; answered also while its figures cannot be used. */
export function form({ design, looked }: Answering, _: undefined): FormInHand | undefined {
  const described = madeOf(design.form, 'form', () => {
    const read = readForm(design.form.text.join('\n'), design.form.name);
    return read.ok ? describeForm(read.value) : undefined;
  });
  if (described === undefined) return undefined;
  const values = looked?.sketch.parameters ?? {};
  return madeOf(looked?.sketch ?? design.form, 'values', () => ({
    ...described,
    isBase: isBaseForm(design.form.text.join('\n')),
    values,
  }));
}
