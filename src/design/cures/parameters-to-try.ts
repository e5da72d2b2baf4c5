import {
  type DescribedParameter,
  describeForm,
  evaluateForm,
  type Form,
  type ParameterValue,
} from '../../sketch/index.ts';

type Values = Readonly<Record<string, ParameterValue>>;

/** Share of a parameter's range by which it is moved to see what hangs on it. */
const NUDGE = 0.01;

/**
 * The parameters of a form, those first that change the fewest parts, of these those first that change one of `parts`: what is decided
 * of one part alone is changed with the least harm. Figures first, then what is chosen; what changes nothing is left out.
 */
export function parametersToTry(
  form: Form,
  values: Values,
  parts: readonly string[],
): readonly DescribedParameter[] {
  const now = drawn(form, values);
  const ranked = describeForm(form).parameters.map((parameter, order) => {
    const changed = now === undefined ? undefined : changedBy(form, values, parameter, now);
    const concerned = changed?.parts.some((part) => parts.includes(part)) ?? false;
    return { parameter, order, changed, concerned };
  });
  return ranked
    .filter(({ changed }) => changed === undefined || changed.parts.length > 0 || changed.placed)
    .toSorted(
      (a, b) =>
        Number(isFigure(b.parameter)) - Number(isFigure(a.parameter)) ||
        Number(b.concerned) - Number(a.concerned) ||
        (a.changed?.parts.length ?? 0) - (b.changed?.parts.length ?? 0) ||
        a.order - b.order,
    )
    .map(({ parameter }) => parameter);
}

const isFigure = (parameter: DescribedParameter): boolean => 'least' in parameter;

interface Drawn {
  readonly parts: ReadonlyMap<string, string>;
  readonly base: string;
}

function drawn(form: Form, values: Values): Drawn | undefined {
  const sketch = evaluateForm(form, values);
  if (!sketch.ok) return undefined;
  const { parts, base } = sketch.value;
  return {
    parts: new Map(parts.map(({ name, region, thickness }) => [name, JSON.stringify([region, thickness])])),
    base: JSON.stringify(base),
  };
}

/** Which parts a parameter changes where it stands, and whether it moves any; undefined where it cannot be seen. */
function changedBy(
  form: Form,
  values: Values,
  parameter: DescribedParameter,
  now: Drawn,
): { readonly parts: readonly string[]; readonly placed: boolean } | undefined {
  for (const value of nudged(parameter, values[parameter.name])) {
    const then = drawn(form, { ...values, [parameter.name]: value });
    if (then === undefined) continue;
    const names = new Set([...now.parts.keys(), ...then.parts.keys()]);
    const parts = [...names].filter((name) => now.parts.get(name) !== then.parts.get(name));
    return { parts, placed: now.base !== then.base };
  }
  return undefined;
}

function nudged(parameter: DescribedParameter, value: ParameterValue | undefined): readonly ParameterValue[] {
  switch (parameter.kind) {
    case 'choice':
      return Object.keys(parameter.options).filter((option) => option !== value);
    case 'yes-no':
      return [value !== true];
    default: {
      const { least, most, kind } = parameter;
      const by = kind === 'count' ? 1 : (most - least) * NUDGE;
      const from = typeof value === 'number' ? value : parameter.default;
      return [from + by, from - by].filter((each) => each >= least && each <= most);
    }
  }
}
