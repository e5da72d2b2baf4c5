import { describe, expect, it } from 'vitest';
import { formText, messageOf, pointedAt, problemsOf, type Sections, sketchOf } from './form-text.ts';

/** A point of the plate form: a (0, 0), b (100, 0), c (100, 60), d (0, 60). */
function point(declaration: string, more: Sections = {}): { x: number; y: number } {
  return sketchOf({ ...more, points: `probe: ${declaration}\n${more.points ?? ''}` }).points.probe!;
}

function message(declaration: string, more: Sections = {}): string {
  const used = 'joints: { probe: { label: Probe, from: probe, to: b } }';
  return messageOf({ ...more, points: `probe: ${declaration}\n${more.points ?? ''}`, part: used });
}

describe('a point', () => {
  it.each([
    ['10 mm, 20 mm', 10, 20],
    ['{ at: "10 mm, 20 mm" }', 10, 20],
    ['c', 100, 60],
    ['if(height > 1 m, a, c)', 100, 60],
    ['{ from: c, over: -10 mm }', 90, 60],
    ['{ from: c, up: 5 mm, over: 1 cm }', 110, 65],
    [
      '{ from: a, by: 50 mm, toward: direction_ac }',
      50 * Math.cos(Math.atan2(60, 100)),
      50 * Math.sin(Math.atan2(60, 100)),
    ],
    ['{ between: [a, c], share: 0.25 }', 25, 15],
    ['{ between: [a, c], share: -0.5 }', -50, -30],
    ['{ between: [b, c], by: 12 mm }', 100, 12],
    ['{ cross: [[a, c], [b, d]] }', 50, 30],
    ['{ cross: [[a, 45 deg], [d, 0 deg]] }', 60, 60],
    ['{ along: plate.right, by: 15 mm }', 100, 15],
    ['{ along: plate.right, back: 15 mm }', 100, 45],
    ['{ along: plate.top, share: 0.1 }', 90, 60],
    ['{ mirror: c, over: [a, d] }', -100, 60],
    ['{ mirror: c, over: level }', 100, -20],
    ['{ turn: b, about: a, by: 90 deg }', 0, 100],
    ['{ turn: c, about: b, by: -90 deg }', 160, 0],
    ['{ drop: c, onto: [a, 90 deg] }', 0, 60],
    ['{ drop: c, onto: level }', 100, 20],
  ])('%s is at (%f, %f)', (declaration, x, y) => {
    const made = point(declaration, {
      values: 'direction_ac: direction(a, c)',
      points: 'e: 0, 20 mm',
      planes: 'level: { through: e, facing: 90 deg }',
    });
    expect(made.x).toBeCloseTo(x, 10);
    expect(made.y).toBeCloseTo(y, 10);
  });

  it('lies along an edge as it is drawn, before its corners are rounded', () => {
    const outlines = `
plate:
  start: a
  edges:
    - { line: bottom, to: b, role: sawn }
    - { arc: right, to: c, role: routed, rise: 30 mm, bows: right }
    - { line: top, to: d, role: routed }
    - { line: left, to: a, role: routed }
  corners:
    d: { round: 10 mm }`;
    const points = 'a: 0, 0\nb: 100 mm, 0\nc: 100 mm, 60 mm\nd: 0, 60 mm';
    expect(point('{ along: plate.top, back: 0 }', { outlines, points })).toEqual({ x: 0, y: 60 });
    const half = point('{ along: plate.right, share: 0.5 }', { outlines, points });
    expect(half.x).toBeCloseTo(130, 10);
    expect(half.y).toBeCloseTo(30, 10);
    const quarter = point('{ along: plate.right, by: "arc_length(30 mm, 45 deg)" }', { outlines, points });
    expect(quarter.x).toBeCloseTo(100 + 30 * Math.SQRT1_2, 10);
    expect(quarter.y).toBeCloseTo(30 - 30 * Math.SQRT1_2, 10);
  });
});

