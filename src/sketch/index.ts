export type * from './api.ts';
export { type EvaluateOptions, evaluateForm } from './evaluate/evaluate-form.ts';
export type { Form } from './form/form.ts';
export { readForm } from './form/read-form.ts';
export { type DescribedParameter, describeForm, type FormDescription } from './parameters/describe-form.ts';
export { type ReadParameterOptions, readParameterValues } from './parameters/read-parameter-values.ts';
