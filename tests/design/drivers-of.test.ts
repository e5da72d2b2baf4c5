import { expect, test } from 'vitest';
import { type Design, driversOf, solveFigure } from '../../src/design/index.ts';
import { figuresOf } from '../../src/design/pictures/figures-of.ts';
import { sampleDesign } from './sample-design.ts';

const trestle = sampleDesign('shallow-v-trestle', ['leg', 'arm', 'tie', 'rail']);

test('a figure of a view names the parameter that it is, or those that it follows', () => {
  const drivers = driversOf(trestle, { side: 'front' });
  expect(drivers.get('overall height')).toEqual([
    { parameter: 'overall_height', label: 'Overall height', itself: true },
  ]);
  expect(drivers.get('length of the top')?.[0]).toMatchObject({ parameter: 'top_length', itself: true });
  expect(drivers.get('underside of the top')?.map(({ parameter, itself }) => [parameter, itself])).toEqual([
    ['top_thickness', false],
    ['overall_height', false],
  ]);
});

test.each([
  ['shallow-v-trestle', { side: 'front' }, 'Long rail, underside over the floor', 'Depth of the rails'],
  ['shallow-v-trestle', { side: 'front' }, 'spread of the feet', 'Frames stand in'],
  ['shallow-v-trestle', { side: 'front' }, 'overhang', 'Frames stand in'],
  ['raked-table', { side: 'front' }, 'spread of the feet', 'Splay'],
  ['crossed-base', { side: 'front' }, 'spread of the feet', 'Frames stand in'],
  ['bench-base', { side: 'front' }, 'spread of the feet', 'Feet stand in'],
  ['curved-leg', { part: 'leg' }, 'ankle_up', 'Height of the ankle'],
  ['knee-leg', { part: 'leg' }, 'throat', 'Fullness of the hollow'],
  ['panel-leg', { part: 'panel' }, 'window_height', 'Wood above the window'],
  ['arched-stretcher', { part: 'stretcher' }, 'springs', 'Straight at the ends'],
  ['stool-base', { side: 'left' }, 'spread of the feet', 'Lean'],
] as const)('of %s %j the %s is brought about by what changes little else: %s', (form, of, figure, label) => {
  const [first] = driversOf(sampleDesign(form, []), of).get(figure) ?? [];
  expect(first?.label).toBe(label);
});

test('what is not there is offered after what is', () => {
  const drivers = driversOf(trestle, { part: 'leg' })
    .get('length')
    ?.map(({ label }) => label);
  expect(drivers).toContain('Levellers');
  expect(drivers?.[0]).not.toBe('Levellers');
});

test('a figure of a part alone follows the form as well', () => {
  const leg = sampleDesign('splayed-leg', ['leg']);
  const drivers = driversOf(leg, { part: 'leg' });
  const all = [...drivers.values()].flat();
  expect(all.some(({ parameter }) => parameter === 'overall_height')).toBe(true);
});

test('a parameter is solved for, so that a figure comes to what was typed; where it cannot, that is said', () => {
  const underside = {
    of: { side: 'front' },
    name: 'underside of the top',
    kind: 'length',
    parameter: 'top_thickness',
  } as const;
  expect(solveFigure(trestle, { ...underside, target: 700 })).toEqual({ ok: true, value: '35 mm' });
  const far = solveFigure(trestle, { ...underside, target: 100 });
  expect(far.ok).toBe(false);
  expect(!far.ok && far.problems[0]?.code).toBe('figure.out-of-reach');
});

test('what is solved for is no finer than the drawing shows', () => {
  const spread = {
    of: { side: 'front' },
    name: 'spread of the feet',
    kind: 'length',
    parameter: 'top_length',
  } as const;
  const solved = solveFigure(trestle, { ...spread, target: 1300 });
  expect(solved.ok && solved.value).toMatch(/^\d+(\.\d{1,2})? mm$/);
  // Where the drawing shows hundredths they hold as well.
  const fine: Design = { ...trestle, units: { length: 'mm', decimals: 2 } };
  const finer = solveFigure(fine, { ...spread, target: 1300 });
  const spreadAt = (typed: string | number): number => {
    const { parameters } = trestle;
    const before = figuresOf(
      { ...trestle, parameters: { ...parameters, top_length: typed } },
      spread.of,
      new Map(),
    );
    return before?.values.get(spread.name) ?? Number.NaN;
  };
  expect(solved.ok && Math.abs(spreadAt(solved.value) - 1300)).toBeLessThan(0.05);
  expect(finer.ok && Math.abs(spreadAt(finer.value) - 1300)).toBeLessThan(0.005);
  const inInches: Design = { ...trestle, units: { length: 'in', nearest: '1/16' } };
  const fraction = solveFigure(inInches, { ...spread, target: 1300 });
  expect(fraction.ok && fraction.value).toMatch(/ in$|^\d+(\.\d{1,2})? mm$/);
});

test('a ratio is solved for, though it is typed in a few decimals', () => {
  const leg = sampleDesign('curved-leg', ['leg']);
  const ankle = {
    of: { part: 'leg' },
    name: 'ankle_up',
    kind: 'length',
    parameter: 'ankle_height',
    target: 200,
  } as const;
  const solved = solveFigure(leg, ankle);
  expect(solved.ok && Number(solved.value)).toBeCloseTo(0.277, 2);
});
