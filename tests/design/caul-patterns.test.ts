import { expect, test } from 'vitest';
import { caulAsPart } from '../../src/base/index.ts';
import { compute } from '../../src/design/index.ts';
import { measureLoop } from './caul-angles.ts';
import { sampleDesign } from './sample-design.ts';

const design = sampleDesign('stool-base', [], 'mm');

test('cauls that gluing needs have patterns at full size on sheets of their own, with name and quantity', () => {
  const computed = compute(design, { wanted: { patterns: [], cauls: true } });
  if (!computed.ok) throw new Error(computed.problems[0]!.message);
  const { base, patterns, parts } = computed.value;
  expect(base!.cauls.length).toBeGreaterThan(0);
  expect(patterns.map(({ request }) => request.part)).toEqual(base!.cauls.map(({ name }) => name));
  for (const caul of base!.cauls) {
    const { pattern, plan } = patterns.find(({ request }) => request.part === caul.name)!;
    expect(plan.sheets.length).toBeGreaterThan(0);
    const said = pattern.scene.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])).join(' ');
    expect(`${pattern.title} ${said}`).toContain(caulAsPart(caul).label);
    // What is drawn has the wedge's angle between its slope and its foot, and there are as many as places to press on.
    const { part } = parts.find((each) => each.part.name === caul.name)!;
    expect(part.quantity).toEqual({ left: caul.places.length, right: 0 });
    expect(measureLoop(part.region.outer.edges)).toBeCloseTo(caul.angle, 9);
  }
});

test('one caul is asked for by its name, and one that is not there is refused', () => {
  const one = compute(design, { wanted: { patterns: [{ part: 'caul-1', view: 'part', mirrored: false }] } });
  expect(one.ok && one.value.patterns.map(({ request }) => request.part)).toEqual(['caul-1']);
  const none = compute(design, {
    wanted: { patterns: [{ part: 'caul-99', view: 'part', mirrored: false }] },
  });
  expect(none.ok).toBe(false);
});

test('a design of which cauls are not asked has its parts alone', () => {
  const plain = compute(design, { wanted: { patterns: [] } });
  expect(plain.ok && plain.value.parts.some(({ part }) => part.name.startsWith('caul'))).toBe(false);
});
