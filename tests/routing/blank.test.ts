import { describe, expect, test } from 'vitest';
import {
  areaOfRegions,
  boundsOfRegions,
  circleOutline,
  locate,
  nearestOnEdges,
  offsetRegions,
  pointAt,
  subtractRegions,
} from '../../src/geometry/index.ts';
import { type Fixing, routePart } from '../../src/routing/index.ts';
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
} from './support/parts.ts';

describe('the blank', () => {
  test('stands outside routed edges by the saw allowance and outside ends by the end allowance', () => {
    const part = partOf(rectangle(80, 700, { foot: 'sawn', head: 'joint' }));
    const { blank, endAllowance } = routePart(
      part,
      bearingTooling(19, { sawAllowance: 3, endAllowance: 15 }),
    );
    expect(endAllowance).toBe(15);
    expect(areaOfRegions(blank)).toBeCloseTo(86 * 730, 6);
    const box = boundsOfRegions(blank);
    expect([box.minX, box.maxX, box.minY, box.maxY]).toEqual(
      [-3, 83, -15, 715].map((v) => expect.closeTo(v, 9)),
    );
  });

  test('leaves 25 mm on ends unless the run-on is too short for it', () => {
    const part = partOf(LEG);
    expect(routePart(part, bearingTooling(19, { runOn: 50 })).endAllowance).toBe(25);
    // The guide must be on the template 5 mm before the cutter's edge meets the wood.
    expect(routePart(part, bearingTooling(19, { runOn: 30 })).endAllowance).toBeCloseTo(30 - 9.5 - 5, 9);
    expect(routePart(part, bearingTooling(19, { runOn: 10, sawAllowance: 2 })).endAllowance).toBe(2);
  });

  test.each(['slanted', 'leaning'])(
    'leaves no less than the saw allowance at %s ends without a run-on',
    (kind) => {
      const outer =
        kind === 'leaning'
          ? LEG
          : loopOf([
              [0, 0, 'foot', 'sawn'],
              [60, 25, 'inner', 'routed'],
              [90, 640, 'head', 'sawn'],
              [10, 690, 'outer', 'routed'],
            ]);
      const tooling = bearingTooling(19, { runOn: 0, sawAllowance: 2 });
      const { blank } = routePart(partOf(outer), tooling);
      const line = blank.flatMap((region) => region.outer.edges);
      for (const edge of outer.edges) {
        for (let i = 0; i <= 20; i++) {
          expect(nearestOnEdges(line, pointAt(edge, i / 20)).distance).toBeGreaterThan(2 - 1e-6);
        }
      }
    },
  );

  test('is not wider than the board at an edge left as it came', () => {
    const slab = loopOf([
      [0, 0, 'foot', 'sawn'],
      [80, 0, 'inner', 'routed', 0.1],
      [80, 700, 'head', 'sawn'],
      [0, 700, 'outer', 'left'],
    ]);
    const { blank } = routePart(partOf(slab), bearingTooling(19));
    expect(boundsOfRegions(blank).minX).toBeCloseTo(0, 9);
  });

  test('holds the whole part', () => {
    for (const outer of [LEG, hollowLeg(60), hollowLeg(5)]) {
      const part = partOf(outer);
      const { blank } = routePart(part, bearingTooling(19));
      expect(areaOfRegions(subtractRegions([part.region], blank))).toBeLessThan(1e-9);
    }
  });

  test('is sawn by the widest blade that follows its tightest hollow', () => {
    const blades = [3.2, 6, 10, 13, 19].map((width) => ({ width }));
    const saw = (radius: number) => {
      const { blade, tightestCurve } = routePart(partOf(hollowLeg(radius)), bearingTooling(6, { blades }));
      return { width: blade?.blade.width, curve: tightestCurve?.radius };
    };
    // The saw line lies 2 mm outside the part, so its hollows are 2 mm tighter.
    expect(saw(42)).toEqual({ width: 10, curve: expect.closeTo(40, 9) });
    expect(saw(65.6)).toMatchObject({ width: 13 });
    expect(saw(65.4)).toMatchObject({ width: 10 });
    expect(saw(20)).toMatchObject({ width: 6 });
    expect(saw(6)).toMatchObject({ width: undefined });
    expect(routePart(partOf(LEG), bearingTooling(6, { blades }))).toMatchObject({
      blade: { blade: { width: 19 } },
    });
  });
});

