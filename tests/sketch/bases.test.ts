import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { standBase } from '../../src/base/index.ts';
import type { Problem } from '../../src/core/index.ts';
import {
  evaluateForm,
  type ParameterValue,
  readForm,
  type Sketch,
  type SketchedBase,
} from '../../src/sketch/index.ts';
import { formText, messageOf, pointedAt } from './form-text.ts';

const README = readFileSync(new URL('../../src/sketch/README.md', import.meta.url), 'utf8');
const EXAMPLE = readFileSync(new URL('../cases/forms/ridge-stand.yaml', import.meta.url), 'utf8');
const SPLAY = (14 * Math.PI) / 180;

/** The example with one text of it changed. */
function changed(from: string, to: string): string {
  if (EXAMPLE.split(from).length !== 2) throw new Error(`"${from}" does not stand once in the example`);
  return EXAMPLE.replace(from, to);
}

function sketchOf(text: string, values: Record<string, ParameterValue> = {}): Sketch {
  const form = readForm(text, 'stand.yaml');
  const sketch = form.ok ? evaluateForm(form.value, values) : form;
  if (!sketch.ok)
    throw new Error(sketch.problems.map((each) => `${each.line}:${each.column} ${each.message}`).join('\n'));
  return sketch.value;
}

const baseOf = (text: string, values: Record<string, ParameterValue> = {}): SketchedBase =>
  sketchOf(text, values).base!;

function problemOf(text: string, values: Record<string, ParameterValue> = {}): Problem {
  const form = readForm(text, 'stand.yaml');
  const sketch = form.ok ? evaluateForm(form.value, values) : form;
  if (sketch.ok) throw new Error('no problem was found');
  return sketch.problems[0]!;
}

/** Changes the example, and gives the problem's message and what it points at. */
function complaintOf(from: string, to: string, values: Record<string, ParameterValue> = {}): string {
  const text = changed(from, to);
  const problem = problemOf(text, values);
  const word = /^[\w.-]*/.exec(pointedAt(text, problem))![0];
  return `${word}: ${problem.message}`;
}

describe('the example of a base', () => {
  it('stands in the README as it is in the file', () => {
    expect(README).toContain(`\`\`\`yaml\n${EXAMPLE}\`\`\``);
  });

  it('is read and evaluated', () => {
    const base = baseOf(EXAMPLE);
    expect(base).toMatchObject({
      use: 'table',
      levellers: 0,
      top: { shape: 'rectangle', length: 1400, width: 800, thickness: 30, level: 700 },
      joints: [
        { name: 'ridge', label: 'Ridge', between: ['leg', 'leg'], kind: 'glued' },
        { name: 'tie_leg', label: 'Tie to leg', between: ['tie', 'leg'], kind: 'dowels' },
      ],
    });
    expect(base.planes).toEqual({
      floor: { kind: 'through', through: { x: 0, y: 0, z: 0 }, facing: { x: 0, y: 0, z: -1 } },
      underside: { kind: 'through', through: { x: 0, y: 0, z: 700 }, facing: { x: 0, y: 0, z: 1 } },
      leg_inner: { kind: 'face', of: { place: 'leg', face: 'inner', mirrored: [] }, out: 0 },
      leg_inner_right: {
        kind: 'face',
        of: { place: 'leg', face: 'inner', mirrored: ['left-right'] },
        out: 0,
      },
      ridge: { kind: 'mitre', between: ['leg_inner', 'leg_inner_right'], facing: { x: 1, y: 0, z: 0 } },
    });
    const [leg, tie] = base.places;
    expect(leg).toMatchObject({
      name: 'leg',
      part: 'leg',
      pin: { x: 0, y: 0 },
      pinDepth: 20,
      face: { x: 0, y: -1, z: 0 },
      trims: [
        { plane: 'floor', otherSide: false },
        { plane: 'underside', otherSide: false },
        { plane: 'ridge', otherSide: false },
      ],
      copies: [
        { kind: 'mirror', across: 'left-right' },
        { kind: 'repeat', count: 2, step: { x: 0, y: 500, z: 0 } },
      ],
      beam: false,
    });
    expect(leg!.along.x / leg!.along.z).toBeCloseTo(Math.tan(SPLAY), 12);
    expect(Math.hypot(leg!.along.x, leg!.along.z)).toBeCloseTo(1, 12);
    expect(tie!.trims).toEqual([
      { plane: 'leg_inner', otherSide: true },
      { plane: 'leg_inner_right', otherSide: true },
    ]);
  });

  it('stands: frames of two legs that meet in the ridge, a tie cut to both', () => {
    const standing = standBase(sketchOf(EXAMPLE));
    const parts = standing.ok ? standing.value.parts : [];
    expect(parts.map(({ id, mark, hand }) => `${id} ${mark} ${hand}`)).toEqual([
      'leg FL left',
      'leg-2 FR right',
      'leg-3 BL left',
      'leg-4 BR right',
      'tie F left',
      'tie-2 B left',
    ]);
    for (const { cuts } of parts) expect(cuts.every(({ meets }) => meets)).toBe(true);
  });

  it('lets the maker choose the joint, and leaves out what a condition leaves out', () => {
    expect(baseOf(EXAMPLE, { joint: 'loose_tenons' }).joints[1]!.kind).toBe('loose-tenons');
    const bare = baseOf(EXAMPLE, { tied: false });
    expect(bare.places.map(({ name }) => name)).toEqual(['leg']);
    expect(bare.joints.map(({ name }) => name)).toEqual(['ridge']);
  });
});

