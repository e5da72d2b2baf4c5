import { describe, expect, test } from 'vitest';
import {
  areaOfRegions,
  boundsOfRegions,
  distance,
  type Edge,
  findFaults,
  locate,
  nearestOnEdges,
  pointAt,
  type Region,
  subtractRegions,
  symmetricDifference,
} from '../../src/geometry/index.ts';
import { routePart, type Tooling } from '../../src/routing/index.ts';
import {
  bearingTooling,
  bushingTooling,
  hollowLeg,
  LEG,
  loopOf,
  openingAt,
  partOf,
  rectangle,
  reversed,
  startingAt,
} from './support/parts.ts';

const edgesOf = (regions: readonly Region[]): Edge[] =>
  regions.flatMap(({ outer, holes }) => [outer, ...holes].flatMap(({ edges }) => edges));
const named = (regions: readonly Region[], id: string): Edge[] =>
  edgesOf(regions).filter((edge) => edge.tag.id === id);
const sawnRectangle = (width: number, height: number) =>
  rectangle(width, height, { foot: 'sawn', head: 'sawn' });

describe('a template that runs on past sawn ends', () => {
  test('is the part itself along its routed edges when the bearing is as large as the cutter', () => {
    const { template } = routePart(partOf(sawnRectangle(80, 700)), bearingTooling(19));
    expect(boundsOfRegions(template)).toEqual({ minX: 0, maxX: 80, minY: -50, maxY: 750 });
    expect(areaOfRegions(template)).toBeCloseTo(80 * 800, 6);
  });

  test('is smaller by the offset along routed edges, not at its ends', () => {
    const { template, offset } = routePart(partOf(sawnRectangle(80, 700)), bushingTooling(10, 20));
    expect(offset).toBe(5);
    const box = boundsOfRegions(template);
    expect([box.minX, box.maxX, box.minY, box.maxY]).toEqual(
      [5, 75, -50, 750].map((v) => expect.closeTo(v, 9)),
    );
    expect(areaOfRegions(template)).toBeCloseTo(70 * 800, 6);
  });

  test('grows for a bearing smaller than the cutter, its ends cut straight across', () => {
    const tooling = bearingTooling(19, { guide: { kind: 'bearing', diameter: 12, at: 'shank' } });
    const { template, offset } = routePart(partOf(sawnRectangle(80, 700)), tooling);
    expect(offset).toBe(-3.5);
    expect(template).toHaveLength(1);
    expect(areaOfRegions(template)).toBeCloseTo(87 * 800, 6);
  });

  test('runs on straight and tangent from a curved edge, by the length asked for', () => {
    const bowed = loopOf([
      [0, 0, 'foot', 'sawn'],
      [80, 0, 'outer', 'routed', 0.2],
      [80, 700, 'head', 'sawn'],
      [0, 700, 'inner', 'routed', -0.2],
    ]);
    const { template } = routePart(partOf(bowed), bearingTooling(19, { runOn: 60 }));
    const outer = named(template, 'outer');
    const curve = outer.find((edge) => edge.kind === 'arc')!;
    const ahead = outer.find((edge) => edge.kind === 'line' && distance(edge.from, curve.to) < 1e-9)!;
    expect(distance(ahead.from, ahead.to)).toBeCloseTo(60, 9);
    if (curve.kind !== 'arc') throw new Error('the outer edge is an arc');
    // Tangent: at right angles to the radius at the joint.
    const radial = { x: curve.to.x - curve.centre.x, y: curve.to.y - curve.centre.y };
    const along = { x: ahead.to.x - ahead.from.x, y: ahead.to.y - ahead.from.y };
    expect(radial.x * along.x + radial.y * along.y).toBeCloseTo(0, 6);
  });

  test('closes across each end with an edge of its own that is not routed', () => {
    const { template } = routePart(partOf(LEG), bushingTooling(10, 20));
    for (const id of ['run-on.foot', 'run-on.head']) {
      const across = named(template, id);
      expect(across).toHaveLength(1);
      expect(across[0]!.tag.role).toBe('left');
    }
  });

  test('keeps every point of a routed edge at the offset from the part', () => {
    const part = partOf(hollowLeg(60));
    const { template } = routePart(part, bushingTooling(10, 20));
    const drawn = part.region.outer.edges.filter(({ tag }) => tag.role === 'routed');
    const knee = named(template, 'knee')[0]!;
    for (const t of [0, 0.25, 0.5, 0.75, 1]) {
      expect(nearestOnEdges(drawn, pointAt(knee, t)).distance).toBeCloseTo(5, 9);
    }
  });
});

