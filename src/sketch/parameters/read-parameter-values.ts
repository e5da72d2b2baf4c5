import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import type { LengthUnit } from '../../measure/index.ts';
import type { ParameterValue } from '../api.ts';
import type { Form } from '../form/form.ts';
import type { Parameter } from '../schema/parameter.ts';
import { checkRanges, unknownParameter } from './check-ranges.ts';
import { readQuantity } from './read-quantity.ts';

export interface ReadParameterOptions {
  /** What a bare length means. */
  readonly unit: LengthUnit;
  /** The file the values come from, for problems. */
  readonly file?: string;
}

/**
 * What a maker gave for a form's parameters, as texts (`28 3/4 in`, `8°`, `yes`), numbers or truth values, in internal units: every
 * parameter of the form, defaults for those not given. Otherwise every value that is unknown, unreadable or out of its range.
 */
export function readParameterValues(
  form: Form,
  raw: Readonly<Record<string, unknown>>,
  options: ReadParameterOptions,
): Result<Readonly<Record<string, ParameterValue>>> {
  const problems: Problem[] = [];
  const values: [string, ParameterValue][] = [];
  for (const [name, given] of Object.entries(raw)) {
    const parameter = Object.hasOwn(form.data.parameters, name) ? form.data.parameters[name] : undefined;
    if (parameter === undefined) {
      problems.push(unknownParameter(name, form));
      continue;
    }
    const value = readValue(name, parameter, given, options);
    if (value.ok) values.push([name, value.value]);
    else problems.push(...value.problems);
  }
  const style = options.unit === 'in' ? ({ unit: 'in', denominator: 64 } as const) : undefined;
  const inForce = checkRanges(form, Object.fromEntries(values), style);
  if (!inForce.ok) problems.push(...inForce.problems);
  if (inForce.ok && problems.length === 0) return ok(inForce.value);
  const { file } = options;
  return fail(...problems.map((problem) => (file === undefined ? problem : { ...problem, file })));
}

function readValue(
  name: string,
  parameter: Parameter,
  given: unknown,
  options: ReadParameterOptions,
): Result<ParameterValue> {
  const path = `parameters.${name}`;
  const text = typeof given === 'number' ? `${given}` : given;
  const refuse = (expected: string): Result<never> => {
    const found =
      typeof given === 'string' ? `"${given.slice(0, 40)}"` : given === null ? 'nothing' : typeof given;
    return fail({
      code: 'parameter.kind',
      message: `${parameter.label} is ${expected}, not ${found}`,
      path,
      found,
      expected,
    });
  };
  switch (parameter.kind) {
    case 'yes-no':
      if (typeof given === 'boolean') return ok(given);
      if (text === 'yes' || text === 'no') return ok(text === 'yes');
      return refuse('yes or no');
    case 'choice':
      return typeof given === 'string'
        ? ok(given)
        : refuse(`one of ${Object.keys(parameter.options).join(', ')}`);
    case 'length':
    case 'angle':
    case 'ratio':
    case 'count': {
      if (typeof text !== 'string') return refuse(`a figure (${parameter.kind})`);
      const value = readQuantity(text, parameter.kind, options.unit);
      if (value.ok) return value;
      return fail(
        ...value.problems.map((problem) => ({
          ...problem,
          path,
          message: `${parameter.label}: ${problem.message}`,
        })),
      );
    }
    default:
      return parameter satisfies never;
  }
}
