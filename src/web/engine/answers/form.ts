import { describeForm, type ParameterValue, readForm } from '../../../sketch/index.ts';
import type { Answering } from './answering.ts';

type Described = ReturnType<typeof describeForm>;

/** What the maker decides in the form, and every parameter in force (mm, rad): of the last design that could be used. */
export interface FormInHand extends Described {
  readonly values: Readonly<Record<string, ParameterValue>>;
}

/** The form of the design in hand; answered also while its figures cannot be used. */
export function form({ design, computed }: Answering, _: undefined): FormInHand | undefined {
  const read = readForm(design.form.text.join('\n'), design.form.name);
  if (!read.ok) return undefined;
  return { ...describeForm(read.value), values: computed?.sketch.parameters ?? {} };
}