describe('a base', () => {
  it('belongs to grammar 2', () => {
    const text = changed('grammar: 2', 'grammar: 1');
    expect(problemOf(text)).toMatchObject({
      code: 'form.grammar',
      message: 'a base belongs to grammar 2: this form says 1',
      path: 'base',
    });
    expect(pointedAt(text, problemOf(text))).toBe('base:');
  });

  it('may be missing in grammar 2, where every part then has its quantity', () => {
    const plain = formText().replace('grammar: 1', 'grammar: 2');
    expect(readForm(plain, 'x').ok).toBe(true);
    const [problem] = problemsOfReading(plain.replace('quantity: { left: 1, right: 0 }\n', '\n'));
    expect(problem).toMatchObject({ code: 'form.missing', message: 'quantity is missing: a map' });
    expect(messageOf(formText().replace('quantity: { left: 1, right: 0 }', ''))).toBe(
      'quantity is missing: a map',
    );
  });

  it('counts the parts that it places, and is told how many there are of any other', () => {
    expect(sketchOf(EXAMPLE).parts.map(({ quantity }) => quantity)).toEqual([
      { left: 1, right: 0 },
      { left: 1, right: 0 },
    ]);
    const spare =
      'spare: { label: Spare, outline: leg, thickness: 40 mm, grain: 0, up: 0, centre_line: [pin, head]';
    expect(complaintOf('  leg: { label: Leg, outline', `  ${spare} }\n  leg: { label: Leg, outline`)).toBe(
      'spare: spare stands nowhere in the base, so it needs a quantity',
    );
    const counted = `  ${spare}, quantity: { left: 2, right: 0 } }\n  leg: { label: Leg, outline`;
    expect(sketchOf(changed('  leg: { label: Leg, outline', counted)).parts[0]!.quantity).toEqual({
      left: 2,
      right: 0,
    });
  });

  it.each([
    ['floor: { through', 'ground: { through', 'planes: a base has a plane called floor'],
    ['      part: tie', '      part: tye', 'tye: there is no part "tye": did you mean "tie"?'],
    ['face: leg.inner }', 'face: lag.inner }', 'lag.inner: there is no place "lag": did you mean "leg"?'],
    ['face: leg.inner }', 'face: leg.innner }', 'leg.innner: leg has no flat face "innner"'],
    [
      'face: leg.inner }',
      'face: inner }',
      'inner: "inner" names no face of a placed part: write place.face, place.back or place.edge',
    ],
    [
      '[leg_inner, leg_inner_right], f',
      '[leg_iner, leg_inner_right], f',
      'leg_iner: there is no plane in the base "leg_iner": did you mean "leg_inner"?',
    ],
    [
      '[floor, underside, ridge]',
      '[floor, undersid, ridge]',
      'undersid: there is no plane in the base "undersid": did you mean "underside"?',
    ],
    ['{ against: leg_inner },', '{ against: pin },', 'pin: there is no plane in the base "pin"'],
    ['between: [tie, leg]', 'between: [tie, legs]', 'legs: there is no place "legs": did you mean "leg"?'],
    [
      '[leg_inner, leg_inner_right], f',
      '[ridge, leg_inner_right], f',
      'ridge: these need each other: ridge → ridge',
    ],
    [
      '      pin: pin\n      deep: half\n      at: [0 mm',
      '      pin: pim\n      deep: half\n      at: [0 mm',
      'pim: there is no value or point "pim": did you mean "pin"?',
    ],
    ['at: [-foot, -250 mm, 0 mm]', 'at: [-foot, -250 mm, 1]', '1: 1 is a number: a length is needed here'],
    [
      'at: [-foot, -250 mm, 0 mm]',
      'at: [-foot, -250 mm]',
      'at: at should be a place in space: three lengths in [ ]',
    ],
    [
      '[tan(splay), 0, 1]',
      '[splay, 0, 1]',
      'splay: splay is an angle: a direction is three numbers or three lengths',
    ],
    [
      '[tan(splay), 0, 1]',
      '[foot, 0, 1]',
      '1: 1 is a number beside a length: a direction is three numbers or three lengths',
    ],
    [
      'by: joint }',
      'by: tied }',
      'tied: tied is a yes or no: a way to join, or a choice of some, is needed here',
    ],
    [
      'by: glued',
      'by: hot-glue',
      'hot-glue: "hot-glue" is not one of loose-tenons, dowels, mortise-and-tenon, halved, glued, screwed',
    ],
    ['{ dowels: Dowels,', '{ dowels: Dowels, nails: Nails,', 'joint: its option nails is no way to join'],
    [
      'mirror: left-right }',
      'mirror: top-bottom }',
      'top-bottom: "top-bottom" is not one of left-right, front-back',
    ],
    ['mirrored: left-right }', 'mirrored: left }', 'left: "left" is not one of left-right, front-back'],
    ['  use: table', '  use: chair', 'chair: "chair" is not one of table, desk, bench, stool'],
    [
      '      deep: half\n      at: [-foot',
      '      depe: half\n      at: [-foot',
      'depe: there is no "depe" in base.places.leg: did you mean "deep"?',
    ],
  ])('where %j is %j says: %s', (from, to, expected) => {
    expect(complaintOf(from, to)).toBe(expected);
  });

  it.each([
    [
      'repeat: 2, step: [0 mm, 500 mm, 0 mm] }]\n    tie',
      'repeat: 2.5, step: [0 mm, 500 mm, 0 mm] }]\n    tie',
      '2.5: 2.5 copies are not a whole number from 1 to 200',
    ],
    [
      'repeat: 2, step: [0 mm, 500 mm, 0 mm] }]\n    tie',
      'repeat: 150, step: [0 mm, 500 mm, 0 mm] }]\n    tie',
      'places: the base has 302 pieces of wood: at most 200 are placed',
    ],
    ['along: [1, 0, 0]', 'along: [0, 0 * 2, 0]', '0: this direction has no length'],
    [
      'along: [1, 0, 0]',
      'along: [0, -3, 0]',
      '0: tie cannot be placed: its length and its face look the same way',
    ],
    [
      'at: [-foot, -250 mm, 0 mm]',
      'at: [-foot, -250 m, 0 mm]',
      '-foot: this place lies more than 100 m away',
    ],
    [
      'level: height }',
      'level: height - height }',
      'height: a level of the top of 0 mm is none: it must be more than 0',
    ],
  ])('where %j is %j cannot be made: %s', (from, to, expected) => {
    expect(complaintOf(from, to)).toBe(expected);
  });

  it('has flat faces only where edges are straight', () => {
    const arc = EXAMPLE.replace(
      '{ line: inner, to: high_inner, role: routed }',
      '{ arc: inner, to: high_inner, role: routed, rise: 5 mm, bows: right }',
    );
    expect(problemOf(arc)).toMatchObject({
      message: 'leg has no flat face "inner"',
      expected: 'one of face, back, foot, head, outer',
    });
    const gone = EXAMPLE.replace(
      'inner, to: high_inner, role: routed }',
      'inner, to: high_inner, role: routed, when: tied }',
    );
    expect(problemOf(gone, { tied: false })).toMatchObject({ code: 'form.absent', line: 68 });
  });

  it('refuses a cut by a plane that is absent, unless the cut is left out as well', () => {
    const from = 'underside: { through: [0 mm, 0 mm, height], facing: [0, 0, 1] }';
    const text = changed(from, `${from}\n    tie_top: { face: tie.upper }`);
    const cut = text.replace('[floor, underside, ridge]', '[floor, underside, ridge, tie_top]');
    expect(problemOf(cut, { tied: false }).message).toBe(
      'tie_top is absent with these numbers, so leg cannot be cut by it',
    );
    const free = text.replace(
      '[floor, underside, ridge]',
      '[floor, underside, ridge, { inside: tie_top, when: tied }]',
    );
    expect(baseOf(free, { tied: false }).places[0]!.trims.map(({ plane }) => plane)).toEqual([
      'floor',
      'underside',
      'ridge',
    ]);
    expect(baseOf(free).places[0]!.trims).toHaveLength(4);
  });

  it('may carry a round top, turn its copies and lay a pin as deep as it likes', () => {
    const text = changed(
      'top: { length: 1400 mm, width: 800 mm,',
      'top: { round: tied, length: 900 mm, width: 800 mm,',
    )
      .replace('[{ mirror: left-right }, {', '[{ turn: 3, when: tied }, {')
      .replace(
        '      deep: half\n      at: [0 mm',
        '      deep: 7 mm\n      turns: [{ about: front-back, by: 1 deg }]\n      at: [0 mm',
      );
    const base = baseOf(text);
    expect(base.top).toMatchObject({ shape: 'round', length: 900, width: 900 });
    expect(base.places[0]!.copies[0]).toEqual({ kind: 'turn', count: 3 });
    expect(base.places[1]).toMatchObject({ pinDepth: 7, turns: [{ about: 'y', by: Math.PI / 180 }] });
    const bare = baseOf(text, { tied: false });
    expect(bare.top).toMatchObject({ shape: 'rectangle', length: 900, width: 800 });
    expect(bare.places[0]!.copies).toHaveLength(1);
  });
});

