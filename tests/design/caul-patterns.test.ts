import { expect, test } from 'vitest';
import { caulAsPart } from '../../src/base/index.ts';
import { compute, printPattern } from '../../src/design/index.ts';
import { FONTS } from '../print/support/prints.ts';
import { readPages } from '../print/support/read-pdf.ts';
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

test('a caul is sawn: its print tells how a small wedge is sawn and clamped over, and nothing of routing', async () => {
  const computed = compute(sampleDesign('stool-base', ['leg'], 'mm'), { wanted: { cauls: true } });
  if (!computed.ok) throw new Error(computed.problems[0]!.message);
  const printed = async (name: string) => readPages(await printPattern(computed.value, name, FONTS));
  const wordsOf = (pages: Awaited<ReturnType<typeof printed>>) =>
    pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
  const caul = await printed('caul-1-part');
  const [first, sheets] = [wordsOf(caul.slice(0, 1)), wordsOf(caul.slice(1))];
  // What any shop rule for small work at a saw asks, and what a wedge under load does: common practice.
  for (const said of [
    'at the end of a longer board',
    '150 mm from the blade',
    'push with a stick',
    'let the blade stop',
    'Tighten slowly',
    'Slope on the work',
    'local codes and licensed practice',
  ]) {
    expect(first).toContain(said);
  }
  const routing = /rout(er|ing)|cutter|bearing|bushing|template|runs on|left on at the ends|saw the blank/i;
  expect(first).not.toMatch(routing);
  expect(sheets).not.toMatch(routing);
  // It has no side that shows and no way up, but sides to press on and to be pressed on.
  expect(sheets).not.toMatch(/show face|face side|\bup\b/);
  expect(sheets).toContain('Under the jaw');
  expect(sheets).toContain('Slope, on the work');
  // The angle printed is the one that the edges of the wedge enclose.
  const { part } = computed.value.parts.find((each) => each.part.name === 'caul-1')!;
  const slope = (measureLoop(part.region.outer.edges) * 180) / Math.PI;
  const shown = /([\d.]+)° ?Slope/.exec(sheets)?.[1];
  expect(Math.abs(Number(shown) - slope)).toBeLessThan(0.006);
  // The same print of a part that is routed has all of it: the words looked for are those that are printed.
  const routed = wordsOf(await printed(computed.value.patterns[0]!.pattern.name));
  for (const word of ['Unplug before changing cutter', 'template runs on', 'show face']) {
    expect(routed).toContain(word);
  }
  expect(routed).not.toContain('Tighten slowly');
});

test('nothing of routing is drawn or reckoned of a caul, and a view of it is refused that only a routed part has', () => {
  const asked = { part: 'caul-1', view: 'part', mirrored: false } as const;
  const computed = compute(design, { wanted: { patterns: [asked], drawings: [asked] } });
  if (!computed.ok) throw new Error(computed.problems[0]!.message);
  const { drawings, parts } = computed.value;
  const { scene, withNotes } = drawings[0]!.pattern;
  const roles = new Set([...scene.marks, ...withNotes.marks].map(({ role }) => role));
  expect(roles.has('part')).toBe(true);
  for (const role of ['template', 'as-routed', 'residue', 'saw-line', 'feed', 'fixing'] as const) {
    expect(roles.has(role)).toBe(false);
  }
  const texts = withNotes.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
  expect(texts).not.toContain('Routing');
  const { routing } = parts.find(({ part }) => part.name === 'caul-1')!;
  expect([routing.template, routing.asRouted, routing.blank, routing.differences]).toEqual([[], [], [], []]);
  for (const view of ['template', 'as-routed', 'all'] as const) {
    for (const wanted of [
      { patterns: [{ ...asked, view }] },
      { patterns: [], drawings: [{ ...asked, view }] },
    ]) {
      const refused = compute(design, { wanted });
      expect(!refused.ok && refused.problems.map(({ code, path }) => [code, path])).toEqual([
        ['design.only-sawn', 'patterns.0.view'],
      ]);
    }
  }
});

test('a design of which cauls are not asked has its parts alone', () => {
  const plain = compute(design, { wanted: { patterns: [] } });
  expect(plain.ok && plain.value.parts.some(({ part }) => part.name.startsWith('caul'))).toBe(false);
});
