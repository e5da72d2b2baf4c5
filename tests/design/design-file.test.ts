import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Design, readDesign, writeDesign } from '../../src/design/index.ts';
import { sampleDesign } from './sample-design.ts';

const design = sampleDesign('splayed-leg', ['leg']);

const name = fc.stringMatching(/^[a-z][a-z -]{0,20}[a-z]$/);
const typed = fc.oneof(
  fc.constantFrom('28 3/4 in', '2\' 4 3/4"', '73,0 cm', '8° 30′', 'yes', 'inner'),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.boolean(),
);
const length = fc.oneof(fc.constantFrom('12 mm', '1/2 in', '½"'), fc.integer({ min: 1, max: 90 }));
const point = fc.record({
  x: fc.double({ min: -1e4, max: 1e4, noNaN: true }),
  y: fc.double({ min: -1e4, max: 1e4, noNaN: true }),
});

/** Designs of every shape that the schema allows. */
const designs: fc.Arbitrary<Design> = fc
  .record({
    name,
    revision: fc.record({
      index: fc.constantFrom('A', 'B2', '07'),
      date: fc.constantFrom('2026-01-31', '2028-02-29'),
    }),
    units: fc.constantFrom(
      { length: 'mm', decimals: 0 } as const,
      { length: 'in', nearest: '1/64' } as const,
    ),
    parameters: fc.dictionary(fc.stringMatching(/^[a-z_]{1,12}$/), typed),
    text: fc.array(fc.string({ maxLength: 80 }), { minLength: 1, maxLength: 5 }),
    size: fc.oneof(
      fc.constantFrom('A4', 'Letter'),
      fc.record({ width: length, height: length }),
      fc.record({ roll: length, longest: length }),
    ),
    grids: fc.dictionary(
      name,
      fc.array(
        fc.record({
          paper: name,
          orientation: fc.constantFrom('portrait', 'landscape'),
          turn: fc.double({ min: 0, max: 360, noNaN: true }),
          shift: point,
        }),
        { maxLength: 2 },
      ),
    ),
    guide: fc.oneof(
      fc.record({
        kind: fc.constant('bearing' as const),
        diameter: length,
        at: fc.constantFrom('tip', 'shank'),
      }),
      fc.record({ kind: fc.constant('bushing' as const), outsideDiameter: length, barrelLength: length }),
    ),
  })
  .map(({ text, size, guide, ...rest }) => ({
    ...design,
    ...rest,
    form: { ...design.form, text },
    paper: { ...design.paper, size },
    tooling: { ...design.tooling, guide },
  }));

describe('a design file', () => {
  it('reads back as the design that was written, and is written alike again', () => {
    fc.assert(
      fc.property(designs, (each) => {
        const text = writeDesign(each);
        const read = readDesign(text, 'desk.json');
        if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
        // −0 is written as 0.
        expect(read.value.design).toEqual(JSON.parse(JSON.stringify(each)));
        expect(writeDesign(read.value.design)).toBe(text);
      }),
    );
  });

  it('is written in one order, whatever the order it was typed in', () => {
    const reversed = Object.fromEntries(Object.entries(design).reverse()) as unknown as Design;
    expect(writeDesign(reversed)).toBe(writeDesign(design));
    expect(writeDesign(design).startsWith('{\n  "legwright": 1,\n  "name": ')).toBe(true);
  });

  it('keeps the form’s own text line by line, so that any line of it can be pointed at', () => {
    const text = writeDesign(design);
    expect(text).toContain('\n      "form: splayed-leg",\n');
    expect(design.form.text.join('\n')).toContain('outlines:');
  });
});

/** A sound design file with one piece of its text replaced. */
function damage(from: string | RegExp, to: string): string {
  const text = writeDesign(design);
  const damaged = text.replace(from, to);
  expect(damaged, 'the damage must strike').not.toBe(text);
  return damaged;
}

/** Line and column of a piece of text, counted independently of the reader. */
function placeOf(text: string, piece: string): { line: number; column: number } {
  const lines = text.slice(0, text.indexOf(piece)).split('\n');
  return { line: lines.length, column: lines.at(-1)!.length + 1 };
}