describe('a run of unrouted edges', () => {
  test('is bridged straight where the routed edges beside it face each other', () => {
    const notched = loopOf([
      [0, 0, 'foot', 'sawn'],
      [80, 0, 'lower'],
      [80, 300, 'cheek-a', 'joint'],
      [60, 300, 'seat', 'joint'],
      [60, 340, 'cheek-b', 'joint'],
      [80, 340, 'upper'],
      [80, 700, 'head', 'sawn'],
      [0, 700, 'outer'],
    ]);
    const { template, gaps, asRouted } = routePart(partOf(notched), bushingTooling(10, 20));
    expect(gaps.map(({ kind }) => kind).sort()).toEqual(['bridge', 'end', 'end']);
    expect(areaOfRegions(template)).toBeCloseTo(70 * 800, 6);
    // The notch itself stays as drawn.
    expect(areaOfRegions(asRouted)).toBeCloseTo(80 * 700 - 20 * 40, 6);
  });

  test('that stands out of the edge is not cut off', () => {
    const tenoned = loopOf([
      [0, 0, 'foot', 'sawn'],
      [80, 0, 'lower'],
      [80, 300, 'cheek-a', 'joint'],
      [110, 300, 'end', 'joint'],
      [110, 340, 'cheek-b', 'joint'],
      [80, 340, 'upper'],
      [80, 700, 'head', 'sawn'],
      [0, 700, 'outer'],
    ]);
    const { differences, gaps } = routePart(partOf(tenoned), bearingTooling(12));
    expect(gaps.find(({ edges }) => edges.includes('end'))?.kind).toBe('around');
    expect(differences.map(({ kind }) => kind)).toEqual(['left', 'left']);
  });

  test('with a post that stands out of a notch is not cut straight across', () => {
    const posted = loopOf([
      [0, 0, 'foot', 'sawn'],
      [80, 0, 'lower'],
      [80, 300, 'cheek-a', 'joint'],
      [60, 300, 'seat-a', 'joint'],
      [60, 330, 'post-a', 'joint'],
      [120, 330, 'post-end', 'joint'],
      [120, 350, 'post-b', 'joint'],
      [60, 350, 'seat-b', 'joint'],
      [60, 380, 'cheek-b', 'joint'],
      [80, 380, 'upper'],
      [80, 700, 'head', 'sawn'],
      [0, 700, 'outer'],
    ]);
    const part = partOf(posted);
    const { differences, gaps, template } = routePart(part, bearingTooling(12));
    // A run-on past the notch would hit the post: there is none, and the template follows the part.
    expect(gaps.find(({ edges }) => edges.includes('post-end'))).toMatchObject({ kind: 'around', runOn: 0 });
    expect(differences.filter(({ kind }) => kind === 'lost')).toEqual([]);
    expect(locate(template, { x: 110, y: 340 })).toBe('inside');
  });

  test('between edges that converge is closed where they meet', () => {
    const pointed = loopOf([
      [30, 0, 'foot', 'sawn'],
      [50, 0, 'right'],
      [80, 60, 'outer'],
      [80, 700, 'head', 'sawn'],
      [0, 700, 'inner'],
      [0, 60, 'left'],
    ]);
    const { gaps, template } = routePart(partOf(pointed), bearingTooling(12));
    const foot = gaps.find(({ edges }) => edges.includes('foot'))!;
    expect(foot.kind).toBe('meet');
    expect(foot.runOn).toBeCloseTo(Math.hypot(10, 20), 9);
    expect(boundsOfRegions(template).minY).toBeCloseTo(-20, 9);
  });

  test('that goes round the part leaves its outer edge where the board has it', () => {
    const slab = loopOf([
      [0, 0, 'foot', 'sawn'],
      [80, 0, 'inner', 'routed', 0.1],
      [80, 700, 'head', 'sawn'],
      [0, 700, 'outer', 'left'],
    ]);
    for (const tooling of [
      bearingTooling(19),
      bushingTooling(10, 20),
      bearingTooling(19, { guide: { kind: 'bearing', diameter: 12, at: 'shank' } }),
    ]) {
      const { template, differences, gaps } = routePart(partOf(slab), tooling);
      expect(gaps.map(({ kind }) => kind)).toEqual(['around']);
      expect(template).toHaveLength(1);
      const box = boundsOfRegions(template);
      expect(box.minX).toBeCloseTo(0, 9);
      expect(box.minY).toBeLessThan(-45);
      expect(box.maxY).toBeGreaterThan(745);
      expect(differences).toEqual([]);
    }
  });

  test('does not depend on where the outline starts', () => {
    const tooling = bushingTooling(10, 20);
    const first = routePart(partOf(hollowLeg(60)), tooling);
    for (let at = 1; at < 7; at++) {
      const again = routePart(partOf(startingAt(hollowLeg(60), at)), tooling);
      expect(areaOfRegions(symmetricDifference(first.template, again.template))).toBeLessThan(1e-6);
      expect(areaOfRegions(symmetricDifference(first.asRouted, again.asRouted))).toBeLessThan(1e-6);
    }
  });

  test('of a part without routed edges leaves the template as drawn', () => {
    const sawn = rectangle(80, 700, { foot: 'sawn', right: 'sawn', head: 'sawn', left: 'joint' });
    const { template, differences, feed, offsets } = routePart(partOf(sawn), bushingTooling(10, 20));
    expect(areaOfRegions(template)).toBeCloseTo(56000, 9);
    expect([differences, feed, offsets]).toEqual([[], [], []]);
  });
});

