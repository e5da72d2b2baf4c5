import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import { FIGURE_ROUNDING } from '../../geometry/index.ts';
import { formatAngle, formatLength, type LengthStyle } from '../../measure/index.ts';
import type { ParameterValue } from '../api.ts';
import { noSuch } from '../form/complaints.ts';
import type { Form } from '../form/form.ts';
import type { Parameter } from '../schema/parameter.ts';

type Figures = Extract<Parameter, { least: number }>;

/**
 * Every parameter of a form in force: values given, defaults for the rest. A name that the form does not have, a value of
 * another kind or outside its range is a problem that says what is possible.
 */
export function checkRanges(
  form: Form,
  values: Readonly<Record<string, ParameterValue>>,
  style: LengthStyle = { unit: 'mm', decimals: 1 },
): Result<Readonly<Record<string, ParameterValue>>> {
  const { parameters } = form.data;
  const problems: Problem[] = [];
  for (const name of Object.keys(values)) {
    if (!Object.hasOwn(parameters, name)) problems.push(unknownParameter(name, form));
  }
  const inForce = Object.entries(parameters).map(([name, parameter]): [string, ParameterValue] => {
    const value = Object.hasOwn(values, name) ? values[name]! : parameter.default;
    const problem = checkValue(name, parameter, value, style);
    if (problem !== undefined) problems.push(problem);
    return [name, value];
  });
  return problems.length > 0 ? fail(...problems) : ok(Object.fromEntries(inForce));
}

export function unknownParameter(name: string, form: Form): Problem {
  const message = noSuch('parameter', name, Object.keys(form.data.parameters));
  const found = name.slice(0, 40);
  return {
    code: 'parameter.unknown',
    message,
    path: `parameters.${found}`,
    found,
    expected: `a parameter of ${form.name}`,
  };
}

function checkValue(
  name: string,
  parameter: Parameter,
  value: ParameterValue,
  style: LengthStyle,
): Problem | undefined {
  const refuse = (code: string, message: string, found: string, expected: string): Problem => ({
    code,
    message,
    path: `parameters.${name}`,
    found,
    expected,
  });
  const { label } = parameter;
  switch (parameter.kind) {
    case 'yes-no':
      if (typeof value === 'boolean') return undefined;
      return refuse('parameter.kind', `${label} is yes or no, not ${value}`, `${value}`, 'yes or no');
    case 'choice': {
      if (typeof value === 'string' && Object.hasOwn(parameter.options, value)) return undefined;
      const expected = `one of ${Object.keys(parameter.options).join(', ')}`;
      return refuse('parameter.option', `${label} is ${expected}, not "${value}"`, `${value}`, expected);
    }
    case 'length':
    case 'angle':
    case 'ratio':
    case 'count': {
      if (typeof value !== 'number' || !Number.isFinite(value)) {
        return refuse(
          'parameter.kind',
          `${label} is a figure, not ${value}`,
          `${value}`,
          `a figure (${parameter.kind})`,
        );
      }
      // A limit typed in another unit (0.1 in, 7°) may be carried past itself by rounding.
      const slack = FIGURE_ROUNDING * Math.max(Math.abs(parameter.least), Math.abs(parameter.most));
      const words = inWords(value, parameter, style);
      const expected = `from ${inWords(parameter.least, parameter, style)} to ${inWords(parameter.most, parameter, style)}`;
      if (value < parameter.least - slack || value > parameter.most + slack) {
        return refuse('parameter.range', `${label} is ${words}: it can be ${expected}`, words, expected);
      }
      if (parameter.kind !== 'count' || Number.isInteger(value)) return undefined;
      return refuse('parameter.kind', `${label} is a whole number, not ${words}`, words, 'a whole number');
    }
    default:
      return parameter satisfies never;
  }
}

function inWords(value: number, parameter: Figures, style: LengthStyle): string {
  if (parameter.kind === 'length') {
    const text = formatLength(value, style);
    return style.unit === 'mm' ? text.replace(/\.0+ /, ' ') : text;
  }
  if (parameter.kind === 'angle')
    return formatAngle(value, { unit: 'deg', decimals: 2 }).replace(/\.?0+°$/, '°');
  return `${Number(value.toPrecision(6))}`;
}
