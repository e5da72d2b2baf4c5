import { ok, type Quantity, type Result } from '../core/index.ts';
import { areaOfRegions, symmetricDifference } from '../geometry/index.ts';
import {
  describeForm,
  type Form,
  type KeyDimension,
  type Sketch,
  type SketchedPart,
} from '../sketch/index.ts';
import { compute } from './compute.ts';
import { defaultParameters } from './default-parameters.ts';
import type { Design } from './design-schema.ts';
import { formOfDesign } from './form-of-design.ts';
import { nextRevision } from './next-revision.ts';
import { linesOfForm } from './start-design.ts';

/** What a newer form changes in a design. */
export type RenewalChange =
  | {
      readonly kind: 'parameter-added';
      readonly name: string;
      readonly label: string;
      readonly value: string;
    }
  | {
      readonly kind: 'parameter-dropped';
      readonly name: string;
      readonly label: string;
      readonly value: string;
    }
  | { readonly kind: 'part-added' | 'part-dropped'; readonly part: string; readonly label: string }
  | {
      readonly kind: 'size';
      readonly part: string;
      readonly name: string;
      readonly label: string;
      readonly before: Quantity | undefined;
      readonly after: Quantity | undefined;
    }
  /** The outline differs, by so much area, mm². */
  | { readonly kind: 'outline'; readonly part: string; readonly label: string; readonly area: number };

export interface Renewal {
  /** With the new form and the next revision; the very design given where the form is the same. */
  readonly design: Design;
  readonly changes: readonly RenewalChange[];
}

/** Areas that differ by less than this, mm², are one: a line 0.01 mm wide along 1 m. */
const SAME_AREA = 10;
/** Sizes that differ by less than this, mm or rad, are one: no paper shows it. */
const SAME_SIZE = 1e-6;

/**
 * A design with another version of its form, and what that changes. Values that the new form knows are kept, others are
 * dropped; new parameters take their defaults. The grids stay pinned. Problems: a value that the new form refuses.
 */
export function renewDesign(
  before: Design,
  next: { readonly form: Form; readonly text: string },
  today: string,
): Result<Renewal> {
  const text = linesOfForm(next.text);
  if (text.join('\n') === before.form.text.join('\n')) return ok({ design: before, changes: [] });
  const oldForm = formOfDesign(before);
  if (!oldForm.ok) return oldForm;
  const known = new Set(describeForm(next.form).parameters.map(({ name }) => name));
  const kept = Object.fromEntries(Object.entries(before.parameters).filter(([name]) => known.has(name)));
  const defaults = defaultParameters(next.form, before.units.length);
  const draft: Design = {
    ...before,
    revision: nextRevision(before.revision, today),
    form: { name: next.form.name, version: next.form.version, text },
    parameters: { ...defaults, ...kept },
  };
  const was = compute(before, { wanted: { patterns: [] } });
  if (!was.ok) return was;
  const is = compute(draft, { wanted: { patterns: [] } });
  if (!is.ok) return is;
  const names = new Set(is.value.parts.map(({ part }) => part.name));
  const patterns = draft.patterns.filter(({ part }) => names.has(part));
  const fresh = is.value.parts.map(
    ({ part }) => ({ part: part.name, view: 'all', mirrored: false }) as const,
  );
  return ok({
    design: { ...draft, patterns: patterns.length > 0 ? patterns : fresh },
    changes: [
      ...parameterChanges(oldForm.value, next.form, before, draft),
      ...partChanges(was.value.sketch, is.value.sketch),
    ],
  });
}

function parameterChanges(oldForm: Form, newForm: Form, before: Design, after: Design): RenewalChange[] {
  const labels = (form: Form) =>
    new Map(describeForm(form).parameters.map(({ name, label }) => [name, label]));
  const [old, fresh] = [labels(oldForm), labels(newForm)];
  const added = [...fresh].filter(([name]) => !old.has(name));
  const dropped = [...old].filter(([name]) => !fresh.has(name));
  return [
    ...added.map(([name, label]) => ({
      kind: 'parameter-added' as const,
      name,
      label,
      value: String(after.parameters[name]),
    })),
    ...dropped.map(([name, label]) => ({
      kind: 'parameter-dropped' as const,
      name,
      label,
      value: String(before.parameters[name] ?? 'the usual'),
    })),
  ];
}

function partChanges(was: Sketch, is: Sketch): RenewalChange[] {
  const find = (sketch: Sketch, name: string) => sketch.parts.find((part) => part.name === name);
  const added = is.parts.filter(({ name }) => !find(was, name));
  const changes = was.parts.flatMap((part): RenewalChange[] => {
    const after = find(is, part.name);
    if (!after) return [{ kind: 'part-dropped', part: part.name, label: part.label }];
    return [...sizeChanges(part, after), ...outlineChange(part, after)];
  });
  return [
    ...added.map(({ name, label }) => ({ kind: 'part-added' as const, part: name, label })),
    ...changes,
  ];
}

function sizeChanges(was: SketchedPart, is: SketchedPart): RenewalChange[] {
  const sizes = (part: SketchedPart) =>
    new Map<string, { label: string; size: Quantity }>([
      ['thickness', { label: 'Thickness', size: { value: part.thickness, unit: 'mm' } }],
      ...part.dimensions.map((each) => [each.name, { label: each.label, size: sizeOf(each) }] as const),
    ]);
  const [old, fresh] = [sizes(was), sizes(is)];
  return [...new Set([...old.keys(), ...fresh.keys()])].flatMap((name): RenewalChange[] => {
    const [before, after] = [old.get(name), fresh.get(name)];
    const label = (after ?? before)!.label;
    if (before && after && Math.abs(before.size.value - after.size.value) < SAME_SIZE) return [];
    return [{ kind: 'size', part: was.name, name, label, before: before?.size, after: after?.size }];
  });
}

function sizeOf({ kind, value }: KeyDimension): Quantity {
  return { value, unit: kind === 'angle' ? 'rad' : 'mm' };
}

function outlineChange(was: SketchedPart, is: SketchedPart): RenewalChange[] {
  const area = areaOfRegions(symmetricDifference([was.region], [is.region]));
  return area < SAME_AREA ? [] : [{ kind: 'outline', part: was.name, label: 'Outline', area }];
}
