import { describe, expect, it } from 'vitest';
import { describeForm, evaluateForm, readParameterValues } from '../../src/sketch/index.ts';
import { formText, messageOf, readOrThrow } from './form-text.ts';

const PARAMETERS = `
overall_height: { label: Overall height, kind: length, default: 28 3/4 in, least: 300 mm, most: 1200 mm, help: Floor to top. }
splay: { label: Splay, kind: angle, default: "8° 30'", least: 0, most: 20, help: Lean from plumb. }
taper: { label: Taper, kind: ratio, default: 60 %, least: 0.3, most: 1, help: Foot to head. }
legs: { label: Legs, kind: count, default: 4, least: 3, most: 8, help: In the base. }
foot: { label: Foot, kind: choice, default: rounded, options: { square: Square, rounded: Rounded }, help: Shape. }
window: { label: Window, kind: yes-no, default: yes, help: Cut a window. }`;

const form = readOrThrow(formText({ parameters: PARAMETERS }));

describe('the parameters of a form', () => {
  it('are listed with label, kind, default, range and help, in internal units', () => {
    const { name, version, title, parameters } = describeForm(form);
    expect({ name, version, title }).toEqual({ name: 'test-plate', version: 3, title: 'Plate' });
    expect(parameters.map((each) => each.name)).toEqual([
      'overall_height',
      'splay',
      'taper',
      'legs',
      'foot',
      'window',
    ]);
    expect(parameters[0]).toEqual({
      name: 'overall_height',
      label: 'Overall height',
      kind: 'length',
      default: 730.25,
      least: 300,
      most: 1200,
      help: 'Floor to top.',
    });
    expect(parameters[4]).toMatchObject({
      options: { square: 'Square', rounded: 'Rounded' },
      default: 'rounded',
    });
  });

  it('are read as a maker types them', () => {
    const values = readParameterValues(
      form,
      { overall_height: '2\' 4 3/4"', splay: '10', taper: '0,5', legs: 3, foot: 'square', window: 'no' },
      { unit: 'mm' },
    );
    expect(values).toEqual({
      ok: true,
      value: {
        overall_height: 730.25,
        splay: (10 * Math.PI) / 180,
        taper: 0.5,
        legs: 3,
        foot: 'square',
        window: false,
      },
    });
  });

  it('take their default when they are not given', () => {
    const values = readParameterValues(form, { window: false }, { unit: 'in' });
    expect(values).toMatchObject({
      ok: true,
      value: { overall_height: 730.25, taper: 0.6, legs: 4, foot: 'rounded', window: false },
    });
    const sketch = evaluateForm(form, {});
    expect(sketch.ok && sketch.value.parameters).toMatchObject({ taper: 0.6, legs: 4, window: true });
  });

  it('take a bare number in the unit of the maker', () => {
    expect(readParameterValues(form, { overall_height: 30 }, { unit: 'in' })).toMatchObject({
      value: { overall_height: 762 },
    });
    expect(readParameterValues(form, { overall_height: 730 }, { unit: 'mm' })).toMatchObject({
      value: { overall_height: 730 },
    });
  });

  it.each([
    [
      { overal_height: '700' },
      'parameter.unknown',
      'there is no parameter "overal_height": did you mean "overall_height"?',
    ],
    [{ colour: 'red' }, 'parameter.unknown', 'there is no parameter "colour"'],
    [
      { overall_height: '1300' },
      'parameter.range',
      'Overall height is 1300 mm: it can be from 300 mm to 1200 mm',
    ],
    [{ splay: '25' }, 'parameter.range', 'Splay is 25°: it can be from 0° to 20°'],
    [{ taper: '2' }, 'parameter.range', 'Taper is 2: it can be from 0.3 to 1'],
    [
      { legs: '2.5' },
      'count.unreadable',
      'Legs: cannot read "2.5" as a count: a whole number such as 4 was expected',
    ],
    [{ legs: 12 }, 'parameter.range', 'Legs is 12: it can be from 3 to 8'],
    [{ foot: 'pointed' }, 'parameter.option', 'Foot is one of square, rounded, not "pointed"'],
    [{ foot: 3 }, 'parameter.kind', 'Foot is one of square, rounded, not number'],
    [{ window: 'maybe' }, 'parameter.kind', 'Window is yes or no, not "maybe"'],
    [{ overall_height: null }, 'parameter.kind', 'Overall height is a figure (length), not nothing'],
    [{ overall_height: ['700'] }, 'parameter.kind', 'Overall height is a figure (length), not object'],
    [
      { overall_height: 'tall' },
      'length.unreadable',
      'Overall height: cannot read "tall" as a length: a number is missing',
    ],
    [
      { overall_height: Number.NaN },
      'length.unreadable',
      'Overall height: cannot read "NaN" as a length: a number is missing',
    ],
    [{ overall_height: 1e308 }, 'length.unreadable', undefined],
  ])('%o is refused', (raw, code, message) => {
    const values = readParameterValues(form, raw, { unit: 'mm', file: 'design.json' });
    const [problem] = values.ok ? [] : values.problems;
    expect(problem).toMatchObject({ code, file: 'design.json', path: `parameters.${Object.keys(raw)[0]}` });
    if (message !== undefined) expect(problem!.message).toBe(message);
  });

  it('tell their range in the unit of the maker', () => {
    const values = readParameterValues(form, { overall_height: '48 in' }, { unit: 'in' });
    expect(!values.ok && values.problems[0]!.message).toBe(
      'Overall height is 48 in: it can be from 11 13/16 in to 47 1/4 in',
    );
  });

  it('report everything that is wrong at once', () => {
    const values = readParameterValues(form, { splay: '90', taper: 'x', legs: 4 }, { unit: 'mm' });
    expect(!values.ok && values.problems.map((each) => each.path)).toEqual([
      'parameters.taper',
      'parameters.splay',
    ]);
  });

  it('may be as large and as small as their limits, however those were typed', () => {
    const inches = readOrThrow(
      formText({
        parameters:
          'w: { label: W, kind: length, default: 0.7 in, least: 0.1 in, most: 0.7 in, help: Width. }',
      }),
    );
    expect(readParameterValues(inches, { w: '7/10 in' }, { unit: 'mm' }).ok).toBe(true);
    expect(readParameterValues(inches, { w: '1/10 in' }, { unit: 'mm' }).ok).toBe(true);
  });

  it('do not reach for what every object has', () => {
    for (const name of ['__proto__', 'constructor', 'hasOwnProperty', 'toString']) {
      const raw: Record<string, unknown> = JSON.parse(`{ "${name}": "700" }`);
      expect(readParameterValues(form, raw, { unit: 'mm' })).toMatchObject({
        ok: false,
        problems: [{ code: 'parameter.unknown', message: `there is no parameter "${name}"` }],
      });
      expect(readParameterValues(form, { foot: name }, { unit: 'mm' }).ok).toBe(false);
    }
  });
});

