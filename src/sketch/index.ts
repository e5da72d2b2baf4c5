export type * from './api.ts';
export { evaluateForm } from './evaluate/evaluate-form.ts';
export type { Form } from './form/form.ts';
export { readForm } from './form/read-form.ts';
export { grainAt } from './grain-at.ts';
export { mirrorPart } from './mirror-part.ts';
export { type DescribedParameter, describeForm } from './parameters/describe-form.ts';
export { readParameterValues } from './parameters/read-parameter-values.ts';
