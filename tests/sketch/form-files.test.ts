import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { describeForm, evaluateForm, readForm } from '../../src/sketch/index.ts';
import { formText, messageOf, pointedAt, problemsOf, readOrThrow } from './form-text.ts';

const README = readFileSync(new URL('../../src/sketch/README.md', import.meta.url), 'utf8');
const EXAMPLE = readFileSync(new URL('../cases/forms/bracket-leg.yaml', import.meta.url), 'utf8');

describe('the worked example of the grammar', () => {
  it('stands in the README as it is in the file', () => {
    expect(README).toContain(`\`\`\`yaml\n${EXAMPLE}\`\`\``);
  });

  it('is read and drawn', () => {
    const form = readForm(EXAMPLE, 'bracket-leg.yaml');
    const sketch = form.ok ? evaluateForm(form.value, {}) : form;
    expect(sketch).toMatchObject({ ok: true, value: { form: 'bracket-leg', version: 1 } });
    const [leg] = sketch.ok ? sketch.value.parts : [];
    expect(leg!.region.outer.edges.map((edge) => edge.tag)).toEqual([
      { id: 'foot', role: 'sawn' },
      { id: 'foot_inner', role: 'routed' },
      { id: 'inner', role: 'routed' },
      { id: 'head', role: 'joint' },
      { id: 'outer', role: 'routed' },
    ]);
    // Rise and chord give the radius: r = c² / 8h + h / 2 (chord and sagitta of a circle).
    const chord = Math.hypot(700 * Math.tan((6 / 180) * Math.PI) + 90 - 45, 700);
    const hollow = leg!.dimensions.find((each) => each.name === 'hollow')!;
    expect(hollow.value).toBeCloseTo(chord ** 2 / 96 + 6, 8);
  });

  it('comes with parameters of every kind that are read', () => {
    const block = /## Parameters\n\n```yaml\nparameters:\n([^`]*)```/.exec(README)![1]!;
    const { parameters } = describeForm(readOrThrow(formText({ parameters: block.replace(/^ {2}/gm, '') })));
    const kinds = parameters.map((each) => each.kind);
    expect(kinds).toEqual(['length', 'angle', 'ratio', 'count', 'choice', 'yes-no']);
  });

  it('draws the same whatever the line ends of the file are', () => {
    const form = readForm(EXAMPLE.replaceAll('\n', '\r\n'), 'x');
    const plain = readForm(EXAMPLE, 'x');
    expect(form.ok && evaluateForm(form.value, {})).toEqual(plain.ok && evaluateForm(plain.value, {}));
  });
});

describe('a form file', () => {
  it('tells the place of everything wrong with it, in the order of the file', () => {
    const text = formText()
      .replace('grammar: 1', 'grammar: 4')
      .replace('title: Plate', 'titel: Plate')
      .replace('role: sawn', 'role: cut')
      .replace('thickness: 20 mm', 'thickness: 20 +');
    const problems = problemsOf(text);
    expect(problems.map((each) => each.message)).toEqual([
      'title is missing: a line of text',
      '"4" is not a grammar that is read: 1, 2 for a base, or 3 for handles',
      'there is no "titel" in a form: did you mean "title"?',
      '"cut" is not one of routed, sawn, joint, left',
      'cannot read "20 +": a value is missing',
    ]);
    expect(problems.slice(1).map((each) => pointedAt(text, each).slice(0, 5))).toEqual([
      '4',
      'titel',
      'cut }',
      '',
    ]);
    expect(problems.map((each) => each.path)).toEqual([
      'title',
      'grammar',
      'titel',
      'outlines.plate.edges.0.role',
      'parts.plate.thickness',
    ]);
  });

  it.each([
    ['', 'the file is empty'],
    ['# nothing\n', 'the file is empty'],
    ['just words', 'the form should be a map'],
    ['- a\n- b\n', 'the form should be a map'],
    ['a: 1\na: 2\n', 'a is given twice'],
    ['a: 1\n---\nb: 2\n', 'a form is one document'],
    ['a: [1, 2\n', 'Flow sequence in block collection must be sufficiently indented and end with a ]'],
    ['a: "open\n', 'Missing closing "quote'],
    ['form: !!js/function 1\n', 'tag:yaml.org,2002:js/function is a tag, which a form cannot use'],
    ['form: &x name\n', '&x is an anchor, which a form cannot use'],
    ['form: a\ntitle: *x\n', '*x is an alias: write the thing itself'],
    ['<<: { form: a }\n', '"<<" cannot be a name: names are small letters, digits and _, a letter first'],
    ['? [a, b]\n: 1\n', 'this key cannot be a name: names are small letters, digits and _, a letter first'],
    ['Form: a\n', '"Form" cannot be a name: names are small letters, digits and _, a letter first'],
    ['1: a\n', '"1" cannot be a name: names are small letters, digits and _, a letter first'],
  ])('%j is refused: %s', (text, expected) => {
    const [problem] = problemsOf(text);
    expect(problem!.message).toContain(expected);
    expect(problem!.line).toBeGreaterThan(0);
    expect(problem!.column).toBeGreaterThan(0);
  });

  it('keeps words for later grammars', () => {
    for (const later of ['frames', 'trims']) {
      expect(messageOf(`${formText()}\n${later}: { a: 1 }\n`)).toBe(
        `"${later}" belongs to a later grammar: 1 to 3 are read`,
      );
    }
  });

  it('declares each name once', () => {
    expect(messageOf({ values: 'height: 3 mm' })).toBe('height is declared under parameters already');
    expect(messageOf({ planes: 'a: { through: b, facing: 0 }' })).toBe('a is declared under points already');
  });

  it('may leave sections empty', () => {
    expect(() => readOrThrow(formText().replace('outlines:', 'values:\nplanes:\noutlines:'))).not.toThrow();
  });

  it('names corners where points are not plain names', () => {
    const inline = formText().replace('{ line: top, to: d,', '{ line: top, to: "if(yes, d, c)",');
    expect(messageOf(inline)).toBe('this is not a plain name: give the corner a name with corner');
    expect(() =>
      readOrThrow(inline.replace('"if(yes, d, c)",', '"if(yes, d, c)", corner: far,')),
    ).not.toThrow();
  });

  it('has names of edges that stay apart, mirrored and cut ones too', () => {
    const outlines = `
panel:
  start: a
  edges:
    - { line: side, to: b, role: sawn }
    - { line: side_far, to: c, role: sawn }
    - { line: head, to: d, role: sawn }
  mirror: { over: [a, d], suffix: far }`;
    const points = 'a: 0, 0\nb: 10 mm, 0\nc: 10 mm, 20 mm\nd: 0, 25 mm';
    expect(messageOf({ outlines, points })).toBe(
      'panel has an edge called side_far already: change a name or the suffix',
    );
  });
});
