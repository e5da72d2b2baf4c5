import { describe, expect, it } from 'vitest';
import { type Arc, areaOfOutline, directionAt, type Edge, findFaults } from '../../src/geometry/index.ts';
import { formText, messageOf, pointedAt, problemsOf, sketchOf } from './form-text.ts';

/** A plate whose right edge, from b (100, 0) up to c (100, 60), is the one given. */
function plateWith(right: string, before = '- { line: bottom, to: b, role: sawn }'): string {
  return `
plate:
  start: a
  edges:
    ${before}
    - { ${right}, to: c, role: routed }
    - { line: top, to: d, role: routed }
    - { line: left, to: a, role: routed }`;
}

function edgesOf(outlines: string, points = ''): readonly Edge[] {
  const { region } = sketchOf({ outlines, points: corners(points) }).parts[0]!;
  expect(findFaults([region])).toEqual([]);
  return region.outer.edges;
}

const corners = (more: string): string => `a: 0, 0\nb: 100 mm, 0\nc: 100 mm, 60 mm\nd: 0, 60 mm\n${more}`;

function arcOf(right: string, points = ''): Arc {
  const arc = edgesOf(plateWith(right), points).find((edge) => edge.tag.id === 'right');
  if (arc?.kind !== 'arc') throw new Error('no arc');
  return arc;
}

const message = (right: string, points = ''): string =>
  messageOf({ outlines: plateWith(right), points: corners(points) });

describe('an arc by radius and side', () => {
  it('swells to the side that it bows to, looking along it', () => {
    const out = arcOf('arc: right, radius: 50 mm, bows: right');
    expect(out).toMatchObject({ turn: 1, radius: 50 });
    expect(out.centre.x).toBeCloseTo(60, 10);
    expect(out.centre.y).toBeCloseTo(30, 10);
    const hollow = arcOf('arc: right, radius: 50 mm, bows: left');
    expect(hollow).toMatchObject({ turn: -1, radius: 50 });
    expect(hollow.centre.x).toBeCloseTo(140, 10);
  });

  it('takes the longer way round when asked', () => {
    const long = arcOf('arc: right, radius: 50 mm, bows: right, long: yes');
    expect(long.centre.x).toBeCloseTo(140, 10);
    const area = areaOfOutline({
      edges: edgesOf(plateWith('arc: right, radius: 50 mm, bows: right, long: yes')),
    });
    // Plate, and a disc less the segment of chord 60 in it.
    const half = Math.asin(30 / 50);
    const segment = 50 * 50 * (half - Math.sin(2 * half) / 2);
    expect(area).toBeCloseTo(6000 + Math.PI * 2500 - segment, 8);
  });

  it('may be half a circle exactly, and no less than that', () => {
    expect(arcOf('arc: right, radius: 30 mm, bows: right').centre).toEqual({ x: 100, y: 30 });
    const wide = `
plate:
  start: a
  edges:
    - { arc: bottom, to: b, role: routed, radius: 300 mm, bows: right }
    - { line: back, to: a, role: routed }`;
    const text = formText({ outlines: wide, points: 'a: 0, 0\nb: 700 mm, 0' });
    const [problem] = problemsOf(text);
    expect(problem!.message).toBe('an arc of radius 300 mm cannot span 700 mm: the least is 350 mm');
    expect(problem).toMatchObject({ code: 'form.radius', expected: '350 mm or more', file: 'plate.yaml' });
    expect(pointedAt(text, problem!)).toMatch(/^300 mm, bows: right/);
  });

  it('must have a radius above nothing', () => {
    expect(message('arc: right, radius: 0, bows: left')).toBe(
      'a radius of 0 mm is none: it must be more than 0',
    );
    expect(message('arc: right, radius: -5 mm, bows: left')).toBe(
      'a radius of -5 mm is none: it must be more than 0',
    );
  });
});

describe('an arc by its rise', () => {
  it('stands off its chord by so much at the middle', () => {
    const arc = arcOf('arc: right, rise: 10 mm, bows: right');
    expect(arc.radius).toBeCloseTo(50, 10);
    expect(arc.centre.x + arc.radius).toBeCloseTo(110, 10);
  });

  it('is a straight line when it does not rise', () => {
    expect(edgesOf(plateWith('arc: right, rise: 0, bows: right')).every((edge) => edge.kind === 'line')).toBe(
      true,
    );
  });

  it('is a straight line when it is too flat for its centre to be told', () => {
    const flat = plateWith('arc: right, rise: 0.000001 mm, bows: right');
    expect(edgesOf(flat).every((edge) => edge.kind === 'line')).toBe(true);
    const wide = plateWith('arc: right, radius: 100000000 mm, bows: right');
    expect(edgesOf(wide).every((edge) => edge.kind === 'line')).toBe(true);
  });

  it('swells to the side that bows says, so its rise is never less than nothing', () => {
    expect(message('arc: right, rise: -3 mm, bows: right')).toBe(
      'a rise of -3 mm is less than 0: bows says to which side the arc swells',
    );
  });
});

