import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import { describeForm } from '../../sketch/index.ts';
import { type NumericParameter, type TypedFigure, typedFigure } from '../cures/typed-figure.ts';
import type { Design } from '../design-schema.ts';
import { formOfDesign, valuesOfDesign } from '../form-of-design.ts';
import { type Memo, remember } from '../memo.ts';

/** A parameter that a study goes through: mm, rad, a plain number; `count` values from one to the other, both among them. */
export interface StudyAxis {
  readonly parameter: string;
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

/** An axis as it is shown: what is typed for each of its values. */
export interface StudyScale {
  readonly parameter: string;
  readonly label: string;
  readonly values: readonly TypedFigure[];
}

/** One design of a study. */
export interface StudyCell {
  /** Numbers of its values on each axis, from 0. */
  readonly at: readonly number[];
  readonly design: Design;
  /** What it changes in the design that is studied, as typed. */
  readonly parameters: Readonly<Record<string, string | number>>;
}

export interface StudyGrid {
  readonly scales: readonly StudyScale[];
  /** Row by row: the first axis runs across, the second down. Nothing is computed yet. */
  readonly cells: readonly StudyCell[];
}

const MOST_VALUES = 9;
/** What round values are multiples of: whole millimetres or sixteenths, half degrees, hundredths (common practice). */
const STEPS = { mm: 1, in: 25.4 / 16, angle: Math.PI / 360, ratio: 0.01, count: 1 } as const;

/**
 * A wall of designs across the ranges of one or two parameters, each like the one given but for those. Values are rounded to what is usually typed, within
 * the parameter's range; equal ones count once. Problems: `study.axis` for a parameter that is none or cannot be gone through; the design's own.
 */
export function studyGrid(
  design: Design,
  axes: readonly StudyAxis[],
  memo: Memo = new Map(),
): Result<StudyGrid> {
  if (axes.length < 1 || axes.length > 2) throw new RangeError('a study has one axis or two');
  const parameters = parametersOf(design, memo);
  if (!parameters.ok) return parameters;
  const scales = axes.map((axis) => scaleOf(axis, parameters.value, design));
  const refused = scales.flatMap((scale) => ('code' in scale ? [scale] : []));
  if (refused.length > 0) return fail(...refused);
  const [across, down] = scales as readonly StudyScale[];
  const rows: readonly (number | undefined)[] = down === undefined ? [undefined] : [...down.values.keys()];
  const cells = rows.flatMap((row) =>
    across!.values.map((figure, column): StudyCell => {
      const own = { [across!.parameter]: figure.typed };
      const set = row === undefined ? own : { ...own, [down!.parameter]: down!.values[row]!.typed };
      return {
        at: row === undefined ? [column] : [column, row],
        design: { ...design, parameters: { ...design.parameters, ...set } },
        parameters: set,
      };
    }),
  );
  return ok({ scales: scales as readonly StudyScale[], cells });
}

/** What can be studied of a design: every figure of its form but those that were measured, with the range that a study usually takes: a quarter of all round what it is. */
export function studyAxes(
  design: Design,
  memo: Memo = new Map(),
): Result<readonly (StudyAxis & { readonly label: string; readonly kind: NumericParameter['kind'] })[]> {
  const parameters = parametersOf(design, memo);
  const form = formIn(design, memo);
  if (!parameters.ok || !form.ok)
    return parameters.ok ? (form as Extract<typeof form, { ok: false }>) : parameters;
  const values = valuesOfDesign(design, form.value);
  if (!values.ok) return values;
  return ok(
    parameters.value.map((parameter) => {
      const { name, label, kind, least, most } = parameter;
      const now = values.value[name] as number;
      const reach = (most - least) / 4;
      const [from, to] =
        kind === 'count' ? [least, most] : [Math.max(least, now - reach), Math.min(most, now + reach)];
      return {
        parameter: name,
        label,
        kind,
        from,
        to,
        count: kind === 'count' ? Math.min(MOST_VALUES, most - least + 1) : 5,
      };
    }),
  );
}

function formIn(design: Design, memo: Memo) {
  return remember(memo, { stage: 'form', inputs: [design.form] }, () => formOfDesign(design));
}

function parametersOf(design: Design, memo: Memo): Result<readonly NumericParameter[]> {
  const form = formIn(design, memo);
  if (!form.ok) return form;
  const measured = design.measured.parameters ?? {};
  return ok(
    describeForm(form.value).parameters.filter(
      (each): each is NumericParameter => 'least' in each && !Object.hasOwn(measured, each.name),
    ),
  );
}

function scaleOf(
  { parameter: name, from, to, count }: StudyAxis,
  parameters: readonly NumericParameter[],
  design: Design,
): StudyScale | Problem {
  const parameter = parameters.find((each) => each.name === name);
  if (parameter === undefined) {
    const message = `${name} is no figure of this form that could be gone through.`;
    return {
      code: 'study.axis',
      message,
      found: name,
      expected: parameters.map((each) => each.name).join(', '),
    };
  }
  const { least, most, kind, label } = parameter;
  const unit = design.units.length;
  const step = kind === 'length' ? STEPS[unit] : STEPS[kind];
  const number = Math.min(MOST_VALUES, Math.max(1, Math.round(count)));
  const figures = Array.from({ length: number }, (_, at) => {
    const value = number === 1 ? (from + to) / 2 : from + ((to - from) * at) / (number - 1);
    const rounded = Math.round(value / step) * step;
    return Math.min(most, Math.max(least, rounded));
  });
  const values = [...new Set(figures)].map((value) => typedFigure(parameter, value, unit));
  return { parameter: name, label, values };
}