describe('the offset named for each edge', () => {
  test('is the same for every routed edge, and doubled across an opening', () => {
    const window = reversed(
      loopOf([
        [30, 300, 'window.foot'],
        [50, 300, 'window.right'],
        [50, 400, 'window.head'],
        [30, 400, 'window.left'],
      ]),
    );
    const part = partOf(sawnRectangle(80, 700), {
      holes: [window],
      openings: [openingAt(0, { x: 40, y: 350 })],
    });
    const { offsets } = routePart(part, bushingTooling(6, 12));
    expect(offsets.map(({ edge }) => edge)).toEqual([
      'right',
      'left',
      'window.left',
      'window.head',
      'window.right',
      'window.foot',
    ]);
    expect(new Set(offsets.map(({ offset }) => offset))).toEqual(new Set([3]));
    expect(offsets.map(({ across }) => across)).toEqual([undefined, undefined, 6, 6, 6, 6]);
  });
});

describe('extreme figures', () => {
  const disc = loopOf([
    [50, 0, 'rim', 'routed', 1],
    [-50, 0, 'rim', 'routed', 1],
  ]);
  const shapes = {
    leg: LEG,
    knee: hollowLeg(60),
    disc,
    sliver: rectangle(0.5, 700, { foot: 'sawn', head: 'sawn' }),
  };
  const tools: [string, Partial<Tooling>][] = [
    ['no run-on and no allowance', { runOn: 0, sawAllowance: 0, endAllowance: 0 }],
    ['a run-on longer than the part', { runOn: 500, sawAllowance: 100, endAllowance: 200 }],
    ['a cutter larger than the part', { cutter: { diameter: 200, cuttingLength: 300 } }],
    ['a guide larger than the part', { guide: { kind: 'bushing', outsideDiameter: 200, barrelLength: 100 } }],
    ['a guide that is hardly there', { guide: { kind: 'bearing', diameter: 1, at: 'tip' } }],
  ];
  const cases = Object.entries(shapes).flatMap(([shape, outer]) =>
    tools.map(([words, more]) => [`a ${shape} with ${words}`, outer, more] as const),
  );

  test.each(cases)('%s: an answer, and a sound one', (_words, outer, more) => {
    const part = partOf(outer);
    const routing = routePart(part, bearingTooling(19, more));
    for (const regions of [routing.template, routing.asRouted, routing.blank]) {
      expect(findFaults(regions)).toEqual([]);
    }
    const sum = routing.differences.reduce((s, { kind, area }) => s + (kind === 'left' ? area : -area), 0);
    expect(areaOfRegions(routing.asRouted) - areaOfRegions([part.region])).toBeCloseTo(sum, 1);
    expect(areaOfRegions(subtractRegions([part.region], routing.blank))).toBeLessThan(1e-6);
  });
});
