import type { Form } from '../form/form.ts';
import type { Parameter } from '../schema/parameter.ts';

/** A parameter with its name: label, kind, default, range or options, and its line of help. Figures in mm, rad or plain. */
export type DescribedParameter = Parameter & { readonly name: string };

export interface FormDescription {
  readonly name: string;
  readonly version: number;
  readonly title: string;
  readonly about: string;
  /** In the order in which the form declares them. */
  readonly parameters: readonly DescribedParameter[];
}

/** What a form is and what the maker decides in it. */
export function describeForm(form: Form): FormDescription {
  const { name, version, title, about, data } = form;
  const parameters = Object.entries(data.parameters).map(([key, parameter]) => ({ ...parameter, name: key }));
  return { name, version, title, about, parameters };
}
