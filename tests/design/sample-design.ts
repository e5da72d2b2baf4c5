import { readFileSync } from 'node:fs';
import {
  type Design,
  defaultParameters,
  startDesign,
  usualPaper,
  usualTooling,
  usualUnits,
} from '../../src/design/index.ts';
import { readForm } from '../../src/sketch/index.ts';

/** A design from a form that comes with the program, everything as usual. */
export function sampleDesign(form: string, parts: readonly string[], unit: 'mm' | 'in' = 'mm'): Design {
  const text = readFileSync(new URL(`../../templates/${form}.yaml`, import.meta.url), 'utf8');
  const read = readForm(text, `${form}.yaml`);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return startDesign({
    name: 'Lectern for the reading room',
    form: read.value,
    text,
    parameters: defaultParameters(read.value, unit),
    parts,
    date: '2026-03-09',
    units: usualUnits(unit),
    tooling: usualTooling(unit),
    paper: usualPaper(unit),
  });
}
