import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import { type DescribedParameter, describeForm, evaluateForm, type Sketch } from '../../sketch/index.ts';
import type { NumericParameter } from '../cures/typed-figure.ts';
import type { Design } from '../design-schema.ts';
import { formOfDesign, thicknessOfDesign, valuesOfDesign } from '../form-of-design.ts';
import { lengthAt } from './length-at.ts';

/** A parameter that can give way so that a part comes out as long as it was measured. */
export interface LengthDriver {
  readonly parameter: string;
  readonly label: string;
}

/** Share of a parameter's range by which it is moved to see what hangs on it. */
const NUDGE = 1e-3;
/** The length follows where it changes by at least this share of what the parameter does. */
const FOLLOWS = 0.05;
/** What hardly moves the length has to move far, and much else with it: it counts as so many parts. */
const LEADS = 0.5;
const WEAK = 10;
/** A part that is cut already is not to change: it counts as so many. */
const CUT = 100;

/**
 * Which lengths of the form the length of a part hangs on, best to give way first: those that change the fewest other things, parts that are cut
 * already least of all; the top and the levellers count as parts. Problems: those of the design; `design.unknown-part`,
 * `design.measured-length` where none is left to give way.
 */
export function lengthDrivers(design: Design, part: string): Result<readonly LengthDriver[]> {
  const read = formOfDesign(design);
  if (!read.ok) return read;
  const form = read.value;
  const inForce = valuesOfDesign(design, form);
  if (!inForce.ok) return inForce;
  const measured = thicknessOfDesign(design);
  if (!measured.ok) return measured;
  const [values, thickness] = [inForce.value, measured.value];
  const before = evaluateForm(form, values, { thickness });
  if (!before.ok) return before;
  const at = lengthAt(form, thickness);
  const length = at(part, values);
  if (length === undefined) return fail(strange(part, before.value));
  const cut = new Set(Object.keys(design.cut ?? {}));
  const taken = new Set([
    ...Object.keys(design.measured.parameters ?? {}),
    ...Object.entries(design.measured.length ?? {}).flatMap(([of, { by }]) => (of === part ? [] : [by])),
  ]);
  const drivers = describeForm(form)
    .parameters.filter((each) => isLength(each) && !taken.has(each.name))
    .flatMap((parameter) => {
      const { least, most, name, label } = parameter as NumericParameter;
      const now = Number(values[name]);
      const by = (most - least) * NUDGE * (now + (most - least) * NUDGE > most ? -1 : 1);
      const moved = { ...values, [name]: now + by };
      const after = evaluateForm(form, moved, { thickness });
      const then = at(part, moved);
      if (!after.ok || then === undefined || Math.abs(then - length) < FOLLOWS * Math.abs(by)) return [];
      const weak = Math.abs(then - length) < LEADS * Math.abs(by) ? WEAK : 0;
      return [{ parameter: name, label, cost: weak + costOf(before.value, after.value, part, cut) }];
    })
    .toSorted((a, b) => a.cost - b.cost)
    .map(({ parameter, label }) => ({ parameter, label }));
  return drivers.length > 0 ? ok(drivers) : fail(fixed(part));
}

function strange(found: string, { parts }: Sketch): Problem {
  const expected = `one of: ${parts.map(({ name }) => name).join(', ')}`;
  const message = `The form draws no part called "${found}" at these parameters: expected ${expected}.`;
  return { code: 'design.unknown-part', message, path: `measured.length.${found}`, found, expected };
}

function fixed(part: string): Problem {
  const message = `${part}.length: no length of the form that is not measured already can give way to it; expected one measure less.`;
  return { code: 'design.measured-length', message, path: `measured.length.${part}`, found: part };
}

const isLength = ({ kind }: DescribedParameter): boolean => kind === 'length';

function costOf(before: Sketch, after: Sketch, own: string, cut: ReadonlySet<string>): number {
  const parts = before.parts.filter((part) => {
    const then = after.parts.find(({ name }) => name === part.name);
    return part.name !== own && then !== undefined && printOf(part) !== printOf(then);
  });
  const others = [
    sizesOf(before)?.some((size, at) => size !== sizesOf(after)?.[at]) ?? false,
    before.base?.levellers !== after.base?.levellers,
  ];
  const changed = parts.reduce((sum, { name }) => sum + (cut.has(name) ? CUT : 1), 0);
  return changed + others.filter(Boolean).length;
}

const printOf = ({ region, thickness }: Sketch['parts'][number]): string =>
  JSON.stringify([region, thickness]);

const sizesOf = ({ base }: Sketch): readonly number[] | undefined =>
  base && [base.top.length, base.top.width, base.top.thickness];