describe('an arc through a point', () => {
  it('passes exactly through it, on either side', () => {
    const arc = arcOf('arc: right, through: e', 'e: 110 mm, 30 mm');
    expect(arc).toMatchObject({ turn: 1 });
    expect(arc.radius).toBeCloseTo(50, 10);
    expect(arcOf('arc: right, through: e', 'e: 90 mm, 30 mm')).toMatchObject({ turn: -1 });
    const off = arcOf('arc: right, through: e', 'e: 107 mm, 41 mm');
    expect(Math.hypot(107 - off.centre.x, 41 - off.centre.y)).toBeCloseTo(off.radius, 10);
  });

  it('cannot be drawn through three points on one straight line', () => {
    expect(message('arc: right, through: e', 'e: 100 mm, 30 mm')).toBe(
      'right cannot pass through e: the three points lie on one straight line',
    );
    expect(message('arc: right, through: b')).toBe(
      'right cannot pass through b: the three points lie on one straight line',
    );
  });
});

describe('an arc that follows the edge before it', () => {
  it('leaves in the direction in which that edge arrived', () => {
    const arc = arcOf('arc: right, smooth: yes');
    const start = directionAt(arc, 0);
    expect(start.x).toBeCloseTo(1, 12);
    expect(start.y).toBeCloseTo(0, 12);
    expect(arc.radius).toBeCloseTo(30, 10);
  });

  it('follows an arc as well as a line', () => {
    const before = '- { arc: bottom, to: b, role: sawn, rise: 20 mm, bows: right }';
    const edges = edgesOf(plateWith('arc: right, smooth: yes', before));
    const [first, second] = edges;
    expect(directionAt(second!, 0).x).toBeCloseTo(directionAt(first!, 1).x, 10);
    expect(directionAt(second!, 0).y).toBeCloseTo(directionAt(first!, 1).y, 10);
  });

  it('has an edge before it, and does not end straight behind', () => {
    const first = '- { arc: bottom, to: b, role: sawn, smooth: yes }';
    expect(messageOf({ outlines: plateWith('line: right', first), points: corners('') })).toBe(
      'bottom is the first edge drawn: there is none before it to follow smoothly',
    );
    const back = plateWith('line: right').replace('line: top, to: d', 'arc: top, to: b, smooth: yes');
    expect(messageOf({ outlines: back, points: corners('') })).toBe(
      'top cannot follow right smoothly: b lies straight behind',
    );
  });
});

describe('a batten curve', () => {
  it('passes through its nails, leaves and arrives as told, and is smooth all along', () => {
    const right = 'batten: right, through: [e, f], leaving: 45 deg, arriving: 135 deg';
    const arcs = edgesOf(plateWith(right), 'e: 112 mm, 18 mm\nf: 111 mm, 45 mm').filter(
      (edge) => edge.tag.id === 'right',
    );
    expect(arcs.length).toBeGreaterThan(3);
    expect(directionAt(arcs[0]!, 0).x).toBeCloseTo(Math.SQRT1_2, 9);
    expect(directionAt(arcs.at(-1)!, 1).x).toBeCloseTo(-Math.SQRT1_2, 9);
    expect(arcs.some((arc) => arc.to.x === 112 && arc.to.y === 18)).toBe(true);
    expect(arcs.some((arc) => arc.to.x === 111 && arc.to.y === 45)).toBe(true);
    for (const [index, arc] of arcs.slice(1).entries()) {
      const before = directionAt(arcs[index]!, 1);
      expect(directionAt(arc, 0).x).toBeCloseTo(before.x, 8);
      expect(directionAt(arc, 0).y).toBeCloseTo(before.y, 8);
    }
  });

  it('can follow the edge before it', () => {
    const arcs = edgesOf(plateWith('batten: right, through: [e], leaving: smooth'), 'e: 118 mm, 30 mm');
    const start = directionAt(arcs.find((arc) => arc.tag.id === 'right')!, 0);
    expect(start.x).toBeCloseTo(1, 9);
  });

  it('cannot run through one place twice', () => {
    expect(message('batten: right, through: [e, f]', 'e: 110 mm, 30 mm\nf: 110 mm, 30 mm')).toBe(
      'right cannot run through e and f: they are the same place',
    );
  });
});

