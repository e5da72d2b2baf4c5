import { expect, test } from 'vitest';
import { driversOf, solveFigure } from '../../src/design/index.ts';
import { sampleDesign } from './sample-design.ts';

const trestle = sampleDesign('shallow-v-trestle', ['leg', 'arm', 'tie', 'rail']);

test('a figure of a view names the parameter that it is, or those that it follows', () => {
  const drivers = driversOf(trestle, { side: 'front' });
  expect(drivers.get('overall height')).toEqual([
    { parameter: 'overall_height', label: 'Overall height', itself: true },
  ]);
  expect(drivers.get('length of the top')?.[0]).toMatchObject({ parameter: 'top_length', itself: true });
  expect(drivers.get('underside of the top')?.map(({ parameter, itself }) => [parameter, itself])).toEqual([
    ['overall_height', false],
    ['top_thickness', false],
  ]);
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
    parameter: 'top_thickness',
  } as const;
  expect(solveFigure(trestle, { ...underside, target: 700 })).toEqual({ ok: true, value: '35 mm' });
  const far = solveFigure(trestle, { ...underside, target: 100 });
  expect(far.ok).toBe(false);
  expect(!far.ok && far.problems[0]?.code).toBe('figure.out-of-reach');
});