describe('parameters declared wrongly', () => {
  const declare = (parameter: string): string =>
    messageOf({ parameters: `w: { label: W, help: H, ${parameter} }` });

  it.each([
    [
      'kind: length, default: 5 mm, least: 10 mm, most: 90 mm',
      'the default, 5 mm, is not from 10 mm to 90 mm',
    ],
    [
      'kind: length, default: 5 mm, least: 90 mm, most: 10 mm',
      'the least, 90 mm, is more than the most, 10 mm',
    ],
    [
      'kind: length, default: 5 deg, least: 1 mm, most: 10 mm',
      'cannot read "5 deg" as a length: a unit or the end of the text should stand here',
    ],
    ['kind: length, default: 5 mm, least: 1 mm', 'most is missing: a figure with its unit'],
    [
      'kind: length, default: 5 mm, least: 1 mm, most: .inf',
      'cannot read ".inf" as a length: a number is missing',
    ],
    [
      'kind: length, default: 5 mm, least: 1 mm, most: 1e308 mm',
      'cannot read "1e308 mm" as a length: a unit or the end of the text should stand here',
    ],
    [
      'kind: length, default: 5 mm, least: 1 mm, most: 999999 m',
      'cannot read "999999 m" as a length: it is more than 100 m',
    ],
    ['kind: size, default: 5 mm', '"size" is not one of length, angle, ratio, count, choice, yes-no'],
    ['default: 5 mm', 'kind is missing: one of length, angle, ratio, count, choice, yes-no'],
    ['kind: choice, default: a, options: { b: B }', 'the default, "a", is not one of b'],
    ['kind: yes-no, default: maybe', '"maybe" is not one of yes, no'],
    ['kind: yes-no, default: yes, least: no', 'there is no "least" in parameters.w'],
  ])('{ %s }: %s', (parameter, expected) => {
    expect(declare(parameter)).toBe(expected);
  });

  it('cannot be called by a word of the language', () => {
    const named = (name: string): string =>
      messageOf({ parameters: `${name}: { label: W, help: H, kind: yes-no, default: yes }` });
    expect(named('mm')).toBe('"mm" has a meaning in expressions, so nothing can be called by it');
    expect(named('and')).toBe('"and" has a meaning in expressions, so nothing can be called by it');
    expect(named('constructor')).toContain('"constructor" cannot be a name');
    expect(named('__proto__')).toContain('"__proto__" cannot be a name');
    expect(named('Height')).toContain('"Height" cannot be a name');
    expect(named('leg-width')).toContain('"leg-width" cannot be a name');
  });
});
