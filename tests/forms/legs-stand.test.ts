import { describe, expect, test } from 'vitest';
import { angleOf, type Edge, subtract, type Vec } from '../../src/geometry/index.ts';
import {
  DEGREE,
  defaultOf,
  edgesCalled,
  heightsOf,
  partOf,
  sketchOf,
  standing,
  type Values,
} from './forms.ts';

/** How closely (mm, rad) real outlines must keep to what was asked. */
const EXACT = 9;

/** Each leg with the edge that leans at the splay and the two corners between which it does so. */
const LEGS: readonly (readonly [
  form: string,
  reference: readonly [foot: string, head: string],
  values: Values,
])[] = [
  ['splayed-leg', ['foot_outer', 'head_outer'], { taper: 'none' }],
  ['splayed-leg', ['foot_outer', 'head_outer'], { taper: 'inner' }],
  ['splayed-leg', ['foot_inner', 'head_inner'], { taper: 'outer' }],
  ['splayed-leg', ['foot_middle', 'head_middle'], { taper: 'both' }],
  ['splayed-leg', ['foot_outer', 'head_outer'], { rail: false, straight: 0 }],
  ['knee-leg', ['foot_outer', 'knee'], {}],
  ['curved-leg', ['foot_outer', 'head_outer'], {}],
  ['curved-leg', ['foot_outer', 'head_outer'], { rail: false }],
  ['panel-leg', ['foot_outer', 'head_outer'], {}],
  ['panel-leg', ['foot_outer', 'head_outer'], { foot: 'arched', hollow: 60 }],
  ['panel-leg', ['foot_outer', 'head_outer'], { foot: 'straight', window: false }],
];

const SPLAYS = [0, 2.5, 8, 11];

const CASES = LEGS.flatMap(([form, reference, values]) =>
  SPLAYS.map((splay) => [form, JSON.stringify(values), splay, reference, values] as const),
);

function ends(edges: readonly Edge[]): readonly Vec[] {
  return edges.flatMap(({ from, to }) => [from, to]);
}

describe.each(CASES)('%s %s at %f°', (form, _, degrees, reference, values) => {
  const splay = degrees * DEGREE;
  const asked = { ...values, splay, overall_height: 752, top_thickness: 28, levellers: 6 };
  const base = 752 - 28 - 6;
  const leg = standing(partOf(form, asked));
  const turned = -(partOf(form, asked).up - Math.PI / 2);

  test('stands with its whole foot on the floor', () => {
    for (const { y } of ends(edgesCalled(leg, 'foot'))) expect(y).toBeCloseTo(0, EXACT);
    expect(heightsOf(leg).lowest).toBeCloseTo(0, EXACT);
  });

  test('bears the top with its whole head, the base height above the floor', () => {
    for (const { y } of ends(edgesCalled(leg, 'head'))) expect(y).toBeCloseTo(base, EXACT);
    expect(heightsOf(leg).highest).toBeCloseTo(base, EXACT);
  });

  test('leans at the splay from plumb, its head further in than its foot', () => {
    const { points } = sketchOf(form, asked);
    const way = subtract(points[reference[1]]!, points[reference[0]]!);
    const direction = angleOf(way) + turned;
    // 90 degrees is plumb; less leans to +x, which is inwards on a left leg.
    expect(Math.PI / 2 - direction).toBeCloseTo(splay, EXACT);
  });

  test('has its inside towards +x and its face towards us', () => {
    const inner = edgesCalled(leg, 'foot');
    const middle = ends(inner).reduce((sum, { x }) => sum + x, 0) / (2 * inner.length);
    const outer = ends(edgesCalled(leg, 'outer')).reduce((least, { x }) => Math.min(least, x), Infinity);
    expect(middle).toBeGreaterThan(outer);
  });
});

describe.each(['splayed-leg', 'knee-leg', 'curved-leg', 'panel-leg'])('%s', (form) => {
  const heightOf = (values: Values): number => heightsOf(standing(partOf(form, values))).highest;

  test('is as high as the base at its defaults', () => {
    const base =
      defaultOf(form, 'overall_height') - defaultOf(form, 'top_thickness') - defaultOf(form, 'levellers');
    expect(heightOf({})).toBeCloseTo(base, EXACT);
  });

  test('grows with the overall height and shrinks by the top and the levellers', () => {
    const usual = heightOf({});
    expect(heightOf({ overall_height: defaultOf(form, 'overall_height') + 37 })).toBeCloseTo(
      usual + 37,
      EXACT,
    );
    expect(heightOf({ top_thickness: defaultOf(form, 'top_thickness') + 11 })).toBeCloseTo(usual - 11, EXACT);
    expect(heightOf({ levellers: 8 })).toBeCloseTo(usual - 8, EXACT);
  });

  test('has long edges routed, foot and head sawn, what meets a rail or an arm as a joint', () => {
    const roles = new Map(partOf(form).region.outer.edges.map(({ tag }) => [tag.id, tag.role]));
    expect(roles.get('foot')).toBe('sawn');
    expect(roles.get('head')).toBe('sawn');
    expect(roles.get('outer')).toBe('routed');
    for (const id of ['shoulder', 'arm']) if (roles.has(id)) expect(roles.get(id)).toBe('joint');
  });

  test('is as thick as its stock, grain along its length', () => {
    const part = partOf(form, { stock: 33 });
    expect(part.thickness).toBe(33);
    expect(Math.abs(part.grain - Math.PI / 2)).toBeLessThan(2 * DEGREE);
  });
});
