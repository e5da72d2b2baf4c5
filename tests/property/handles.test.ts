import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Vec } from '../../src/geometry/index.ts';
import {
  describeForm,
  evaluateForm,
  type Form,
  type Grip,
  gripHandle,
  type Handle,
  type ParameterValue,
  pullHandle,
  type Seen,
  settleHandle,
} from '../../src/sketch/index.ts';
import { BASE_FORMS, FORMS } from '../forms/forms.ts';

type Values = Readonly<Record<string, ParameterValue>>;

const ORIGIN = { x: 0, y: 0, z: 0 };
const ACROSS = { x: 1, y: 0, z: 0 };
const INTO = { x: 0, y: 1, z: 0 };
const UP = { x: 0, y: 0, z: 1 };
const VIEWS = {
  front: { origin: ORIGIN, x: ACROSS, y: UP },
  side: { origin: ORIGIN, x: INTO, y: UP },
  plan: { origin: ORIGIN, x: ACROSS, y: INTO },
} as const;
const STEPS = { length: 0.1, angle: Math.PI / 1800, ratio: 0.001 };

/** Conditional handles are there in some settings only: those are tried as well as the defaults. */
const SETTINGS: readonly Values[] = [
  {},
  { upper_rise: 20, stretcher: true, ends: 'wedged', slot: false, arch: false, taper: 'both' },
  { ends: 'cut', slot: true, taper: 'outer', roll: 'lean', seat: 'rectangle' },
];

function settingsOf(form: Form): readonly Values[] {
  const { parameters } = describeForm(form);
  return SETTINGS.map((setting) =>
    Object.fromEntries(
      Object.entries(setting).filter(([name, value]) => {
        const parameter = parameters.find((each) => each.name === name);
        return parameter !== undefined && typeof parameter.default === typeof value;
      }),
    ),
  ).filter((values) => evaluateForm(form, values).ok);
}

/** Every handle of a form in every view that it is for. */
function handlesOf(
  form: Form,
  values: Values,
): readonly { readonly handle: Handle; readonly seen: Seen | undefined }[] {
  const sketch = evaluateForm(form, values);
  const handles = sketch.ok ? (sketch.value.handles ?? []) : [];
  return handles.flatMap((handle): readonly { readonly handle: Handle; readonly seen: Seen | undefined }[] =>
    handle.of === 'part'
      ? [{ handle, seen: undefined }]
      : handle.views.map((view) => ({ handle, seen: VIEWS[view] })),
  );
}

const seenAt = ({ at }: Handle, seen: Seen | undefined): Vec =>
  'z' in at && seen !== undefined
    ? {
        x: at.x * seen.x.x + at.y * seen.x.y + at.z * seen.x.z,
        y: at.x * seen.y.x + at.y * seen.y.y + at.z * seen.y.z,
      }
    : { x: at.x, y: at.y };

/** Where the whole form, drawn anew, has the handle. */
function drawnAt(form: Form, values: Values, name: string, seen: Seen | undefined): Vec | undefined {
  const sketch = evaluateForm(form, values);
  const handle = sketch.ok ? sketch.value.handles?.find((each) => each.name === name) : undefined;
  return handle && seenAt(handle, seen);
}

const gripOf = (form: Form, values: Values, name: string): Grip => {
  const grip = gripHandle(form, values, name);
  if (!grip.ok) throw new Error(JSON.stringify(grip.problems));
  return grip.value;
};

const CASES = [...FORMS, ...BASE_FORMS].map((form) => [form.name, form] as const);
/** Shares of the ranges of up to six parameters, even over them. */
const SHARES = fc.array(
  fc.integer({ min: 0, max: 1000 }).map((each) => each / 1000),
  { minLength: 6, maxLength: 6 },
);

