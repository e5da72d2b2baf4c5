import { describe, expect, it } from 'vitest';
import {
  formText,
  lengthOf,
  messageOf,
  pointedAt,
  problemsOf,
  type Sections,
  sketchOf,
} from './form-text.ts';

const DEG = Math.PI / 180;

/** A number by way of a length. */
const number = (expression: string): number => lengthOf(`(${expression}) * 1 mm`);
const message = (expression: string): string => messageOf({ values: `v: ${expression}`, points: 'p: v, 0' });

describe('arithmetic in a form', () => {
  it.each([
    ['1 + 2 * 3', 7],
    ['(1 + 2) * 3', 9],
    ['10 - 4 - 3', 3],
    ['24 / 4 / 3', 2],
    ['-2 ^ 2', -4],
    ['(-2) ^ 2', 4],
    ['2 * -3', -6],
    ['.5 + 2.', 2.5],
    ['if(1 < 2, 10, 20)', 10],
    ['if(not (1 < 2), 10, 20)', 20],
    ['if(1 < 2 and 3 < 2 or 5 == 5, 1, 2)', 1],
    ['if(yes == no, 1, 2)', 2],
    ['min(3, 1, 2) + max(3, 1, 2)', 4],
    ['clamp(7, 1, 5)', 5],
    ['round(2.6) + floor(2.6) + ceil(2.4)', 8],
    ['hypot(3, 4)', 5],
    ['sqrt(16)', 4],
    ['abs(-3)', 3],
    ['pi', Math.PI],
    ['sin(30 deg)', 0.5],
    ['cos(60 deg)', 0.5],
    ['tan(45 deg)', 1],
    ['12 mm / 4 mm', 3],
    ['asin(1) / 90 deg', 1],
    ['acos(0) / 90 deg', 1],
    ['atan(1) / 45 deg', 1],
    ['atan2(1 mm, 0) / 90 deg', 1],
  ])('%s comes to %f', (expression, expected) => {
    expect(number(expression)).toBeCloseTo(expected, 12);
  });

  it.each([
    ['12 mm', 12],
    ['7.3 cm', 73],
    ['1.5 m', 1500],
    ['1 in', 25.4],
    ['3/4 in', 19.05],
    ['28 3/4 in', 730.25],
    ['2 ft', 609.6],
    ['-28 3/4 in', -730.25],
    ['30 mm / 4', 7.5],
    ['sqrt(9 mm * 4 mm)', 6],
    ['hypot(3 mm, 4 mm)', 5],
    ['round(32.6 mm, 5 mm)', 35],
    ['floor(32.6 mm, 5 mm)', 30],
    ['ceil(32.6 mm, 5 mm)', 35],
    ['arc_length(100 mm, 1 rad)', 100],
    ['distance(a, c)', Math.hypot(100, 60)],
    ['c.y', 60],
    ['max(0, 5 mm)', 5],
    ['if(height > 1 m, 1 mm, 2 mm)', 2],
    ['height', 700],
  ])('%s is a length of %f mm', (expression, expected) => {
    expect(lengthOf(expression)).toBeCloseTo(expected, 12);
  });

  it('gives directions and the angles of corners', () => {
    expect(number('direction(a, c) / 1 rad')).toBeCloseTo(Math.atan2(60, 100), 12);
    expect(number('corner_angle(b, a, d) / 1 deg')).toBeCloseTo(90, 12);
    expect(number('direction(b, a) / 1 rad')).toBeCloseTo(180 * DEG, 12);
  });

  it('computes only the outcome of an "if" that is needed', () => {
    expect(lengthOf('if(gap > 0, 10 mm * (10 mm / gap), 4 mm)', 'gap: height - 700 mm')).toBe(4);
    expect(lengthOf('if(gap > 0, share, 4 mm)', 'gap: height - 700 mm\nshare: 10 mm * (10 mm / gap)')).toBe(
      4,
    );
  });
});

