import { describe, expect, it } from 'vitest';
import { evaluateForm, readForm } from '../../src/sketch/index.ts';
import { formText, problemsOf } from './form-text.ts';

/** Each would take minutes, gigabytes or the whole process if it were read as it asks to be. */
const HOSTILE: readonly (readonly [string, string, string])[] = [
  ['ten million characters', 'a'.repeat(10_000_000), 'form.too-large'],
  ['a line without end', `a: ${'x'.repeat(100_000)}`, 'form.line-too-long'],
  ['lists in lists on one line', '- '.repeat(60_000), 'form.line-too-long'],
  [
    'lists in lists',
    `a:\n${Array.from({ length: 400 }, (_, depth) => `${' '.repeat(depth)}-`).join('\n')}`,
    'form.too-deep',
  ],
  ['brackets in brackets', `a:\n  ${'[\n  '.repeat(30_000)}`, 'form.yaml'],
  ['closed brackets in brackets', `a: ${'['.repeat(400)}${']'.repeat(400)}`, 'form.too-deep'],
  ['braces in braces', `a: ${'{a: '.repeat(190)}1${'}'.repeat(190)}`, 'form.too-deep'],
  ['keys in keys', `${'? '.repeat(400)}\n`, 'form.name'],
  ['a bomb of aliases', aliasBomb(), 'form.alias'],
  ['an alias of itself', 'form: &a [*a]\n', 'form.alias'],
  ['a merge of a bomb', 'base: &b { x: 1 }\nform: { <<: *b }\n', 'form.alias'],
  [
    'thirty thousand keys',
    Array.from({ length: 12_000 }, (_, index) => `k${index}: 1`).join('\n'),
    'form.unknown-key',
  ],
  ['one key again and again', 'form: a\n'.repeat(14_000), 'form.twice'],
  ['thirty thousand entries', `form:\n${'- 1\n'.repeat(30_000)}`, 'form.too-many'],
  ['documents without end', '---\n'.repeat(30_000), 'form.documents'],
  ['directives without end', '%YAML 1.2\n'.repeat(10_000), 'form.empty'],
  ['quotes without end', `${'"'.repeat(900)}\n`.repeat(100), 'form.yaml'],
  ['a prototype as a key', '__proto__: { polluted: 1 }\n', 'form.name'],
  ['a constructor as a key', 'constructor: { prototype: { polluted: 1 } }\n', 'form.name'],
  ['a null byte', 'form: a\u0000b\n', 'form.missing'],
  ['a lone surrogate', 'form: \ud800\n', 'form.missing'],
];

function aliasBomb(): string {
  const lines = ['a0: &a0 [x, x, x, x, x, x, x, x, x, x]'];
  for (let level = 1; level < 30; level += 1) {
    lines.push(`a${level}: &a${level} [${Array.from({ length: 10 }, () => `*a${level - 1}`).join(', ')}]`);
  }
  return `${lines.join('\n')}\nform: *a29\n`;
}

describe('a hostile file', () => {
  it.each(HOSTILE)('%s is refused', (_, text, code) => {
    const form = readForm(text, 'hostile.yaml');
    expect(form.ok).toBe(false);
    const problems = form.ok ? [] : form.problems;
    expect(problems.map((each) => each.code)).toContain(code);
    expect(problems.length).toBeLessThanOrEqual(21);
    expect(
      problems.every((each) => each.file === 'hostile.yaml' && each.line! >= 1 && each.column! >= 1),
    ).toBe(true);
    expect(problems.every((each) => each.message.length < 400 && (each.found ?? '').length < 400)).toBe(true);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it('may point at what every map inherits', () => {
    expect(problemsOf({ points: 'p: { along: constructor.edge, by: 1 mm }' })[0]).toMatchObject({
      code: 'form.unknown',
      message: 'there is no outline "constructor"',
    });
  });

  it('may be random characters', () => {
    let state = 12345;
    const random = (below: number): number => {
      state = (state * 1103515245 + 12345) % 2147483648;
      return Math.floor((state / 2147483648) * below);
    };
    const alphabet = 'abz_01 \n\t:-[]{}"\'&*!|>%#,.?@`~\\()+=<é\u00a0';
    for (let round = 0; round < 150; round += 1) {
      const length = random(200);
      const text = Array.from({ length }, () => alphabet[random(alphabet.length)]).join('');
      expect(readForm(text, 'x').ok, JSON.stringify(text)).toBe(false);
    }
  });

  it('may be a sound form cut off or with a character gone anywhere', () => {
    const text = formText({
      values: 'v: max(height, 3 mm)',
      checks: '- { needs: v > 0, say: "{v} is wrong" }',
    });
    for (let at = 1; at < text.length; at += 37) {
      for (const broken of [text.slice(0, at), text.slice(0, at) + text.slice(at + 1)]) {
        const form = readForm(broken, 'x');
        if (form.ok) evaluateForm(form.value, {});
        else expect(form.problems.length).toBeGreaterThan(0);
      }
    }
  });
});

describe('a form that asks for too much', () => {
  it('is refused by count', () => {
    const values = Array.from({ length: 500 }, (_, index) => `v${index}: 1`).join('\n');
    expect(problemsOf({ values })[0]!.message).toMatch(
      /^the form has \d+ declarations: at most 400 are read$/,
    );
    const edges = Array.from(
      { length: 500 },
      (_, index) => `    - { line: e${index}, to: b, role: sawn }`,
    ).join('\n');
    const many = problemsOf({
      outlines: `plate:\n  start: a\n  edges:\n${edges}`,
      points: 'a: 0, 0\nb: 1 mm, 0',
    });
    expect(many[0]!.message).toBe('the form has 500 edges: at most 400 are read');
    const nails = Array.from({ length: 150 }, () => 'b').join(', ');
    const batten = formText().replace(
      '{ line: right, to: c, role: routed }',
      `{ batten: right, to: c, role: routed, through: [${nails}] }`,
    );
    expect(problemsOf(batten)[0]!.message).toBe('the form has 150 nails in right: at most 100 are read');
  });

  it('may chain all its values, each through deep brackets, in any order', () => {
    const open = '('.repeat(35);
    const close = ')'.repeat(35);
    const chain = Array.from({ length: 300 }, (_, index) => `v${index}: ${open}v${index + 1} + 1 mm${close}`);
    const values = [...chain, 'v300: 1 mm'].join('\n');
    const form = readForm(formText({ values, points: 'p: v0, 0' }), 'x');
    const sketch = form.ok ? evaluateForm(form.value, {}) : form;
    expect(sketch.ok && sketch.value.points.p!.x).toBe(301);
  });

  it('cannot grow a figure beyond use by squaring it again and again', () => {
    const values = [
      'v0: height',
      ...Array.from({ length: 60 }, (_, index) => `v${index + 1}: v${index} * v${index} / 1 mm`),
    ].join('\n');
    const part = 'joints: { probe: { label: Probe, from: p, to: a } }';
    expect(problemsOf({ values, points: 'p: v60, 0', part })[0]).toMatchObject({ code: 'form.figure' });
  });

  it('doubles no work: calls inside calls are checked once', () => {
    const nested = `${'max(1, '.repeat(38)}1${')'.repeat(38)}`;
    expect(readForm(formText({ values: `v: ${nested}` }), 'x').ok).toBe(true);
  });
});
