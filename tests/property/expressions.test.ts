import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateForm, readForm } from '../../src/sketch/index.ts';
import { formText } from '../sketch/form-text.ts';

/** An expression of one kind as text, and what it comes to when computed directly. */
interface Tree {
  readonly text: string;
  readonly value: number;
}

const pair = (arbitrary: fc.Arbitrary<Tree>) => fc.tuple(arbitrary, arbitrary);

/** Random trees of lengths (mm) and plain numbers; every operation in brackets or by precedence alone. */
const { length } = fc.letrec<{ length: Tree; number: Tree; angle: Tree }>((tie) => ({
  number: fc.oneof(
    { maxDepth: 5 },
    fc.integer({ min: 1, max: 99 }).map((n) => ({ text: `${n / 4}`, value: n / 4 })),
    pair(tie('number')).map(([a, b]) => ({ text: `(${a.text} + ${b.text})`, value: a.value + b.value })),
    pair(tie('number')).map(([a, b]) => ({ text: `(${a.text}) * (${b.text})`, value: a.value * b.value })),
    pair(tie('length')).map(([a, b]) =>
      b.value === 0
        ? { text: '1', value: 1 }
        : { text: `(${a.text}) / (${b.text})`, value: a.value / b.value },
    ),
    tie('angle').map((a) => ({ text: `sin(${a.text})`, value: Math.sin(a.value) })),
    tie('angle').map((a) => ({ text: `cos(${a.text})`, value: Math.cos(a.value) })),
    tie('number').map((a) => ({ text: `(${a.text}) ^ 2`, value: a.value ** 2 })),
  ),
  length: fc.oneof(
    { maxDepth: 5 },
    fc.integer({ min: 1, max: 999 }).map((n) => ({ text: `${n / 8} mm`, value: n / 8 })),
    fc.integer({ min: 1, max: 40 }).map((n) => ({ text: `${n} 3/4 in`, value: (n + 0.75) * 25.4 })),
    fc.constant({ text: 'height', value: 700 }),
    pair(tie('length')).map(([a, b]) => ({ text: `(${a.text} + ${b.text})`, value: a.value + b.value })),
    pair(tie('length')).map(([a, b]) => ({ text: `(${a.text} - (${b.text}))`, value: a.value - b.value })),
    fc
      .tuple(tie('number'), tie('length'))
      .map(([a, b]) => ({ text: `(${a.text}) * (${b.text})`, value: a.value * b.value })),
    pair(tie('length')).map(([a, b]) => ({
      text: `max(${a.text}, ${b.text})`,
      value: Math.max(a.value, b.value),
    })),
    pair(tie('length')).map(([a, b]) => ({
      text: `hypot(${a.text}, ${b.text})`,
      value: Math.hypot(a.value, b.value),
    })),
    pair(tie('length')).map(([a, b]) => ({
      text: `if(${a.text} < ${b.text}, ${a.text}, ${b.text})`,
      value: Math.min(a.value, b.value),
    })),
    tie('length').map((a) => ({ text: `-(${a.text})`, value: -a.value })),
    tie('length').map((a) => ({
      text: `sqrt((${a.text}) * (${a.text}))`,
      value: Math.sqrt(a.value * a.value),
    })),
  ),
  angle: fc.oneof(
    { maxDepth: 3 },
    fc
      .integer({ min: -90, max: 90 })
      .map((n) => ({ text: `${n < 0 ? `-${-n}` : n} deg`, value: (n * Math.PI) / 180 })),
    pair(tie('angle')).map(([a, b]) => ({ text: `(${a.text} + ${b.text})`, value: a.value + b.value })),
    pair(tie('length')).map(([a, b]) => ({
      text: `atan2(${a.text}, ${b.text})`,
      value: Math.atan2(a.value, b.value),
    })),
  ),
}));

function near(found: number, expected: number): boolean {
  return Math.abs(found - expected) <= 1e-9 * Math.max(1, Math.abs(expected));
}

describe('a random expression', () => {
  it('comes to what a direct evaluation comes to', () => {
    let computed = 0;
    fc.assert(
      fc.property(length, ({ text, value }) => {
        fc.pre(text.length < 390 && Math.abs(value) < 1e5);
        const form = readForm(formText({ points: `p: "${text}, 0"` }), 'x');
        if (!form.ok) throw new Error(form.problems[0]!.message);
        const sketch = evaluateForm(form.value, {});
        const point = sketch.ok ? sketch.value.points.p : undefined;
        // A figure on the way may be beyond what is allowed; the point is then left out.
        if (point === undefined) return;
        computed += 1;
        expect(near(point.x, value), `${text}: ${point.x}, not ${value}`).toBe(true);
      }),
      { numRuns: 200 },
    );
    expect(computed).toBeGreaterThan(100);
  });

  it('is refused when a length in it becomes an angle', () => {
    let refused = 0;
    fc.assert(
      fc.property(length, fc.nat(), ({ text }, pick) => {
        const literals = [...text.matchAll(/[\d.]+ mm/g)];
        fc.pre(literals.length > 1 && text.length < 390);
        const at = literals[pick % literals.length]!;
        const broken = `${text.slice(0, at.index)}3 deg${text.slice(at.index + at[0].length)}`;
        // A ratio of two lengths, or the two sides of one angle, or a branch of a root still fail: nothing else has the unit.
        const form = readForm(formText({ points: `p: "${broken}, 0"` }), 'x');
        if (form.ok) return;
        refused += 1;
        expect(form.problems.every((each) => each.code === 'form.kind' && each.line !== undefined)).toBe(
          true,
        );
      }),
      { numRuns: 100 },
    );
    expect(refused).toBeGreaterThan(20);
  });
});