describe('units in a form', () => {
  it.each([
    ['height + 8 deg', 'a length and an angle cannot be added: height is a length, 8 deg is an angle'],
    ['8 deg - height', 'an angle and a length cannot be subtracted: 8 deg is an angle, height is a length'],
    [
      'height * height + height',
      'an area and a length cannot be added: height * height is an area, height is a length',
    ],
    ['height + 3', 'a length and a number cannot be added: height is a length, 3 is a number'],
    ['sin(height)', 'height is a length: an angle is needed here'],
    ['sin(0.5)', '0.5 is a number: an angle is needed here'],
    ['asin(8 deg)', '8 deg is an angle: a number is needed here'],
    ['sqrt(height)', 'height is a length: a square root can be taken of a number or an area'],
    ['height < 8 deg', 'a length and an angle cannot be compared: height is a length, 8 deg is an angle'],
    [
      'min(height, 8 deg)',
      'a length and an angle cannot be given to one "min": height is a length, 8 deg is an angle',
    ],
    ['if(height, 1, 2)', 'height is a length: a yes or no is needed here'],
    [
      'if(yes, height, 8 deg)',
      'a length and an angle cannot be the two outcomes of one "if": height is a length, 8 deg is an angle',
    ],
    ['not height', 'height is a length: a yes or no is needed here'],
    ['height and yes', 'height is a length: a yes or no is needed here'],
    ['a + b', 'a point cannot stand on either side of this: figures are needed'],
    ['-a', 'a is a point: a figure is needed here'],
    ['height.x', 'height is a length: a point is needed here'],
    ['distance(a, height)', 'height is a length: a point is needed here'],
    ['round(height)', 'height is a length: a number is needed here'],
    ['height is tall', 'height is a length: only a choice can be asked with "is"'],
    ['sqrt(1, 2)', 'sqrt takes 1 values, not 2'],
    ['hypot(1)', 'hypot takes 2 to 8 values, not 1'],
  ])('%s is refused: %s', (expression, expected) => {
    expect(message(expression)).toBe(expected);
  });

  it('lets a length times a length be an area, and its root a length', () => {
    expect(message('sin(height * height)')).toBe('height * height is an area: an angle is needed here');
    expect(lengthOf('sqrt(height * height)')).toBe(700);
    expect(message('sin(height / height)')).toBe('height / height is a number: an angle is needed here');
    expect(message('sin(height ^ 3)')).toBe('height ^ 3 is a volume: an angle is needed here');
    expect(message('sin(1 / height)')).toBe('1 / height is a number per length: an angle is needed here');
    expect(message('sin(height * 8 deg)')).toBe(
      'height * 8 deg is a length times an angle: an angle is needed here',
    );
  });

  it('points at the side of the sum that is meant, with file, line and column', () => {
    const text = formText({ values: 'good: 1 mm\nbad: good + (height * 8 deg)' });
    const [problem] = problemsOf(text);
    expect(problem).toMatchObject({ code: 'form.kind', file: 'plate.yaml', path: 'values.bad' });
    expect(pointedAt(text, problem!)).toBe('good + (height * 8 deg)');
    const inner = formText({ values: 'bad: 2 * sin(height)' });
    expect(pointedAt(inner, problemsOf(inner)[0]!)).toBe('height)');
    const quoted = formText({ values: 'bad: "2 * sin(height)"' });
    expect(pointedAt(quoted, problemsOf(quoted)[0]!)).toBe('height)"');
  });
});

