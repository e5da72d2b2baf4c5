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
import { withMeasuredLengths } from './measured-length/with-measured-lengths.ts';
import { nameParameters } from './parameters-behind.ts';
import { measureReader } from './typed-measures.ts';

/** How problems call the form's text inside a design, until they are shown at their place in the design's own file. */
const FORM = 'form';

/** Thickness of a part, mm. */
const THICKNESS = { least: 1, most: 300 } as const;

/**
 * The form that a design carries. Problem paths lead to the line of the form's text in the design; `design.form-differs`
 * where the design calls it otherwise than its text does.
 */
export function formOfDesign(design: Design): Result<Form> {
  const read = inDesign(readForm(design.form.text.join('\n'), FORM));
  if (!read.ok) return read;
  const problems = (['name', 'version'] as const).flatMap((key): Problem[] => {
    const [stated, own] = [design.form[key], read.value[key]];
    return stated === own ? [] : [differs(key, stated, own)];
  });
  return problems.length > 0 ? fail(...problems) : read;
}

/** What a design says of its form must be what the form's text says: which of the two was meant cannot be told. */
function differs(key: 'name' | 'version', stated: string | number, own: string | number): Problem {
  const found = JSON.stringify(stated);
  const expected = `${JSON.stringify(own)}, the ${key} in the form's own text below it`;
  const message = `form.${key}: found ${found}, expected ${expected}.`;
  return { code: 'design.form-differs', message, path: `form.${key}`, found, expected };
}

/** What parameters are to be and what the wood really came to, as typed: of a design, or as it was when a part was cut. */
export type Decided = Pick<Design, 'parameters' | 'measured'>;

/**
 * The parameters in force, in internal units: as measured, as lengths that were measured ask for, otherwise as decided. Problem paths begin with `parameters`
 * or `measured`.
 */
export function valuesOfDesign(
  design: Design,
  form: Form,
  { parameters, measured }: Decided = design,
): Result<Readonly<Record<string, ParameterValue>>> {
  const own = measured.parameters ?? {};
  const read = inDesign(readParameterValues(form, { ...parameters, ...own }, { unit: design.units.length }));
  if (read.ok) {
    const thickness = thicknessOfDesign(design, { parameters, measured });
    return thickness.ok
      ? withMeasuredLengths(design, form, read.value, measured, thickness.value)
      : thickness;
  }
  return fail(
    ...read.problems.map((problem) => {
      const name = /^parameters\.(.+)$/.exec(problem.path ?? '')?.[1];
      return name !== undefined && Object.hasOwn(own, name)
        ? { ...problem, path: `measured.parameters.${name}` }
        : problem;
    }),
  );
}

/** Thicknesses that parts really came to, mm; problem paths begin with `measured.thickness`. */
export function thicknessOfDesign(
  design: Design,
  { measured }: Decided = design,
): Result<Readonly<Record<string, number>>> {
  const reader = measureReader(design.units.length);
  const read = Object.entries(measured.thickness ?? {}).map(
    ([part, typed]) => [part, reader.length(typed, `measured.thickness.${part}`, THICKNESS)] as const,
  );
  return reader.problems.length > 0 ? fail(...reader.problems) : ok(Object.fromEntries(read));
}

export function sketchOfDesign(
  design: Design,
  form: Form,
  values: Readonly<Record<string, ParameterValue>>,
  decided: Decided = design,
): Result<Sketch> {
  const thickness = thicknessOfDesign(design, decided);
  if (!thickness.ok) return thickness;
  const sketch = evaluateForm(form, values, { style: lengthStyleOf(design), thickness: thickness.value });
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