describe('places to hold the template', () => {
  const window = reversed(
    loopOf([
      [80, 200, 'sill'],
      [220, 200, 'jamb-b'],
      [220, 400, 'lintel'],
      [80, 400, 'jamb-a'],
    ]),
  );
  const panel = partOf(rectangle(300, 700, { foot: 'sawn', head: 'sawn' }), {
    holes: [window],
    openings: [openingAt(0, { x: 100, y: 300 })],
  });
  const screwRoom = ({ at }: Fixing) => [
    { outer: circleOutline(at, 5, { id: 'screw', role: 'left' }, 1), holes: [] },
  ];

  test('screw into waste: on the template and the blank, off the part', () => {
    for (const part of [partOf(LEG), partOf(hollowLeg(60)), panel]) {
      for (const tooling of [bearingTooling(19), bushingTooling(10, 20)]) {
        const { fixings, template, blank } = routePart(part, tooling);
        const screws = fixings.filter(({ kind }) => kind === 'screw');
        expect(screws.length).toBeGreaterThan(0);
        for (const screw of screws) {
          expect(areaOfRegions(subtractRegions(screwRoom(screw), template))).toBeLessThan(1e-9);
          expect(areaOfRegions(subtractRegions(screwRoom(screw), blank))).toBeLessThan(1e-9);
          expect(locate([part.region], screw.at)).toBe('outside');
        }
      }
    }
  });

  test('keep screws out of the path of the cutter by more than their own room', () => {
    const { fixings, template } = routePart(panel, bushingTooling(10, 20));
    const edges = template.flatMap(({ outer, holes }) => [outer, ...holes].flatMap((loop) => loop.edges));
    for (const { at } of fixings.filter(({ kind }) => kind === 'screw')) {
      expect(nearestOnEdges(edges, at).distance).toBeGreaterThanOrEqual(12 - 1e-9);
    }
  });

  test('hold the waste of an opening inside the cut and away from the plunge', () => {
    const { fixings, openings } = routePart(panel, bushingTooling(10, 20));
    const waste = fixings.filter(({ kind }) => kind === 'waste');
    expect(waste).toHaveLength(1);
    const slug = offsetRegions(openings[0]!.cut, -10);
    expect(areaOfRegions(subtractRegions(screwRoom(waste[0]!), slug))).toBeLessThan(1e-9);
    expect(Math.hypot(waste[0]!.at.x - 100, waste[0]!.at.y - 300)).toBeGreaterThan(10);
  });

  test('tape only where the part is wide', () => {
    const tapes = (width: number) =>
      routePart(
        partOf(rectangle(width, 700, { foot: 'sawn', head: 'sawn' })),
        bearingTooling(12),
      ).fixings.filter(({ kind }) => kind === 'tape').length;
    expect(tapes(59)).toBe(0);
    expect(tapes(61)).toBe(4);
  });
});

test('keeps the allowance all round a corner between two ends that are not routed', () => {
  const outer = loopOf([
    [0, 0, 'foot', 'sawn'],
    [80, 0, 'right'],
    [80, 600, 'shoulder', 'joint'],
    [80, 700, 'head', 'sawn'],
    [0, 720, 'left'],
  ]);
  const part = partOf(outer);
  const { blank } = routePart(part, bearingTooling(12, { sawAllowance: 1.5 }));
  for (const { from } of outer.edges) {
    expect(locate(blank, from)).toBe('inside');
    const edges = blank.flatMap((region) => region.outer.edges);
    expect(nearestOnEdges(edges, from).distance).toBeGreaterThan(1.5 - 1e-6);
  }
});
