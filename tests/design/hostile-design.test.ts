import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compute, type Memo, readDesign, writeDesign } from '../../src/design/index.ts';
import { sampleDesign } from './sample-design.ts';

const design = JSON.parse(writeDesign(sampleDesign('splayed-leg', ['leg'])));

/** Paths of everything in the design but the lines of the form's text, which have tests of their own. */
function pathsIn(value: unknown, path: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null || path.join('.') === 'form.text') return [path];
  return [path, ...Object.entries(value).flatMap(([name, inside]) => pathsIn(inside, [...path, name]))];
}

function replaced(value: unknown, [step, ...rest]: readonly string[], by: unknown): unknown {
  if (step === undefined) return by;
  const copy = structuredClone(value) as Record<string, unknown>;
  copy[step] = replaced(copy[step], rest, by);
  return copy;
}

const HOSTILE: readonly unknown[] = [
  null,
  0,
  -1,
  1e-300,
  1e300,
  1.05,
  '',
  ' ',
  '0',
  '-40 mm',
  '1e9 mm',
  '0.001 mm',
  '99999 mm',
  '1/0 in',
  '20°',
  'yes',
  'constructor',
  'toString',
  '__proto__',
  '\u0000',
  '🪚'.repeat(20),
  [],
  {},
  [[]],
  true,
  'roll',
  { roll: '5 m', longest: '5 m' },
  { width: '90 mm', height: '5080 mm' },
];

describe('a design with any value replaced by a hostile one', () => {
  it('is computed or refused with its reasons, and never breaks the program', () => {
    const memo: Memo = new Map();
    const paths = pathsIn(design).filter((path) => path.length > 0);
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.constantFrom(...HOSTILE), (path, value) => {
        const read = readDesign(JSON.stringify(replaced(design, path, value)), 'desk.json');
        const computed = read.ok ? compute(read.value.design, { memo }) : read;
        if (computed.ok) return;
        expect(computed.problems.length).toBeGreaterThan(0);
        for (const { code, message } of computed.problems) {
          expect(code).toMatch(/^[a-z]+\.[a-z-]+$/);
          expect(message).not.toMatch(/undefined|\[object|NaN/);
        }
      }),
      { numRuns: Number(process.env.HOSTILE_RUNS ?? 60) },
    );
  });
});