describe('expressions that cannot be read', () => {
  it.each([
    ['1 +', 'cannot read "1 +": a value is missing', 'the end'],
    ['(1 + 2', 'cannot read "(1 + 2": ")" is missing', 'the end'],
    ['1 2', 'cannot read "1 2": an operator or the end should stand here', '"2"'],
    ['1 < 2 < 3', 'cannot read "1 < 2 < 3": comparisons cannot be chained', '"< 3"'],
    ['height $ 2', 'cannot read "height $ 2": an expression cannot contain this', '"$ 2"'],
    ['12 mmm', 'cannot read "12 mmm": an operator or the end should stand here', '"mmm"'],
    ['12mmm', 'cannot read "12mmm": a figure runs into a word', '"mmm"'],
    ['1e308', 'cannot read "1e308": a figure runs into a word', '"e308"'],
    [
      '99999999999999999999',
      'cannot read "99999999999999999999": a figure has too many digits',
      '"9999999999999999"',
    ],
    ['2 ^ height', 'cannot read "2 ^ height": a power is a whole figure from 1 to 6', '"height"'],
    ['2 ^ 999', 'cannot read "2 ^ 999": a power is a whole figure from 1 to 6', '"999"'],
    ['eval(1)', 'cannot read "eval(1)": there is no function "eval"', '"eval(1)"'],
    ['__proto__', 'cannot read "__proto__": "__proto__" cannot be a name', '"__proto__"'],
    ['a.z', 'cannot read "a.z": a point has x and y', '"z"'],
    ['a.constructor', 'cannot read "a.constructor": a point has x and y', '"constructor"'],
    ['mm', 'cannot read "mm": "mm" cannot stand here', '"mm"'],
  ])('%s: %s', (expression, text, found) => {
    expect(problemsOf({ values: `v: ${expression}` })[0]).toMatchObject({
      code: 'form.expression',
      message: text,
      found,
    });
  });

  it('nests only so deep, and is only so long', () => {
    expect(message(`${'('.repeat(60)}1${')'.repeat(60)}`)).toContain('nests at most 40 deep');
    expect(message('-'.repeat(60).concat('1'))).toContain('nests at most 40 deep');
    expect(message(`1${' + 1'.repeat(120)}`)).toContain('at most 400 characters');
    expect(number(`1${' + 1'.repeat(90)}`)).toBe(91);
  });

  it('offers the name that was probably meant', () => {
    expect(message('heigth + 1 mm')).toBe('there is no value or point "heigth": did you mean "height"?');
    expect(message('constructor')).toBe('there is no value or point "constructor"');
    expect(message('tostring')).toBe('there is no value or point "tostring"');
  });
});

describe('figures that do not exist', () => {
  it.each([
    ['1 mm * (1 mm / (height - 700 mm))', '(1 mm / (height - 700 mm)) divides by zero'],
    ['sqrt(-1 * height * height)', 'sqrt(-1 * height * height): -490000 has no square root'],
    ['asin(height / 1 mm)', 'asin(height / 1 mm): no angle has 700 as its sine'],
    ['acos(height / 1 mm)', 'acos(height / 1 mm): no angle has 700 as its cosine'],
    ['(height / 1 mm) ^ 6 * 1 mm', '(height / 1 mm) ^ 6 comes to a figure too large to use'],
    ['round(height, 0)', 'round(height, 0): the step must be more than 0'],
    ['clamp(height, 2 mm, 1 mm)', 'clamp(height, 2 mm, 1 mm): the least, 2, is more than the most, 1'],
    ['direction(a, a) * 1 mm / 1 rad', 'direction(a, a): two of the points are the same place'],
  ])('%s: %s', (expression, expected) => {
    const part = 'joints: { probe: { label: Probe, from: p, to: b } }';
    const wrap = expression.startsWith('a') ? `${expression} * 1 mm / 1 rad` : expression;
    expect(messageOf({ points: `p: "${wrap}, 0"`, part })).toBe(expected);
  });
});

describe('choices', () => {
  const parameters =
    'foot: { label: Foot, kind: choice, default: rounded, options: { square: Square, rounded: Rounded }, help: Shape. }';

  it('are asked with "is" and "is not"', () => {
    const at = (expression: string, foot: string): number => {
      const sections = { parameters, points: `probe: "if(${expression}, 1 mm, 2 mm), 0"` };
      return sketchAt(sections, foot);
    };
    expect(at('foot is rounded', 'rounded')).toBe(1);
    expect(at('foot is rounded', 'square')).toBe(2);
    expect(at('foot is not rounded', 'square')).toBe(1);
    expect(at('not foot is square', 'rounded')).toBe(1);
  });

  it('cannot be asked for an option that they do not have', () => {
    expect(messageOf({ parameters, values: 'v: foot is pointed' })).toBe(
      '"pointed" is not among its options: square, rounded',
    );
  });
});

function sketchAt(sections: Sections, foot: string): number {
  return sketchOf(sections, { foot }).points.probe!.x;
}