describe('an outline', () => {
  it('is anticlockwise, whichever way it is drawn', () => {
    const clockwise = `
plate:
  start: a
  edges:
    - { line: left, to: d, role: routed }
    - { line: top, to: c, role: routed }
    - { line: right, to: b, role: routed }
    - { line: bottom, to: a, role: sawn }`;
    const edges = edgesOf(clockwise);
    expect(areaOfOutline({ edges })).toBe(6000);
    expect(edges.map((edge) => edge.tag.id)).toEqual(['bottom', 'right', 'top', 'left']);
  });

  it('leaves no gap where an edge is absent', () => {
    const outlines = plateWith('line: right, when: height > 1 m');
    const edges = edgesOf(outlines);
    expect(edges.map((edge) => edge.tag.id)).toEqual(['bottom', 'top', 'left']);
    expect(edges[1]).toMatchObject({ from: { x: 100, y: 0 }, to: { x: 0, y: 60 } });
  });

  it('takes one of two ways of drawing an edge', () => {
    const two = plateWith('line: right, when: height > 1 m').replace(
      '- { line: top',
      '- { arc: right, to: c, role: routed, rise: 5 mm, bows: right, when: height <= 1 m }\n    - { line: top',
    );
    expect(edgesOf(two).map((edge) => edge.kind)).toEqual(['line', 'arc', 'line', 'line']);
    const both = two
      .replace('when: height <= 1 m', 'when: height < 2 m')
      .replace('when: height > 1 m', 'when: height > 1 mm');
    expect(messageOf({ outlines: both, points: corners('') })).toContain('right has no length');
  });

  it('must close', () => {
    const open = plateWith('line: right').replace('line: left, to: a', 'line: left, to: e');
    expect(messageOf({ outlines: open, points: corners('e: 3 mm, 1 mm') })).toBe(
      'plate does not close: it starts at (0 mm, 0 mm) and ends at (3 mm, 1 mm)',
    );
  });

  it('must not cross itself: both edges and the place are named', () => {
    const crossed = plateWith('line: right');
    const points = 'a: 0, 0\nb: 100 mm, 0\nc: 0, 60 mm\nd: 100 mm, 60 mm';
    const text = formText({ outlines: crossed, points });
    const [problem] = problemsOf(text);
    expect(problem).toMatchObject({ code: 'form.crossing', file: 'plate.yaml' });
    expect(problem!.message).toMatch(
      /^plate crosses itself: (right meets left|left meets right) at \(50 mm, 30 mm\)$/,
    );
    expect(problem!.line).toBeGreaterThan(1);
  });

  it('has no edge without length', () => {
    const points = 'a: 0, 0\nb: 100 mm, 0\nc: 100 mm, 0\nd: 0, 60 mm';
    expect(messageOf({ outlines: plateWith('line: right'), points })).toBe(
      'right has no length: it starts and ends at (100 mm, 0 mm)',
    );
  });

  it.each([
    ['line: right, radius: 3 mm', 'there is no "radius" in outlines.plate.edges.1'],
    ['arc: right', '1 should be an arc with one of radius, rise, through and smooth'],
    [
      'arc: right, radius: 3 mm',
      '1 should be bows: left or right, with radius or rise and with nothing else',
    ],
    [
      'arc: right, radius: 3 mm, rise: 2 mm, bows: left',
      '1 should be an arc with one of radius, rise, through and smooth',
    ],
    ['arc: right, rise: 3 mm, bows: left, long: yes', '1 should be long only with radius'],
    ['curve: right', 'an edge is a map with line, arc, batten'],
    ['arc: right, radius: 50 mm, bows: out', '"out" is not one of left, right'],
    ['line: top', 'plate has an edge top already'],
  ])('refuses { %s }: %s', (right, expected) => {
    const found = messageOf({ outlines: plateWith(right), points: corners('') });
    expect(found).toBe(expected);
  });

  it('says which role is missing or wrong', () => {
    const text = formText().replace('{ line: top, to: d, role: routed }', '{ line: top, to: d }');
    expect(messageOf(text)).toBe('role is missing: one of routed, sawn, joint, left');
    expect(messageOf(formText().replace('role: sawn', 'role: cut'))).toBe(
      '"cut" is not one of routed, sawn, joint, left',
    );
  });
});
