import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOfOutline, findFaults, locate, reverseEdge } from '../../src/geometry/index.ts';
import {
  type DescribedParameter,
  describeForm,
  evaluateForm,
  type Form,
  type ParameterValue,
} from '../../src/sketch/index.ts';
import { FORMS, type Values } from './forms.ts';

const SEED = 20240611;
/** Words that only a programmer knows must not reach the maker. */
const NO_WORD_OF_THE_TRADE = /NaN|undefined|Infinity|[{}]/;

/** What holds of whatever a form makes: either valid parts, or problems with their place. */
function judge(form: Form, values: Values): 'made' | 'refused' {
  const sketch = evaluateForm(form, values);
  const seen = `${form.name} at ${JSON.stringify(values)}`;
  if (!sketch.ok) {
    expect(sketch.problems.length, seen).toBeGreaterThan(0);
    for (const problem of sketch.problems) {
      expect(problem.line, `${seen}: ${problem.message}`).toBeGreaterThan(0);
      expect(problem.column, `${seen}: ${problem.message}`).toBeGreaterThan(0);
      expect(problem.file, seen).toBe(`${form.name}.yaml`);
      expect(problem.message, seen).not.toMatch(NO_WORD_OF_THE_TRADE);
    }
    return 'refused';
  }
  expect(sketch.value.parts.length, seen).toBe(1);
  for (const part of sketch.value.parts) {
    expect(findFaults([part.region]), seen).toEqual([]);
    expect(areaOfOutline(part.region.outer), seen).toBeGreaterThan(0);
    for (const hole of part.region.holes) expect(areaOfOutline(hole), seen).toBeLessThan(0);
    for (const opening of part.openings) {
      const window = { edges: part.region.holes[opening.hole]!.edges.map(reverseEdge).reverse() };
      expect(locate([{ outer: window, holes: [] }], opening.plunge), `${seen}: ${opening.name}`).toBe(
        'inside',
      );
    }
    for (const { label, value } of part.dimensions) {
      expect(value, `${seen}: ${label}`).toBeGreaterThanOrEqual(0);
      expect(Number.isFinite(value), `${seen}: ${label}`).toBe(true);
    }
  }
  return 'made';
}

function ends(parameter: DescribedParameter): readonly ParameterValue[] {
  switch (parameter.kind) {
    case 'choice':
      return Object.keys(parameter.options);
    case 'yes-no':
      return [true, false];
    case 'length':
    case 'angle':
    case 'ratio':
    case 'count':
      return [parameter.least, parameter.most];
    default:
      return parameter satisfies never;
  }
}

/** Any value of a parameter, or one within a share of the way from its default to its limits. */
function anyValue(parameter: DescribedParameter, share: number): fc.Arbitrary<ParameterValue> {
  if (!('least' in parameter)) return fc.constantFrom(...ends(parameter));
  const { default: usual, least, most } = parameter;
  const from = usual + (least - usual) * share;
  const to = usual + (most - usual) * share;
  if (parameter.kind === 'count') return fc.integer({ min: Math.ceil(from), max: Math.floor(to) });
  return fc.double({ min: from, max: to, noNaN: true });
}

function anySetting(form: Form, share: number): fc.Arbitrary<Values> {
  const { parameters } = describeForm(form);
  return fc.record(Object.fromEntries(parameters.map((one) => [one.name, anyValue(one, share)])));
}

test('the six forms are there', () => {
  expect(FORMS.map(({ name }) => name)).toEqual([
    'arched-stretcher',
    'curved-leg',
    'knee-leg',
    'panel-leg',
    'splayed-leg',
    'straight-stretcher',
  ]);
});

describe.each(FORMS.map((form) => [form.name, form] as const))('%s', (name, form) => {
  const { parameters } = describeForm(form);

  test('is named like its file and makes a valid part at its defaults', () => {
    expect(form.file).toBe(`${name}.yaml`);
    expect(judge(form, {})).toBe('made');
  });

  test('is driven by overall height, thickness of the top, levellers, splay and stock', () => {
    const names = parameters.map((parameter) => parameter.name);
    for (const driver of ['overall_height', 'top_thickness', 'levellers', 'splay', 'stock']) {
      expect(names).toContain(driver);
    }
    expect(parameters.find((parameter) => parameter.name === 'splay')?.help).toMatch(
      /from plumb, looking square/,
    );
  });

  test.each(parameters.map((parameter) => [parameter.name, parameter] as const))(
    'at both ends of %s makes a valid part or says why not',
    (_, parameter) => {
      for (const value of ends(parameter)) judge(form, { [parameter.name]: value });
    },
  );

  test('makes a valid part or says why not, whatever the setting', () => {
    fc.assert(
      fc.property(anySetting(form, 1), (values) => {
        judge(form, values);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  test('suits most settings near its defaults', () => {
    const settings = fc.sample(anySetting(form, 0.12), { seed: SEED, numRuns: 40 });
    const made = settings.filter((values) => judge(form, values) === 'made');
    expect(made.length).toBeGreaterThan(20);
  });

  test('keeps the names of its edges and corners apart', () => {
    const sketch = evaluateForm(form, {});
    const part = sketch.ok ? sketch.value.parts[0] : undefined;
    const corners = part?.corners.map((corner) => corner.name) ?? [];
    expect(corners.length).toBeGreaterThan(3);
    expect(new Set(corners).size).toBe(corners.length);
  });
});
