import { describe, expect, it } from 'vitest';
import { type Arc, areaOfOutline, directionAt, type Edge, findFaults } from '../../src/geometry/index.ts';
import { formText, messageOf, pointedAt, problemsOf, type Sections, sketchOf } from './form-text.ts';

const POINTS = 'a: 0, 0\nb: 100 mm, 0\nc: 100 mm, 60 mm\nd: 0, 60 mm\nknee: 60 mm, 40 mm\n';

function plate(cuts: string, right = 'line: right'): Sections {
  const outlines = `
plate:
  start: a
  edges:
    - { line: bottom, to: b, role: sawn }
    - { ${right}, to: c, role: routed }
    - { line: top, to: d, role: sawn }
    - { line: left, to: a, role: sawn }
  corners:
${cuts
  .split('\n')
  .map((line) => `    ${line}`)
  .join('\n')}`;
  return { outlines, points: POINTS };
}

function edgesOf(sections: Sections): readonly Edge[] {
  const { region } = sketchOf(sections).parts[0]!;
  expect(findFaults([region])).toEqual([]);
  return region.outer.edges;
}

const edge = (edges: readonly Edge[], id: string): Edge => edges.find((each) => each.tag.id === id)!;

function expectSmooth(edges: readonly Edge[], id: string): void {
  const at = edges.findIndex((each) => each.tag.id === id);
  const around = [edges.at(at - 1)!, edges[at]!, edges[(at + 1) % edges.length]!] as const;
  for (const [a, b] of [
    [around[0], around[1]],
    [around[1], around[2]],
  ] as const) {
    expect(b.from).toEqual(a.to);
    expect(directionAt(b, 0).x).toBeCloseTo(directionAt(a, 1).x, 9);
    expect(directionAt(b, 0).y).toBeCloseTo(directionAt(a, 1).y, 9);
  }
}

