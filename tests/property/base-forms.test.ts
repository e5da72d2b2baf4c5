import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { type StandingBase, standBase } from '../../src/base/index.ts';
import {
  findCollisions,
  loadSolidKernel,
  type SolidKernel,
  withSolids,
} from '../../src/base/solids/index.ts';
import { describeForm, evaluateForm, type Form } from '../../src/sketch/index.ts';
import { BASE_FORMS, type Values } from '../forms/forms.ts';
import { areaOfFace, bearing, extentOf, flatFacesOf, partsAt } from '../forms/standing-bases.ts';

const RUNS = 200;
/** Of so many settings one is looked at for how its ends bear and whether pieces collide: that takes ten times as long as all else. */
const ONE_IN = 8;

let kernel: SolidKernel;
beforeAll(async () => {
  kernel = await loadSolidKernel();
});

/** Any setting within the ranges of a form, each figure as likely as any other. */
function anySetting(form: Form): fc.Arbitrary<Values> {
  const arbitraries = describeForm(form).parameters.map((parameter) => {
    switch (parameter.kind) {
      case 'choice':
        return [parameter.name, fc.constantFrom(...Object.keys(parameter.options))] as const;
      case 'yes-no':
        return [parameter.name, fc.boolean()] as const;
      case 'count':
        return [parameter.name, fc.integer({ min: parameter.least, max: parameter.most })] as const;
      default: {
        const { least, most } = parameter;
        // Even over the range: fast-check's own figures crowd round 0.
        const share = fc.integer({ min: 0, max: 10_000 });
        return [parameter.name, share.map((each) => least + ((most - least) * each) / 10_000)] as const;
      }
    }
  });
  return fc.record(Object.fromEntries<fc.Arbitrary<number | string | boolean>>(arbitraries));
}

/** A base that stands at a setting, or what the form's own check says against it. */
function stand(form: Form, values: Values): StandingBase | string {
  const seen = `${form.name} at ${JSON.stringify(values)}`;
  const sketch = evaluateForm(form, values);
  if (!sketch.ok) {
    for (const { code, message } of sketch.problems) {
      expect(code, `${seen}: ${message}`).toBe('form.check');
      // What was asked, and what would do.
      expect(message.match(/\d/g)?.length, seen).toBeGreaterThan(1);
      expect(message, seen).toMatch(/is the most|from \d|up to \d/);
      expect(message, seen).not.toMatch(/[{}]|NaN|undefined|-\d/);
    }
    return sketch.problems[0]!.message;
  }
  const standing = standBase(sketch.value);
  expect(standing.ok ? [] : standing.problems, seen).toEqual([]);
  return standing.ok ? standing.value : '';
}

function expectSound(base: StandingBase, seen: string): void {
  for (const { id, cuts, face, back } of base.parts) {
    for (const { name, meets } of cuts) expect(meets, `${seen}: ${id} by ${name}`).toBe(true);
    expect([face.length, back.length], `${seen}: ${id}`).toEqual([1, 1]);
    for (const { tag } of [...face, ...back].flatMap(({ outer }) => outer.edges)) {
      expect(tag.id, `${seen}: ${id}`).not.toMatch(/^spare_(?!top)/);
    }
  }
  const [lowest, highest] = extentOf(base.parts, 'z');
  expect(lowest, seen).toBeCloseTo(base.levellers, 8);
  expect(highest, seen).toBeCloseTo(base.top.level, 8);
}

/** Every end that is cut against another part lies on it all over. */
function expectBearing(base: StandingBase, seen: string): void {
  for (const { between, kind } of base.joints) {
    if (kind === 'halved') continue;
    const [ends, mates] = between.map((place) => partsAt(base, place));
    for (const part of ends!) {
      const others = mates!.filter((other) => other !== part);
      const shares = flatFacesOf(part)
        .filter(({ id }) => part.cuts.some(({ name }) => name === id))
        .map((face) => bearing(face, others) / areaOfFace(face))
        .filter((share) => share > 1e-6);
      expect(shares.length, `${seen}: ${part.id}`).toBeGreaterThan(0);
      for (const share of shares) expect(share, `${seen}: ${part.id}`).toBeGreaterThan(1 - 1e-6);
    }
  }
}

/** No two pieces want the same wood, but those that are halved into each other. */
function expectRoom(base: StandingBase, seen: string): void {
  const halved = base.joints
    .filter(({ kind }) => kind === 'halved')
    .map(({ between }) => [...between].sort().join());
  const placeOf = (id: string): string => base.parts.find((part) => part.id === id)!.place;
  const collisions = withSolids(kernel, base.parts, (solids) => findCollisions(kernel, solids));
  const unmeant = collisions.filter(({ a, b }) => !halved.includes([placeOf(a), placeOf(b)].sort().join()));
  expect(unmeant, seen).toEqual([]);
}

describe.each(BASE_FORMS.map((form) => [form.name, form] as const))('%s', (_, form) => {
  test('stands at both ends of every parameter', () => {
    for (const parameter of describeForm(form).parameters) {
      const ends =
        parameter.kind === 'choice'
          ? Object.keys(parameter.options)
          : parameter.kind === 'yes-no'
            ? [true, false]
            : [parameter.least, parameter.most];
      for (const end of ends) {
        const base = stand(form, { [parameter.name]: end });
        const seen = `${form.name} with ${parameter.name} ${end}`;
        if (typeof base === 'string') throw new Error(`${seen}: ${base}`);
        expectSound(base, seen);
        expectBearing(base, seen);
      }
    }
  });

  test('stands at any setting with every cut right through, or says what would do', () => {
    let refused = 0;
    let run = 0;
    fc.assert(
      fc.property(anySetting(form), (values) => {
        const base = stand(form, values);
        run += 1;
        if (typeof base === 'string') {
          refused += 1;
          return;
        }
        const seen = `${form.name} at ${JSON.stringify(values)}`;
        expectSound(base, seen);
        if (run % ONE_IN !== 0) return;
        expectBearing(base, seen);
        expectRoom(base, seen);
      }),
      { numRuns: RUNS },
    );
    expect(refused).toBeLessThanOrEqual(RUNS * 0.05);
  });
});
