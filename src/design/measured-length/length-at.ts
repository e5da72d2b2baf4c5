import { lengthOfPart } from '../../base/index.ts';
import { evaluateForm, type Form, type ParameterValue } from '../../sketch/index.ts';

export type Values = Readonly<Record<string, ParameterValue>>;

/** Length of a part, mm, at values of the parameters; undefined where the form refuses them or the part is not made. */
export type LengthAt = (part: string, values: Values) => number | undefined;

/** `thickness` as measured, mm, by the form's name of the part. */
export function lengthAt(form: Form, thickness: Readonly<Record<string, number>>): LengthAt {
  return (part, values) => {
    const sketch = evaluateForm(form, values, { thickness });
    return sketch.ok ? lengthOfPart(sketch.value, part) : undefined;
  };
}
