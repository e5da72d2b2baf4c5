import { formatAngle, formatLength, type LengthUnit, parseAngle, parseLength } from '../measure/index.ts';
import { type DescribedParameter, describeForm, type Form } from '../sketch/index.ts';
import type { Design } from './design-schema.ts';

/**
 * Every parameter of a form at its default, as a maker would type it. In inches a length goes to the nearest 1/16 in that
 * lies in its range, so that a design in inches begins with figures that a rule shows.
 */
export function defaultParameters(form: Form, unit: LengthUnit): Design['parameters'] {
  return Object.fromEntries(
    describeForm(form).parameters.map((parameter) => [parameter.name, typedDefault(parameter, unit)]),
  );
}

function typedDefault(parameter: DescribedParameter, unit: LengthUnit): string | number | boolean {
  switch (parameter.kind) {
    case 'length':
      return typedLength(parameter, unit);
    case 'angle':
      return typedAngle(parameter.default);
    case 'ratio':
    case 'count':
    case 'choice':
    case 'yes-no':
      return parameter.default;
    default:
      return parameter satisfies never;
  }
}

function typedLength(
  { default: mm, least, most }: { readonly default: number; readonly least: number; readonly most: number },
  unit: LengthUnit,
): string {
  if (unit === 'in') {
    const text = formatLength(mm, { unit: 'in', denominator: 16 });
    const read = parseLength(text, { unit });
    if (read.ok && read.value >= least && read.value <= most) return text;
  }
  return `${plain(mm)} mm`;
}

/** Degrees where they read back alike, which they do for every figure that a form's author types. */
function typedAngle(rad: number): string {
  for (const decimals of [0, 1, 2, 3, 6]) {
    const text = formatAngle(rad, { unit: 'deg', decimals });
    const read = parseAngle(text);
    if (read.ok && Math.abs(read.value - rad) < 1e-9) return text;
  }
  return formatAngle(rad, { unit: 'deg', decimals: 9 });
}

function plain(value: number): string {
  return String(Number(value.toFixed(6)));
}