describe.each(CASES)('handles of %s', (_, form) => {
  const all = settingsOf(form).flatMap((values) =>
    handlesOf(form, values).map((each) => ({ ...each, values })),
  );

  it('has all that the form declares, in one setting or another', () => {
    expect(new Set(all.map(({ handle }) => handle.name))).toEqual(new Set(Object.keys(form.data.handles!)));
  });

  it('come to any place that their parameters reach, and back', () => {
    fc.assert(
      fc.property(fc.constantFrom(...all), SHARES, ({ handle, seen, values }, shares) => {
        const grip = gripOf(form, values, handle.name);
        const there = Object.fromEntries(
          grip.movers.map(({ name, least, most }, i) => [name, least + shares[i]! * (most - least)]),
        );
        const target = drawnAt(form, { ...values, ...there }, handle.name, seen);
        // A setting of which the form makes nothing is no place to go to.
        if (target === undefined) return;
        const pulled = pullHandle(grip, target, seen)!;
        expect(pulled.reached).toBe(true);
        expect(pulled.off).toBeLessThan(0.01);
        const start = seenAt(handle, seen);
        const back = pullHandle(gripOf(form, pulled.values, handle.name), start, seen)!;
        expect(back.reached).toBe(true);
        expect(Math.abs(back.off)).toBeLessThan(0.01);
      }),
      { numRuns: 25 },
    );
  });

  it('stay within ranges and checks wherever they are pulled, and no setting nearby comes nearer', () => {
    const far = fc.integer({ min: -600, max: 600 });
    fc.assert(
      fc.property(fc.constantFrom(...all), far, far, ({ handle, seen, values }, over, up) => {
        const grip = gripOf(form, values, handle.name);
        const start = seenAt(handle, seen);
        const target = { x: start.x + over, y: start.y + up };
        const pulled = pullHandle(grip, target, seen)!;
        for (const { name, least, most } of grip.movers) {
          expect(pulled.values[name]).toBeGreaterThanOrEqual(least);
          expect(pulled.values[name]).toBeLessThanOrEqual(most);
        }
        const sketch = evaluateForm(form, pulled.values);
        const codes = sketch.ok ? [] : sketch.problems.map(({ code }) => code);
        expect(codes.filter((code) => code === 'form.check' || code.startsWith('parameter.'))).toEqual([]);
        // Round about it in its parameters, by hundredths of their ranges: all that hold to the checks are as far off or farther.
        for (const nearby of neighbours(grip, pulled.values)) {
          const there = pullHandle(gripOf(form, nearby, handle.name), target, seen);
          const at = drawnAt(form, nearby, handle.name, seen);
          if (there === undefined || at === undefined || handle.along !== undefined) continue;
          expect(Math.hypot(at.x - target.x, at.y - target.y)).toBeGreaterThan(pulled.off - 0.1);
        }
      }),
      { numRuns: 15 },
    );
  });

  it('settle in figures that can be typed, the form whole', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...all),
        fc.integer({ min: -40, max: 40 }),
        ({ handle, seen, values }, by) => {
          const grip = gripOf(form, values, handle.name);
          const start = seenAt(handle, seen);
          const target = { x: start.x + by * 0.77, y: start.y + by * 0.43 };
          const pulled = pullHandle(grip, target, seen)!;
          const settled = settleHandle(grip, pulled, target, STEPS, seen === undefined ? {} : { seen })!;
          expect(evaluateForm(form, settled.values).ok).toBe(true);
          for (const { name, least, most } of grip.movers) {
            const value = settled.values[name] as number;
            const { kind } = form.data.parameters[name]!;
            const step = kind === 'angle' ? STEPS.angle : kind === 'length' ? STEPS.length : STEPS.ratio;
            const isRound = Math.abs(value / step - Math.round(value / step)) < 1e-6;
            expect(isRound || value === grip.values[name] || value === least || value === most).toBe(true);
          }
        },
      ),
      { numRuns: 10 },
    );
  });
});

function neighbours(grip: Grip, values: Values): readonly Values[] {
  return grip.movers.flatMap(({ name, least, most }) =>
    [-0.01, 0.01].flatMap((by) => {
      const value = (values[name] as number) + by * (most - least);
      return value < least || value > most ? [] : [{ ...values, [name]: value }];
    }),
  );
}