describe('a damaged design file', () => {
  it.each([
    {
      name: 'a name mistyped',
      text: damage('"tooling":', '"toolings":'),
      at: '"toolings"',
      says: { code: 'design.unknown-name', found: '"toolings"', expected: '"tooling"' },
    },
    {
      name: 'a name mistyped deep inside',
      text: damage('"cuttingLength":', '"cutingLength":'),
      at: '"cutingLength"',
      says: { code: 'design.unknown-name', expected: '"cuttingLength"', path: 'tooling.cutter.cutingLength' },
    },
    {
      name: 'a parameter without a value',
      text: damage(/"stock": "[^"]*"/, '"stock": null'),
      at: 'null',
      says: { code: 'design.unusable', found: 'null', expected: expect.stringContaining('true or false') },
    },
    {
      name: 'a list for a parameter',
      text: damage(/"stock": "[^"]*"/, '"stock": []'),
      at: '[]',
      says: { code: 'design.unusable', found: 'a list', expected: expect.stringContaining('true or false') },
    },
    {
      name: 'a view that there is not',
      text: damage('"view": "all"', '"view": "everything"'),
      at: '"everything"',
      says: { code: 'design.unusable', found: '"everything"', path: 'patterns.0.view' },
    },
    {
      name: 'a day that is in no calendar',
      text: damage('2026-03-09', '2026-02-30'),
      at: '"2026-02-30"',
      says: { code: 'design.unusable', path: 'revision.date' },
    },
    {
      name: 'a text where a list is needed',
      text: damage(/"patterns": \[[^\]]*\]/, '"patterns": "all of them"'),
      at: '"all of them"',
      says: { code: 'design.unusable', expected: 'a list in [ ]', path: 'patterns' },
    },
    {
      name: 'a guide of no known kind',
      text: damage('"kind": "bearing"', '"kind": "fence"'),
      at: '"fence"',
      says: { code: 'design.unusable', found: '"fence"', expected: 'a guide of kind "bearing" or "bushing"' },
    },
    {
      name: 'no patterns wanted',
      text: damage(/"patterns": \[[^\]]*\]/, '"patterns": []'),
      at: '[],\n  "grids"',
      says: { code: 'design.unusable', expected: 'at least 1 entries', path: 'patterns' },
    },
    {
      name: 'something measured, for which there is no use yet',
      text: damage('"measured": {}', '"measured": { "width": "40 mm" }'),
      at: '"width": "40 mm"',
      says: { code: 'design.unknown-name', path: 'measured.width' },
    },
    {
      name: 'a comma too many',
      text: damage('"measured": {}', '"measured": {},'),
      at: '}\n',
      says: { code: 'json.unexpected', expected: 'a name in double quotes' },
      last: true,
    },
    {
      name: 'a file cut short',
      text: writeDesign(design).slice(0, 400),
      at: undefined,
      says: { code: 'design.cut-short' },
    },
    {
      name: 'a newer version',
      text: damage('"legwright": 1', '"legwright": 2'),
      at: '2,\n  "name"',
      says: { code: 'design.newer', path: 'legwright' },
    },
    {
      name: 'a version before the first',
      text: damage('"legwright": 1', '"legwright": 0'),
      at: '0,\n  "name"',
      says: { code: 'design.older' },
    },
    {
      name: 'nothing in it',
      text: ' \n',
      says: { code: 'design.wrong-kind', found: 'an empty file', line: 1 },
    },
    {
      name: 'a picture for text',
      text: '\uFFFDPNG\r\n\u001A\n',
      says: { code: 'design.wrong-kind', found: 'what is no text' },
    },
    {
      name: 'another kind of text',
      text: 'Dear reader,\nof this letter',
      says: { code: 'design.wrong-kind', found: 'a text that begins with “Dear reader,”' },
    },
    {
      name: 'its end missing within a text',
      text: '{"legwright": 1, "name": "Read',
      says: { code: 'design.cut-short', line: 1 },
    },
    {
      name: 'another program’s file',
      text: '{"version": "3.1", "layers": []}',
      at: '{"version"',
      says: { code: 'design.wrong-kind', expected: '"legwright": 1' },
    },
  ])('with $name is refused at its place', ({ text, at, says, last }) => {
    const read = readDesign(text, 'desk.json');
    if (read.ok) throw new Error('expected problems');
    expect(read.problems).toHaveLength(1);
    const place = last
      ? { line: text.trimEnd().split('\n').length }
      : at === undefined
        ? {}
        : placeOf(text, at);
    expect(read.problems[0]).toMatchObject({ file: 'desk.json', ...says, ...place });
    expect(read.problems[0]!.message).not.toMatch(/undefined|\[object|invalid input/i);
  });

  it('with several faults shows all of them', () => {
    const text = damage('"view": "all"', '"view": "most"').replace('"overlap":', '"overlaps":');
    const read = readDesign(text, 'desk.json');
    expect(read.ok ? [] : read.problems.map(({ code }) => code).sort()).toEqual([
      'design.unknown-name',
      'design.unusable',
    ]);
  });
});
