import { fail, ok, type Problem, type Result } from '../core/index.ts';
import {
  evaluateForm,
  type Form,
  type ParameterValue,
  readForm,
  readParameterValues,
  type Sketch,
} from '../sketch/index.ts';
import type { Design } from './design-schema.ts';
import { lengthStyleOf } from './length-style.ts';
import { nameParameters } from './parameters-behind.ts';

/** How problems call the form's text inside a design, until they are shown at their place in the design's own file. */
const FORM = 'form';

/** The form that a design carries. Problem paths lead to the line of the form's text in the design. */
export function formOfDesign(design: Design): Result<Form> {
  return inDesign(readForm(design.form.text.join('\n'), FORM));
}

/** The parameters in force, in internal units; problem paths begin with `parameters`. */
export function valuesOfDesign(design: Design, form: Form): Result<Readonly<Record<string, ParameterValue>>> {
  return inDesign(readParameterValues(form, design.parameters, { unit: design.units.length }));
}

export function sketchOfDesign(
  design: Design,
  form: Form,
  values: Readonly<Record<string, ParameterValue>>,
): Result<Sketch> {
  const sketch = evaluateForm(form, values, { style: lengthStyleOf(design) });
  if (sketch.ok) return sketch;
  return inDesign(fail(...sketch.problems.map((each) => nameParameters(each, form, design.parameters))));
}

function inDesign<T>(result: Result<T>): Result<T> {
  return result.ok ? ok(result.value) : fail(...result.problems.map(placeInDesign));
}

/** A place in the form's text becomes a path to that line in the design. */
function placeInDesign(problem: Problem): Problem {
  const { file, line, column, ...rest } = problem;
  if (file !== FORM || line === undefined) return rest;
  const at = column === undefined ? `line ${line}` : `line ${line}, column ${column}`;
  return { ...rest, path: `form.text.${line - 1}`, message: `${problem.message} (${at} of the form)` };
}
