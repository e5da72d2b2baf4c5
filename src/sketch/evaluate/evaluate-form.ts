import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import type { Vec } from '../../geometry/index.ts';
import type { LengthStyle } from '../../measure/index.ts';
import type { ParameterValue, Sketch, SketchedPart } from '../api.ts';
import type { Value } from '../expression/value-scope.ts';
import { inOrder } from '../form/complaints.ts';
import type { Form } from '../form/form.ts';
import { type AssembledOutline, assembleOutline } from '../outline/assemble-outline.ts';
import { makeOpening } from '../outline/make-opening.ts';
import { checkRanges } from '../parameters/check-ranges.ts';
import { openDesk } from './desk.ts';
import { failedChecks } from './failed-checks.ts';
import { makeAll } from './make-all.ts';
import { makeBase } from './make-base.ts';
import { makeHandle } from './make-handle.ts';
import { makePart } from './make-part.ts';
import type { Sheet } from './sheet.ts';

export interface EvaluateOptions {
  /** How lengths are written in messages; millimetres with one decimal unless given. */
  readonly style?: LengthStyle;
  /** Thicknesses, mm, that the wood of parts really came to, by the part's name: they go before what the form says. */
  readonly thickness?: Readonly<Record<string, number>>;
}

/**
 * A form at given parameters (internal units; those left out take their default): its parts with valid outlines, anticlockwise, holes
 * clockwise. Otherwise every problem found: a parameter beyond its range, a check of the form that fails, or a
 * construction that is impossible, with its place in the form and what would be possible.
 */
export function evaluateForm(
  form: Form,
  values: Readonly<Record<string, ParameterValue>>,
  options: EvaluateOptions = {},
): Result<Sketch> {
  const parameters = checkRanges(form, values, options.style);
  if (!parameters.ok) return parameters;
  const style = options.style ?? { unit: 'mm', decimals: 1 };
  const given = Object.entries(parameters.value).map(([name, value]) => [name, ok(value)] as const);
  const sheet: Sheet = {
    form,
    style,
    thickness: options.thickness ?? {},
    values: new Map<string, Result<Value>>(given),
    edges: new Map(),
  };
  makeAll(sheet);
  const failed = failedChecks(sheet);
  if (failed.length > 0) return fail(...inOrder(failed));
  const parts = makeParts(sheet);
  if (!parts.ok) return parts;
  const spec = form.data.base;
  const base = spec && makeBase(spec, sheet, parts.value);
  if (base?.ok === false) return fail(...inOrder(base.problems));
  const handles = makeHandles(sheet);
  const { name, version, title } = form;
  return ok({
    form: name,
    version,
    title,
    parameters: parameters.value,
    points: madeOf(sheet, 'point') as Readonly<Record<string, Vec>>,
    planes: madeOf(sheet, 'plane') as Sketch['planes'],
    parts: parts.value,
    ...(base === undefined ? {} : { base: base.value }),
    ...(handles === undefined ? {} : { handles }),
  });
}

/** A handle that cannot be made is none: the drawing does not need it. */
function makeHandles(sheet: Sheet): Sketch['handles'] {
  const { handles } = sheet.form.data;
  return (
    handles &&
    Object.entries(handles).flatMap(([name, spec]) => makeHandle(name, spec, openDesk(sheet)) ?? [])
  );
}

function makeParts(sheet: Sheet): Result<readonly SketchedPart[]> {
  const { data } = sheet.form;
  const outlines = new Map<string, Result<AssembledOutline>>();
  const outlineOf = (name: string): Result<AssembledOutline> => {
    const made = outlines.get(name) ?? assembleOutline(name, sheet);
    outlines.set(name, made);
    return made;
  };
  const stock = { outlineOf, openingOf: (name: string) => makeOpening(name, outlineOf, sheet) };
  const problems: Problem[] = [];
  const parts: SketchedPart[] = [];
  for (const name of Object.keys(data.parts)) {
    const made = makePart(name, stock, sheet);
    if (!made.ok) problems.push(...made.problems.filter((problem) => !problems.includes(problem)));
    else if (made.value !== 'absent') parts.push(made.value);
  }
  if (problems.length > 0) return fail(...inOrder(problems));
  if (parts.length > 0) return ok(parts);
  const { file, name } = sheet.form;
  return fail({
    code: 'form.absent',
    message: `${name} makes no part with these numbers`,
    file,
    line: 1,
    column: 1,
    path: 'parts',
  });
}

/** Everything of a kind that could be made, by name. What nothing needs and could not be made is left out. */
function madeOf(sheet: Sheet, type: 'point' | 'plane'): Readonly<Record<string, Value>> {
  const made = [...sheet.form.kinds].flatMap(([name, kind]) => {
    const value = kind.type === type ? sheet.values.get(name) : undefined;
    return value?.ok ? [[name, value.value] as const] : [];
  });
  return Object.fromEntries(made);
}
