import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { changeUnits, compute, type Design, readDesign } from '../../src/design/index.ts';
import { readForm } from '../../src/sketch/index.ts';
import { sampleDesign } from './sample-design.ts';

function turned(design: Design): Design {
  const form = readForm(design.form.text.join('\n'), design.form.name);
  if (!form.ok) throw new Error(form.problems[0]?.message);
  return changeUnits(design, form.value, design.units.length === 'mm' ? 'in' : 'mm');
}

test('bare lengths keep what they were, wherever they stand; angles, counts and percentages are left alone', () => {
  const sample = sampleDesign('splayed-leg', ['leg']);
  const design: Design = {
    ...sample,
    parameters: { ...sample.parameters, overall_height: 740, head_width: '64,5', splay: '8', pairs: 2 },
    tooling: { ...sample.tooling, runOn: 40, sawAllowance: '1.5' },
    measured: { thickness: { leg: 35.4 }, parameters: { stock: 36 } },
    base: { looseTenons: [{ thickness: 8, width: 25, length: '40 mm' }] },
    paper: { ...sample.paper, size: { width: 300, height: '400' } },
  };
  const after = turned(design);
  expect(after.units).toEqual({ length: 'in', nearest: '1/32' });
  expect(after.parameters).toMatchObject({
    overall_height: '740 mm',
    head_width: '64,5 mm',
    splay: '8',
    pairs: 2,
  });
  expect(after.tooling).toMatchObject({ runOn: '40 mm', sawAllowance: '1.5 mm' });
  expect(after.measured).toEqual({ thickness: { leg: '35.4 mm' }, parameters: { stock: '36 mm' } });
  expect(after.base?.looseTenons).toEqual([{ thickness: '8 mm', width: '25 mm', length: '40 mm' }]);
  expect(after.paper.size).toEqual({ width: '300 mm', height: '400 mm' });
});

test('no design of the demo changes its shape with its unit', () => {
  for (const file of readdirSync('demo').filter((name) => name.endsWith('.json'))) {
    const read = readDesign(readFileSync(`demo/${file}`, 'utf8'), file);
    if (!read.ok) throw new Error(read.problems[0]?.message);
    const wanted = { patterns: [], standing: false } as const;
    const [before, after] = [read.value.design, turned(read.value.design)].map((each) =>
      compute(each, { wanted }),
    );
    if (before?.ok !== true || after?.ok !== true) throw new Error(file);
    expect(after.value.sketch.parameters, file).toEqual(before.value.sketch.parameters);
    expect(
      after.value.parts.map(({ part }) => part.region),
      file,
    ).toEqual(before.value.parts.map(({ part }) => part.region));
  }
});