describe('a round', () => {
  it('takes the place of a corner between two lines, and carries its name', () => {
    const edges = edgesOf(plate('c: { round: 20 mm }'));
    const round = edge(edges, 'c') as Arc;
    expect(round).toMatchObject({
      kind: 'arc',
      turn: 1,
      radius: 20,
      centre: { x: 80, y: 40 },
      tag: { role: 'routed' },
    });
    expectSmooth(edges, 'c');
    expect(areaOfOutline({ edges })).toBeCloseTo(6000 - (400 - Math.PI * 100), 9);
  });

  it('rounds a hollow corner from the other side', () => {
    const outlines = `
plate:
  start: a
  edges:
    - { line: bottom, to: b, role: sawn }
    - { line: right, to: c, role: routed }
    - { line: under, to: knee, role: routed }
    - { line: top, to: d, role: sawn }
    - { line: left, to: a, role: sawn }
  corners:
    knee: { round: 10 mm }`;
    const edges = edgesOf({ outlines, points: `${POINTS}`.replace('d: 0, 60 mm', 'd: 0, 90 mm') });
    expect(edge(edges, 'knee')).toMatchObject({ turn: -1, radius: 10 });
    expectSmooth(edges, 'knee');
  });

  it('fits between a line and an arc, and between two arcs', () => {
    const lineArc = edgesOf(plate('c: { round: 8 mm }', 'arc: right, rise: 12 mm, bows: right'));
    expectSmooth(lineArc, 'c');
    const hollow = edgesOf(plate('c: { round: 8 mm }', 'arc: right, rise: 12 mm, bows: left'));
    expectSmooth(hollow, 'c');
    const sections = plate('c: { round: 8 mm }', 'arc: right, rise: 12 mm, bows: left');
    const twoArcs = edgesOf({
      ...sections,
      outlines: sections.outlines!.replace(
        'line: top, to: d, role: sawn',
        'arc: top, to: d, role: sawn, rise: 9 mm, bows: left',
      ),
    });
    expectSmooth(twoArcs, 'c');
  });

  it('lies at its own corner when it would fit at another of the same two edges too', () => {
    const outlines = `
disc:
  start: e
  edges:
    - { line: flat, to: b, role: sawn }
    - { arc: rim, to: e, role: routed, radius: 60 mm, bows: right, long: yes }
  corners:
    b: { round: 5 mm }`;
    const edges = edgesOf({ outlines, points: 'e: 0, 0\nb: 100 mm, 0' });
    expectSmooth(edges, 'b');
    expect((edge(edges, 'b') as Arc).centre.x).toBeGreaterThan(90);
    expect(edge(edges, 'flat').from).toEqual({ x: 0, y: 0 });
  });

  it('may take all of an edge: a foot rounded from both sides', () => {
    const edges = edgesOf(plate('b: { round: 30 mm }\nc: { round: 30 mm }'));
    expect(edges.map((each) => each.tag.id)).toEqual(['bottom', 'b', 'c', 'top', 'left']);
    expect(areaOfOutline({ edges })).toBeCloseTo(70 * 60 + (Math.PI * 900) / 2, 8);
  });

  it('says what the largest is when it does not fit', () => {
    const text = formText(plate('c: { round: 61 mm }'));
    const [problem] = problemsOf(text);
    expect(problem!.message).toBe('round of 61 mm does not fit at c: 60 mm is the largest');
    expect(problem).toMatchObject({ code: 'form.round', expected: 'at most 60 mm', file: 'plate.yaml' });
    expect(pointedAt(text, problem!)).toBe('61 mm }');
    expect(messageOf(plate('b: { round: 30 mm }\nc: { round: 31 mm }'))).toBe(
      'round of 31 mm does not fit at c: 30 mm is the largest',
    );
  });

  it('rounds the largest down, so that it can be typed', () => {
    // At a corner of 100.4° in the wood, 60 mm of edge take 60 · tan 50.2° = 72.0 mm; here 34.41 · tan 50.2° = 41.3 mm.
    const angle = (100.4 / 180) * Math.PI;
    const short = 41.34 / Math.tan(angle / 2);
    const points = `a: 0, 0\nb: 200 mm, 0\nknee: ${200 + 34.45} mm, 0\nc: ${(234.45 - short * Math.cos(angle)).toFixed(9)} mm, ${(short * Math.sin(angle)).toFixed(9)} mm\nd: 0, 90 mm`;
    const outlines = `
plate:
  start: a
  edges:
    - { line: bottom, to: knee, role: routed }
    - { line: side, to: c, role: routed }
    - { line: top, to: d, role: routed }
    - { line: left, to: a, role: routed }
  corners:
    knee: { round: SIZE }`;
    const at = (size: string): Sections => ({ outlines: outlines.replace('SIZE', size), points });
    expect(messageOf(at('60 mm'))).toBe('round of 60 mm does not fit at knee: 41.3 mm is the largest');
    expectSmooth(edgesOf(at('41.3 mm')), 'knee');
    expect(messageOf(at('41.4 mm'))).toBe('round of 41.4 mm does not fit at knee: 41.3 mm is the largest');
  });

  it('knows the largest against an arc, in closed form', () => {
    // Line y = 0 against the quarter circle of radius 60 about (40, 0) that meets it square at (100, 0): a circle of
    // radius r in the corner has its centre at height r, 60 − r from (40, 0). It runs out of line at (40, 0): r = 30.
    const outlines = `
plate:
  start: e
  edges:
    - { line: bottom, to: b, role: routed }
    - { arc: right, to: f, role: routed, radius: 60 mm, bows: right }
    - { line: left, to: e, role: routed }
  corners:
    b: { round: SIZE }`;
    const at = (size: string): Sections => ({
      outlines: outlines.replace('SIZE', size),
      points: 'e: 40 mm, 0\nb: 100 mm, 0\nf: 40 mm, 60 mm',
    });
    expect(messageOf(at('40 mm'))).toBe('round of 40 mm does not fit at b: 30 mm is the largest');
    expectSmooth(edgesOf(at('29.9 mm')), 'b');
  });

  it('is written in the unit of the maker', async () => {
    const { evaluateForm } = await import('../../src/sketch/index.ts');
    const { readOrThrow } = await import('./form-text.ts');
    const form = readOrThrow(formText(plate('c: { round: 3 in }')));
    const sketch = evaluateForm(form, {}, { style: { unit: 'in', denominator: 16 } });
    expect(!sketch.ok && sketch.problems[0]!.message).toBe(
      'round of 3 in does not fit at c: 2 5/16 in is the largest',
    );
  });

  it('needs a corner, and a size above nothing', () => {
    const straight = plate('e: { round: 5 mm }');
    const split = {
      outlines: straight.outlines!.replace(
        '- { line: top',
        '- { line: upper, to: e, role: sawn }\n    - { line: top',
      ),
      points: `${POINTS}e: 50 mm, 60 mm`,
    };
    expect(messageOf(split)).toBe('e is no corner: the edges run on smoothly or turn back there');
    expect(messageOf(plate('c: { round: 0 }'))).toBe('a round at c of 0 mm is none: it must be more than 0');
    expect(messageOf(plate('e: { round: 5 mm }'))).toBe('there is no corner "e"');
  });

  it('is there only when its condition holds', () => {
    expect(edgesOf(plate('c: { round: 5 mm, when: height > 1 m }')).length).toBe(4);
    expect(edgesOf(plate('c: { round: 5 mm, when: height < 1 m }')).length).toBe(5);
  });

  it('goes with its corner when the edge that made the corner is absent', () => {
    expect(edgesOf(plate('c: { round: 5 mm }', 'line: right, when: height > 1 m')).length).toBe(3);
  });

  it('rounds the corner at which the outline starts', () => {
    const edges = edgesOf(plate('a: { round: 10 mm }'));
    expectSmooth(edges, 'a');
    expect(edge(edges, 'a').tag.role).toBe('sawn');
  });
});

