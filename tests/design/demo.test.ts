import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compute, readDesign, readWorkshop, writeDesign } from '../../src/design/index.ts';

const demo = new URL('../../demo/', import.meta.url);
const designs = readdirSync(demo).filter((name) => name.endsWith('.json'));
const templates = readdirSync(new URL('../../templates/', import.meta.url));

function read(name: string) {
  const file = readDesign(readFileSync(new URL(name, demo), 'utf8'), name);
  if (!file.ok) throw new Error(file.problems.map(({ message }) => message).join('\n'));
  return file.value.design;
}

describe('the demonstration', () => {
  it('has a design of every form', () => {
    const forms = designs.map((name) => `${read(name).form.name}.yaml`);
    expect([...new Set(forms)].sort()).toEqual([...templates].sort());
  });

  it.each(designs)('%s is written as the program writes it, and carries the form as it is now', (name) => {
    const design = read(name);
    expect(writeDesign(design)).toBe(readFileSync(new URL(name, demo), 'utf8'));
    const form = readFileSync(new URL(`../../templates/${design.form.name}.yaml`, import.meta.url), 'utf8');
    expect(design.form.text.join('\n'), 'renew the design: legwright renew <design> --yes').toBe(form);
  });

  it.each(designs)('%s can be made without a stop, on grids that it has pinned', (name) => {
    const design = read(name);
    const computed = compute(design);
    if (!computed.ok) throw new Error(computed.problems.map(({ message }) => message).join('\n'));
    expect(computed.value.findings.filter(({ severity }) => severity === 'stop')).toEqual([]);
    expect(computed.value.grids).toEqual(design.grids);
  });

  it('has a workshop that can be used', () => {
    const text = readFileSync(new URL('workshop/workshop.json', demo), 'utf8');
    expect(readWorkshop(text, 'workshop.json').ok).toBe(true);
  });
});
