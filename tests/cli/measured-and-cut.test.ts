import { afterAll, beforeAll, expect, it } from 'vitest';
import { openWorkbench, type Workbench } from './workbench.ts';

let bench: Workbench;
beforeAll(async () => {
  bench = openWorkbench();
  await bench.run('start', 'bench-base', '-o', 'bench.json');
});
afterAll(() => bench.clear());

it('takes a measure, counts the revision up and says what changes', async () => {
  const { code, out } = await bench.run('measured', 'bench.json', 'panel.thickness=29.4mm');
  expect(code).toBe(0);
  expect(out).toContain('revision B');
  expect(out).toMatch(/Panel.*changes/);
});

it('keeps the shape of parts that are cut', async () => {
  expect((await bench.run('cut', 'bench.json', 'panel')).code).toBe(0);
  const { out } = await bench.run('measured', 'bench.json', 'top_thickness=20mm');
  expect(out).toContain('Panel leg: cut already');
  const check = await bench.run('check', 'bench.json', '--json');
  expect(check.out).toMatch(/base\.cut-(again|too-short)/);
});

it('refuses parts and measures that the form does not know, and keeps the design', async () => {
  const part = await bench.run('cut', 'bench.json', 'wing');
  expect(part.code).toBe(2);
  expect(part.err).toContain('wing');
  const measure = await bench.run('measured', 'bench.json', 'wing.thickness=20');
  expect(measure.code).toBe(2);
  expect(measure.err).toContain('wing');
});
