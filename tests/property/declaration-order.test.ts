import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isMap, parseDocument } from 'yaml';
import { evaluateForm, readForm } from '../../src/sketch/index.ts';

const TEXT = readFileSync(new URL('../cases/forms/bracket-leg.yaml', import.meta.url), 'utf8');
/** Values that lean on each other, so that their order could matter. */
const CHAIN = 'values:\n  rise_a: rise_b + 1 mm\n  rise_b: rise_c * 2\n  rise_c: height / 100\n';
const FORM = TEXT.replace('values:\n', CHAIN).replace('rise: hollow', 'rise: hollow + rise_a - rise_a');
const SECTIONS = ['parameters', 'values', 'points', 'planes', 'outlines', 'openings', 'parts'];

/** The same form, its sections and what they declare in another order. */
function reorder(seed: number): string {
  const document = parseDocument(FORM);
  let state = seed;
  const random = (): number => {
    state = (state * 48271 + 11) % 2147483647;
    return state;
  };
  const shuffle = <T>(items: T[]): void => {
    const keyed = items.map((item) => [random(), item] as const).sort((a, b) => a[0] - b[0]);
    items.splice(0, items.length, ...keyed.map(([, item]) => item));
  };
  const root = document.contents;
  if (!isMap(root)) throw new Error('no map');
  for (const section of SECTIONS) {
    const map = root.get(section);
    if (isMap(map)) shuffle(map.items);
  }
  shuffle(root.items);
  return document.toString();
}

function sketch(text: string): unknown {
  const form = readForm(text, 'x');
  if (!form.ok) throw new Error(form.problems[0]!.message);
  const made = evaluateForm(form.value, { height: 612.5 });
  if (!made.ok) throw new Error(made.problems[0]!.message);
  return made.value;
}

describe('the order of declarations', () => {
  it('changes nothing in what is drawn', () => {
    const expected = sketch(FORM);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2 ** 30 }), (seed) => {
        expect(sketch(reorder(seed))).toEqual(expected);
      }),
      { numRuns: 25 },
    );
  });
});