describe('a base that asks for too much', () => {
  it('is refused by count', () => {
    const planes = Array.from({ length: 100 }, (_, at) => `    p${at}: { face: leg.face }`).join('\n');
    expect(complaintOf('  planes:\n', `  planes:\n${planes}\n`)).toBe(
      'planes: the base has 105 planes: at most 100 are read',
    );
    const place = '{ label: L, part: leg, pin: pin, at: [0 mm, 0 mm, 0 mm] }';
    const places = Array.from({ length: 60 }, (_, at) => `    q${at}: ${place}`).join('\n');
    expect(complaintOf('  places:\n', `  places:\n${places}\n`)).toBe(
      'places: the base has 62 places: at most 60 are read',
    );
  });

  it('may multiply its copies without end: they are counted, not made', () => {
    const many = Array.from({ length: 100 }, () => '{ repeat: 200, step: [0 mm, 1 mm, 0 mm] }');
    const text = changed(
      '[{ mirror: left-right }, {',
      `[\n${many.map((each) => `        ${each},`).join('\n')}\n        {`,
    );
    expect(problemOf(text).code).toBe('form.too-many');
  });

  it('may call anything by a name that every map inherits', () => {
    for (const name of ['constructor', 'valueof', 'tostring', 'hasownproperty']) {
      const words = [
        ...new Set(EXAMPLE.match(/\b(?:leg|tie|inner|ridge|floor|pin|joint|leg_inner)\b(?!:)/g)),
      ];
      for (const word of words) {
        const text = EXAMPLE.replace(new RegExp(`(?<=[:{,[. ] ?)${word}\\b(?!:)`, 'g'), name);
        expect(text).not.toBe(EXAMPLE);
        const form = readForm(text, 'x');
        // An edge may be called so where its faces are called so as well.
        if (form.ok) expect(evaluateForm(form.value, {}).ok, `${word} as ${name}`).toBe(true);
        else expect(form.problems[0]!.code, `${word} as ${name}`).toMatch(/^form\.(unknown|name)/);
      }
    }
  });

  it('may be cut off or lose a character anywhere', () => {
    const from = EXAMPLE.indexOf('base:');
    for (let at = from; at < EXAMPLE.length; at += 29) {
      for (const broken of [EXAMPLE.slice(0, at), EXAMPLE.slice(0, at) + EXAMPLE.slice(at + 1)]) {
        const form = readForm(broken, 'x');
        const sketch = form.ok ? evaluateForm(form.value, {}) : form;
        if (sketch.ok) continue;
        for (const problem of sketch.problems) expect(problem.line).toBeGreaterThan(0);
      }
    }
  });
});

function problemsOfReading(text: string): readonly Problem[] {
  const form = readForm(text, 'x');
  return form.ok ? [] : form.problems;
}
