import { describe, expect, it } from 'vitest';
import { areaOfOutline } from '../../src/geometry/index.ts';
import { evaluateForm } from '../../src/sketch/index.ts';
import {
  formText,
  messageOf,
  pointedAt,
  problemsOf,
  readOrThrow,
  type Sections,
  sketchOf,
} from './form-text.ts';

const part = (sections: Sections) => sketchOf(sections).parts[0]!;

describe('an opening', () => {
  const withOpening = (opening: string, points = ''): Sections => ({
    openings: `hole: { label: Hole, ${opening} }`,
    part: 'openings: [hole]',
    points: `mid: 50 mm, 30 mm\nfar: 70 mm, 30 mm\n${points}`,
  });

  it('may be a circle: its loop runs clockwise, its edge is called after it', () => {
    const { region, openings } = part(withOpening('circle: { centre: mid, diameter: 20 mm }'));
    expect(region.holes).toHaveLength(1);
    expect(areaOfOutline(region.holes[0]!)).toBeCloseTo(-Math.PI * 100, 9);
    expect(region.holes[0]!.edges[0]!.tag).toEqual({ id: 'hole.rim', role: 'routed' });
    expect(openings).toEqual([{ name: 'hole', label: 'Hole', hole: 0, plunge: { x: 50, y: 30 } }]);
    expect(part(withOpening('circle: { centre: mid, radius: 10 mm }')).region).toEqual(region);
  });

  it('may be a slot with round ends, each edge with a name of its own', () => {
    const { region, openings } = part(withOpening('role: left, slot: { from: mid, to: far, width: 12 mm }'));
    const [loop] = region.holes;
    expect(areaOfOutline(loop!)).toBeCloseTo(-(20 * 12 + Math.PI * 36), 9);
    expect(loop!.edges.map((edge) => edge.tag.id).sort()).toEqual([
      'hole.end',
      'hole.left',
      'hole.right',
      'hole.start',
    ]);
    expect(loop!.edges.every((edge) => edge.tag.role === 'left')).toBe(true);
    expect(openings[0]!.plunge).toEqual({ x: 60, y: 30 });
    const left = loop!.edges.find((edge) => edge.tag.id === 'hole.left')!;
    expect(left.from.y).toBeCloseTo(36, 10);
  });

  it('may be any outline, with its rounds, its corners and its plunge', () => {
    const outlines = `
plate:
  start: a
  edges:
    - { line: bottom, to: b, role: sawn }
    - { line: right, to: c, role: routed }
    - { line: top, to: d, role: routed }
    - { line: left, to: a, role: routed }
window:
  start: e
  edges:
    - { line: sill, to: f, role: routed }
    - { line: jamb, to: g, role: routed }
    - { line: back, to: e, role: routed }
  corners:
    g: { round: 3 mm }`;
    const points =
      'a: 0, 0\nb: 100 mm, 0\nc: 100 mm, 60 mm\nd: 0, 60 mm\ne: 20 mm, 20 mm\nf: 60 mm, 20 mm\ng: 60 mm, 50 mm\np: 50 mm, 25 mm';
    const made = part({
      outlines,
      points,
      openings: 'window: { label: Window, outline: window, plunge: p }',
      part: 'openings: [window]',
    });
    expect(made.region.holes[0]!.edges.map((edge) => edge.tag.id)).toEqual([
      'window.back',
      'window.g',
      'window.jamb',
      'window.sill',
    ]);
    expect(areaOfOutline(made.region.holes[0]!)).toBeLessThan(-590);
    expect(made.corners.map((corner) => corner.name)).toEqual([
      'b',
      'c',
      'd',
      'a',
      'window.f',
      'window.g',
      'window.e',
    ]);
  });

  it('is there only when its condition holds', () => {
    expect(
      part(withOpening('circle: { centre: mid, diameter: 20 mm }, when: height > 1 m')).region.holes,
    ).toEqual([]);
  });

  it.each([
    ['circle: { centre: mid, diameter: 70 mm }', /^hole meets (top|bottom) at /],
    ['circle: { centre: q, diameter: 10 mm }', /^hole lies outside plate$/],
    ['circle: { centre: mid, diameter: 0 }', /^a diameter of 0 mm is none: it must be more than 0$/],
    ['circle: { centre: mid }', /^circle should be a centre with a diameter or a radius$/],
    [
      'circle: { centre: mid, diameter: 10 mm }, plunge: far',
      /^the plunge of hole, \(70 mm, 30 mm\), is not in its waste$/,
    ],
    ['slot: { from: mid, to: mid, width: 10 mm }', /^a slot runs between two places, and these are one$/],
    ['outline: plate', /^plunge is missing: a point$/],
    ['outline: plat, plunge: mid', /^there is no outline "plat": did you mean "plate"\?$/],
    ['square: mid', /^an opening is a map with outline, circle, slot$/],
  ])('{ %s } is refused', (opening, expected) => {
    expect(messageOf(withOpening(opening, 'q: 300 mm, 30 mm'))).toMatch(expected);
  });

  it('keeps clear of the other openings', () => {
    const two = {
      openings:
        'hole: { label: Hole, circle: { centre: mid, diameter: 20 mm } }\nslot: { label: Slot, slot: { from: mid, to: far, width: 6 mm } }',
      part: 'openings: [hole, slot]',
      points: 'mid: 50 mm, 30 mm\nfar: 70 mm, 30 mm',
    };
    expect(messageOf(two)).toMatch(/^slot meets hole\.rim at /);
    const inside = { ...two, openings: two.openings.replace('width: 6 mm', 'width: 40 mm') };
    expect(messageOf(inside)).toMatch(/^slot (meets|lies)/);
    expect(messageOf({ ...two, part: 'openings: [hole, hole]' })).toBe('hole is cut twice');
    expect(messageOf({ ...two, part: 'openings: [hle]' })).toBe(
      'there is no opening "hle": did you mean "hole"?',
    );
  });
});