describe('a chamfer', () => {
  it('is set back by as much along both edges', () => {
    const edges = edgesOf(plate('c: { chamfer: 10 mm }'));
    expect(edge(edges, 'c')).toMatchObject({ kind: 'line', from: { x: 100, y: 50 }, to: { x: 90, y: 60 } });
  });

  it('may be set back by another length along the edge that leaves', () => {
    const edges = edgesOf(plate('c: { chamfer: 10 mm, leaving: 25 mm, role: left }'));
    expect(edge(edges, 'c')).toMatchObject({
      from: { x: 100, y: 50 },
      to: { x: 75, y: 60 },
      tag: { role: 'left' },
    });
  });

  it('says what the largest is when it does not fit', () => {
    expect(messageOf(plate('c: { chamfer: 70 mm }'))).toBe(
      'chamfer of 70 mm does not fit at c: 60 mm is the largest',
    );
    expect(messageOf(plate('c: { chamfer: 10 mm, leaving: 101 mm }'))).toBe(
      'chamfer of 101 mm does not fit at c along top: 100 mm is the largest',
    );
  });
});

describe('a mirrored half', () => {
  const half = (more: string): Sections => ({
    outlines: `
panel:
  start: foot
  edges:
    - { line: floor, to: toe, role: sawn }
    - { arc: side, to: shoulder, role: routed, rise: 6 mm, bows: left }
    - { line: head, to: crown, role: joint }
  corners:
    toe: { round: 5 mm }
  mirror: { over: [foot, 90 deg], suffix: far }${more}`,
    points: 'foot: 0, 0\ntoe: 40 mm, 0\nshoulder: 60 mm, 200 mm\ncrown: 0, 200 mm',
  });

  it('is one outline with its image, named with the suffix', () => {
    const edges = edgesOf(half(''));
    expect(edges.map((each) => each.tag.id)).toEqual(['floor', 'toe', 'side', 'head', 'side_far', 'toe_far']);
    const { minX, maxX } = edges.reduce(
      (box, { from }) => ({ minX: Math.min(box.minX, from.x), maxX: Math.max(box.maxX, from.x) }),
      { minX: 0, maxX: 0 },
    );
    expect(minX).toBeCloseTo(-maxX, 12);
  });

  it('joins the edges that meet the axis square', () => {
    const edges = edgesOf(half(''));
    expect(edge(edges, 'head')).toMatchObject({ from: { x: 60, y: 200 }, to: { x: -60, y: 200 } });
    const floor = edges.filter((each) => each.tag.id === 'floor');
    expect(floor.length).toBe(1);
    expect(floor[0]!.from.x).toBeCloseTo(-floor[0]!.to.x, 12);
  });

  it('keeps a corner on the axis where the edges do not meet it square', () => {
    const sections = half('');
    const peaked = { ...sections, points: sections.points!.replace('crown: 0, 200 mm', 'crown: 0, 230 mm') };
    expect(edgesOf(peaked).map((each) => each.tag.id)).toContain('head_far');
    const rounded = {
      ...peaked,
      outlines: peaked.outlines!.replace('toe: { round: 5 mm }', 'crown: { round: 5 mm }'),
    };
    expectSmooth(edgesOf(rounded), 'crown');
  });

  it('must run from the axis to the axis', () => {
    const sections = half('');
    const off = { ...sections, points: sections.points!.replace('crown: 0, 200 mm', 'crown: 3 mm, 200 mm') };
    expect(messageOf(off)).toBe(
      'the half ends at (3 mm, 200 mm), which is not on the line it is mirrored over',
    );
  });

  it('may be one edge: an arc and its image are a whole round', () => {
    const outlines = `
plate:
  start: a
  edges:
    - { arc: rim, to: d, role: routed, radius: 30 mm, bows: right }
  mirror: { over: [a, d], suffix: far }`;
    const edges = edgesOf({ outlines, points: 'a: 0, 0\nd: 0, 60 mm' });
    expect(areaOfOutline({ edges })).toBeCloseTo(Math.PI * 900, 8);
  });
});
