import { readdirSync, readFileSync } from 'node:fs';
import {
  compute,
  defaultParameters,
  metaOf,
  printOf,
  startDesign,
  usualPaper,
  usualTooling,
  usualUnits,
} from '../../../src/design/index.ts';
import type { PatternPrint, PrintMeta } from '../../../src/print/index.ts';
import { readForm } from '../../../src/sketch/index.ts';

const FOLDER = new URL('../../../templates/', import.meta.url);

/** Forms of one part: a base has a dozen, each as plain as one of these. */
export const FORM_NAMES: readonly string[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.yaml'))
  .filter((name) => !/^base:/m.test(readFileSync(new URL(name, FOLDER), 'utf8')))
  .map((name) => name.replace(/\.yaml$/, ''));

/** Every part of a form at its defaults, laid on sheets, as a maker who just begins gets it. */
export function printsOfForm(
  name: string,
  paper: 'A4' | 'Letter',
): { readonly prints: readonly PatternPrint[]; readonly meta: PrintMeta } {
  const text = readFileSync(new URL(`${name}.yaml`, FOLDER), 'utf8');
  const form = readForm(text, name);
  if (!form.ok) throw new Error(form.problems[0]!.message);
  const unit = paper === 'A4' ? 'mm' : 'in';
  const begin = (parts: readonly string[]) =>
    startDesign({
      form: form.value,
      text,
      parts,
      name: 'Reading room table',
      date: '2025-03-14',
      units: usualUnits(unit),
      parameters: defaultParameters(form.value, unit),
      tooling: usualTooling(unit),
      paper: usualPaper(unit),
    });
  const first = compute(begin([]));
  if (!first.ok) throw new Error(first.problems[0]!.message);
  const computed = compute(begin(first.value.parts.map(({ part }) => part.name)));
  if (!computed.ok) throw new Error(computed.problems[0]!.message);
  return {
    prints: computed.value.patterns.map((pattern) => printOf(computed.value, pattern)),
    meta: metaOf(computed.value),
  };
}