describe('a part', () => {
  it('has its key dimensions, joint lines and directions', () => {
    const made = part({
      part: `
grain: direction(a, c)
joints:
  rail: { label: Rail, from: a, to: b }
  absent: { label: Absent, from: a, to: b, when: height > 1 m }
dimensions:
  diagonal: { label: Diagonal, between: [a, c] }
  width: { label: Width, between: [a, c], along: 0 }
  corner: { label: Corner, angle: [a, b, c] }`,
    });
    expect(made.grain).toBeCloseTo(Math.atan2(60, 100), 12);
    expect(made.joints).toEqual([
      { name: 'rail', label: 'Rail', from: { x: 0, y: 0 }, to: { x: 100, y: 0 } },
    ]);
    expect(made.dimensions.map(({ name, value }) => [name, Number(value.toFixed(9))])).toEqual([
      ['diagonal', Number(Math.hypot(100, 60).toFixed(9))],
      ['width', 100],
      ['corner', Number((Math.PI / 2).toFixed(9))],
    ]);
  });

  it.each([
    ['thickness: 0', 'a thickness of 0 mm is none: it must be more than 0'],
    ['quantity: { left: 1.5, right: 0 }', 'a quantity of 1.5 is not a whole number from 0 to 999'],
    ['quantity: { left: 0, right: 0 }', 'plate is made no times'],
    ['centre_line: [a, a]', 'the two ends of the centre line are the same place'],
    ['joints: { rail: { label: Rail, from: a, to: a } }', 'the two ends of joint rail are the same place'],
    ['dimensions: { r: { label: R, radius: right } }', 'right is not one arc, so it has no radius'],
    [
      'dimensions: { r: { label: R, radius: nothing } }',
      'nothing is not on the part with these numbers, so it has no radius',
    ],
    [
      'dimensions: { r: { label: R, angle: [a, a, b] } }',
      'r has no arms: two of its points are the same place',
    ],
    ['outline: plat', 'there is no outline "plat": did you mean "plate"?'],
    ['grain: 3 mm', '3 mm is a length: an angle is needed here'],
    ['label: ""', 'a line of text is missing'],
    ['when: height > 1 m', 'test-plate makes no part with these numbers'],
  ])('with { %s } is refused: %s', (line, expected) => {
    expect(messageOf({ part: line })).toBe(expected);
  });

  it('reports every problem with a place in the file', () => {
    const text = formText({ part: 'thickness: 0\ncentre_line: [a, a]' });
    const problems = problemsOf(text);
    expect(problems.map((each) => pointedAt(text, each))).toEqual(['0', 'a, a]']);
    expect(problems.every((each) => each.file === 'plate.yaml')).toBe(true);
  });
});

describe('a check of the form', () => {
  const parameters = `
foot_width: { label: Foot, kind: length, default: 40 mm, least: 10 mm, most: 90 mm, help: Level. }
head_width: { label: Head, kind: length, default: 60 mm, least: 10 mm, most: 90 mm, help: Level. }
splay: { label: Splay, kind: angle, default: 8 deg, least: 0 deg, most: 20 deg, help: Lean. }`;
  const checks = `
- { needs: foot_width <= head_width, say: "the foot, {foot_width}, must not be wider than the head, {head_width}" }
- { needs: splay < 15 deg, when: foot_width > 50 mm, say: "a lean of {splay} is too much" }`;
  const form = readOrThrow(formText({ parameters, checks }));

  it('holds or says why not, with the numbers in the unit of the maker', () => {
    expect(evaluateForm(form, {}).ok).toBe(true);
    const wide = evaluateForm(form, { foot_width: 63.5 });
    expect(!wide.ok && wide.problems).toMatchObject([
      {
        code: 'form.check',
        message: 'the foot, 63.5 mm, must not be wider than the head, 60 mm',
        expected: 'foot_width <= head_width',
      },
    ]);
    const inches = evaluateForm(form, { foot_width: 63.5 }, { style: { unit: 'in', denominator: 16 } });
    expect(!inches.ok && inches.problems[0]!.message).toBe(
      'the foot, 2 1/2 in, must not be wider than the head, 2 3/8 in',
    );
  });

  it('is made only when its own condition holds', () => {
    const lean = (18 / 180) * Math.PI;
    expect(evaluateForm(form, { splay: lean }).ok).toBe(true);
    const wide = evaluateForm(form, { splay: lean, foot_width: 55 });
    expect(!wide.ok && wide.problems.map((each) => each.message)).toEqual(['a lean of 18° is too much']);
  });

  it('speaks only of what is declared', () => {
    expect(messageOf({ parameters, checks: '- { needs: yes, say: "{foot_widht} is wrong" }' })).toBe(
      'there is no value "foot_widht": did you mean "foot_width"?',
    );
    expect(messageOf({ parameters, checks: '- { needs: foot_width, say: "wrong" }' })).toBe(
      'foot_width is a length: a yes or no is needed here',
    );
  });
});

describe('planes', () => {
  it('are kept in the sketch, and serve as lines', () => {
    const sketch = sketchOf({
      planes: 'level: { through: c, facing: 90 deg }',
      points: 'p: { cross: [level, [a, 45 deg]] }',
    });
    expect(sketch.planes).toEqual({ level: { through: { x: 100, y: 60 }, facing: Math.PI / 2 } });
    expect(sketch.points.p!.x).toBeCloseTo(60, 10);
  });
});