describe('a point that cannot be', () => {
  it.each([
    [
      '{ from: a, by: 300 * height, toward: 0 }',
      'this point lies more than 100 m away, at (210000 mm, 0 mm)',
    ],
    ['{ cross: [[a, b], [c, d]] }', 'the two lines are parallel: they cross nowhere'],
    ['{ cross: [[a, a], [c, d]] }', 'the two points of this line are the same place'],
    ['{ between: [a, a], by: 3 mm }', 'the two points are the same place, so no direction lies between them'],
    ['{ along: plate.right, by: 61 mm }', '61 mm along plate.right is not on it: the edge is 60 mm long'],
    ['{ along: plate.right, back: -1 mm }', '-1 mm along plate.right is not on it: the edge is 60 mm long'],
    [
      '{ along: plate.right, share: 1.5 }',
      'a share of 1.5 along plate.right is not on it: the edge is 60 mm long',
    ],
  ])('%s: %s', (declaration, expected) => {
    expect(message(declaration)).toBe(expected);
  });

  it('does not disturb a form that does not need it', () => {
    expect(point('10 mm, 0', { points: 'nowhere: { cross: [[a, b], [c, d]] }' })).toEqual({ x: 10, y: 0 });
  });

  it.each([
    ['{ from: a }', 'probe should be from with over and up, or with by and toward'],
    ['{ from: a, by: 3 mm }', 'probe should be from with over and up, or with by and toward'],
    ['{ between: [a, b] }', 'probe should be between with share or with by'],
    ['{ between: [a], share: 0.5 }', 'between should be two points in [ ]'],
    ['{ along: right, by: 3 mm }', 'along should be an edge, written outline.edge'],
    ['{ along: plate.wrong, by: 3 mm }', 'there is no edge "wrong"'],
    ['{ along: plate.rigth, by: 3 mm }', 'there is no edge "rigth": did you mean "right"?'],
    ['{ along: plat.right, by: 3 mm }', 'there is no outline "plat": did you mean "plate"?'],
    ['{ along: plate.right, by: 3 mm, share: 0.5 }', 'probe should be along with one of by, back and share'],
    [
      '{ from: a, over: max(1 mm, 2 mm) }',
      '"2 mm)" cannot be a name: an expression with a comma in it is quoted inside { } and [ ]',
    ],
    ['{ somewhere: a }', 'a point is a map with at, from, between, cross, along, mirror, turn, drop'],
    ['{ turn: a, about: b, by: 3 mm }', '3 mm is a length: an angle is needed here'],
    ['{ turn: a, about: b, by: 3 deg, extra: 1 }', 'there is no "extra" in points.probe'],
    ['[a, b]', 'a point is a map with at, from, between, cross, along, mirror, turn, drop'],
    ['{ cross: [a, [b, c]] }', 'a is a point: a plane is needed here'],
    [
      '{ drop: c, onto: [a, 3 mm] }',
      'a length stands here: a line is given by a second point or a direction',
    ],
  ])('%s is refused: %s', (declaration, expected) => {
    expect(messageOf({ points: `probe: ${declaration}` })).toBe(expected);
  });
});

describe('declarations in a circle', () => {
  it('are named in order, from the one that stands first', () => {
    const values = 'length: foot.x * 2';
    const text = formText({ values, points: 'foot: length, 0' });
    const [problem, ...others] = problemsOf(text);
    expect(problem).toMatchObject({
      code: 'form.cycle',
      found: 'length → foot → length',
      path: 'values.length',
    });
    expect(problem!.message).toBe('these need each other: length → foot → length');
    expect(pointedAt(text, problem!)).toBe('length: foot.x * 2');
    expect(others).toEqual([]);
  });

  it('are found through an edge that a point lies on', () => {
    const text = formText().replace('c: 100 mm, 60 mm', 'c: { along: plate.right, by: 3 mm }');
    expect(messageOf(text)).toBe('these need each other: c → plate.right → c');
  });

  it('are found when one needs itself, and apart from each other', () => {
    const problems = problemsOf({ values: 'v: v + 1 mm\nw: x * 2\nx: w / 2' });
    expect(problems.map((each) => each.found)).toEqual(['v → v', 'w → x → w']);
  });
});
