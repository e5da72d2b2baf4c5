import { describe, expect, test } from 'vitest';
import { areaOfRegions, circleOutline, locate, vec } from '../../src/geometry/index.ts';
import { routePart } from '../../src/routing/index.ts';
import {
  bearingTooling,
  bushingTooling,
  hollowLeg,
  loopOf,
  openingAt,
  partOf,
  rectangle,
  reversed,
} from './support/parts.ts';

describe('what the cutter leaves outside', () => {
  test('is the part exactly when the hollow is no tighter than the cutter', () => {
    const { differences, tightest } = routePart(partOf(hollowLeg(9.5)), bearingTooling(19));
    expect(differences).toEqual([]);
    expect(tightest?.radius).toBeCloseTo(9.5, 9);
    expect(tightest?.edge).toBe('knee');
  });

  test('is fat in a hollow tighter than the cutter, by (c − r)(√2 − 1) in a square one', () => {
    const { differences } = routePart(partOf(hollowLeg(5)), bearingTooling(19));
    expect(differences).toHaveLength(1);
    const [left] = differences;
    expect(left!.kind).toBe('left');
    expect(left!.reach).toBeCloseTo(4.5 * (Math.SQRT2 - 1), 6);
    expect(left!.area).toBeCloseTo((9.5 ** 2 - 5 ** 2) * (1 - Math.PI / 4), 6);
    expect([...left!.edges].sort()).toEqual(['arm', 'inner', 'knee']);
  });

  test('loses a sharp outer corner to a guide larger than the cutter', () => {
    const { differences } = routePart(partOf(hollowLeg(60)), bushingTooling(10, 20));
    expect(differences.map(({ kind }) => kind)).toEqual(['lost']);
    expect(differences[0]!.reach).toBeCloseTo(5 * (Math.SQRT2 - 1), 6);
    expect(differences[0]!.at.x).toBeCloseTo(0, 9);
    expect(differences[0]!.area).toBeCloseTo(25 * (1 - Math.PI / 4), 6);
  });

  test('fills a pocket whose mouth is narrower than the guide', () => {
    // A slot 14 wide that opens into a round pocket of radius 20; the guide of 19 cannot pass the slot.
    const keyhole = loopOf([
      [0, 0, 'foot', 'sawn'],
      [200, 0, 'right'],
      [200, 93, 'slot-a'],
      [150, 93, 'pocket', 'routed', -4],
      [150, 107, 'slot-b'],
      [200, 107, 'upper'],
      [200, 300, 'head', 'sawn'],
      [0, 300, 'left'],
    ]);
    const part = partOf(keyhole);
    const narrow = routePart(part, bearingTooling(19));
    const middle = vec(140, 100);
    expect(locate([part.region], middle)).toBe('outside');
    expect(locate(narrow.asRouted, middle)).toBe('inside');
    expect(narrow.differences.map(({ kind }) => kind)).toEqual(['left']);
    expect(narrow.differences[0]!.reach).toBeGreaterThan(40);
    const wide = routePart(part, bearingTooling(12));
    expect(locate(wide.asRouted, middle)).toBe('outside');
  });

  test('leaves sawn and joint edges as drawn', () => {
    const part = partOf(rectangle(80, 700, { foot: 'sawn', head: 'joint' }));
    for (const tooling of [bearingTooling(19), bushingTooling(10, 20)]) {
      const { asRouted } = routePart(part, tooling);
      expect(areaOfRegions(asRouted)).toBeCloseTo(56000, 6);
    }
  });
});

describe('what the cutter leaves inside', () => {
  const window = (width: number, height: number) =>
    reversed(
      loopOf([
        [100, 200, 'sill'],
        [100 + width, 200, 'jamb-b'],
        [100 + width, 200 + height, 'lintel'],
        [100, 200 + height, 'jamb-a'],
      ]),
    );
  const panel = (hole: ReturnType<typeof window>, plunge = vec(110, 250)) =>
    partOf(rectangle(300, 700, { foot: 'sawn', head: 'sawn' }), {
      holes: [hole],
      openings: [openingAt(0, plunge)],
    });

  test('is the opening with its corners rounded by the cutter', () => {
    const { differences, openings } = routePart(panel(window(60, 100)), bushingTooling(10, 20));
    expect(openings[0]!.plunge).toBe('free');
    expect(areaOfRegions(openings[0]!.template)).toBeCloseTo(70 * 110 - (4 - Math.PI) * 25, 6);
    expect(areaOfRegions(openings[0]!.cut)).toBeCloseTo(60 * 100 - (4 - Math.PI) * 25, 6);
    expect(differences).toHaveLength(4);
    for (const { kind, reach } of differences) {
      expect(kind).toBe('left');
      expect(reach).toBeCloseTo(5 * (Math.SQRT2 - 1), 6);
    }
  });

  test('counts only the piece that the plunge reaches', () => {
    // Two rooms joined by a passage of 16: a guide of 19 stays in the room of the plunge.
    const rooms = reversed(
      loopOf([
        [100, 200, 'a1'],
        [150, 200, 'a2'],
        [150, 217, 'p1'],
        [180, 217, 'b1'],
        [180, 200, 'b2'],
        [230, 200, 'b3'],
        [230, 250, 'b4'],
        [180, 250, 'b5'],
        [180, 233, 'p2'],
        [150, 233, 'a3'],
        [150, 250, 'a4'],
        [100, 250, 'a5'],
      ]),
    );
    const left = routePart(panel(rooms, vec(125, 225)), bearingTooling(19));
    expect(locate(left.asRouted, vec(125, 225))).toBe('outside');
    expect(locate(left.asRouted, vec(205, 225))).toBe('inside');
    const through = routePart(panel(rooms, vec(125, 225)), bearingTooling(12));
    expect(locate(through.asRouted, vec(205, 225))).toBe('outside');
  });

  test('is nothing when the plunge is missing, outside the waste or too near the edge', () => {
    const hole = window(60, 100);
    const cases = [
      [vec(50, 250), 'outside'],
      [vec(101, 250), 'tight'],
    ] as const;
    for (const [at, plunge] of cases) {
      const { openings, asRouted } = routePart(panel(hole, at), bearingTooling(19));
      expect(openings[0]!.plunge).toBe(plunge);
      expect(areaOfRegions(asRouted)).toBeCloseTo(300 * 700, 6);
    }
    const none = routePart({ ...panel(hole), openings: [] }, bearingTooling(19));
    expect(none.openings[0]!.plunge).toBe('missing');
    // Untouched wood stands as deep as half the window's width.
    expect(none.differences[0]!.reach).toBeCloseTo(30, 0);
  });

  test('leaves a hole that is not routed as drawn, and out of the template', () => {
    const bored = reversed(
      rectangle(20, 20, { foot: 'joint', right: 'joint', head: 'joint', left: 'joint' }),
    );
    const moved = {
      edges: bored.edges.map((edge) => ({
        ...edge,
        from: vec(edge.from.x + 100, edge.from.y + 100),
        to: vec(edge.to.x + 100, edge.to.y + 100),
      })),
    };
    const part = partOf(rectangle(300, 700, { foot: 'sawn', head: 'sawn' }), { holes: [moved] });
    const { template, asRouted, openings, differences } = routePart(part, bushingTooling(10, 20));
    expect(openings).toEqual([]);
    expect(template[0]!.holes).toEqual([]);
    expect(areaOfRegions(asRouted)).toBeCloseTo(300 * 700 - 400, 6);
    expect(differences).toEqual([]);
  });
});

describe('the largest cutter of the list', () => {
  const cutters = [6, 8, 12, 19, 25].map((diameter) => ({ diameter, cuttingLength: 25 }));

  test('is the one whose radius the tightest hollow still takes', () => {
    const { largestCutter } = routePart(partOf(hollowLeg(6.2)), bearingTooling(25, { cutters }));
    expect(largestCutter?.diameter).toBe(12);
  });

  test('is none where an inside corner is sharp', () => {
    const sharp = loopOf([
      [0, 0, 'foot', 'sawn'],
      [80, 0, 'inner'],
      [80, 400, 'under'],
      [300, 400, 'end', 'joint'],
      [300, 500, 'head'],
      [0, 500, 'outer'],
    ]);
    const { largestCutter, tightest } = routePart(partOf(sharp), bearingTooling(12, { cutters }));
    expect(tightest).toMatchObject({ radius: 0, at: { x: 80, y: 400 } });
    expect(largestCutter).toBeUndefined();
  });

  test('must pass through the bushing', () => {
    const { largestCutter } = routePart(
      partOf(rectangle(80, 700, { foot: 'sawn', head: 'sawn' })),
      bushingTooling(8, 16, { cutters }),
    );
    expect(largestCutter?.diameter).toBe(12);
  });

  test('is none where every one with this bushing would round a corner off', () => {
    // Two routed edges meet in a sharp corner that bulges: any offset inwards loses it (design rule: δ > 0).
    const corner = rectangle(80, 700, { foot: 'sawn', left: 'sawn' });
    expect(routePart(partOf(corner), bushingTooling(8, 30, { cutters })).largestCutter).toBeUndefined();
    expect(routePart(partOf(corner), bearingTooling(8, { cutters })).largestCutter?.diameter).toBe(25);
  });

  test('leaves the template whole', () => {
    // Routed openings whose edges stand 12 mm apart: a template opening grows by δ = (30 − c)/2 all round.
    const window = (y: number) =>
      reversed(circleOutline(vec(100, y), 80, { id: `rim-${y}`, role: 'routed' }, 1));
    const part = partOf(rectangle(200, 700, { foot: 'sawn', right: 'sawn', head: 'sawn', left: 'sawn' }), {
      holes: [window(200), window(372)],
      openings: [openingAt(0, vec(100, 200)), openingAt(1, vec(100, 372))],
    });
    const among = (...sizes: number[]) =>
      routePart(
        part,
        bushingTooling(8, 30, {
          cutter: { diameter: 6, cuttingLength: 25 },
          cutters: sizes.map((diameter) => ({ diameter, cuttingLength: 25 })),
        }),
      ).largestCutter?.diameter;
    expect(among(8, 12)).toBeUndefined();
    expect(among(8, 12, 19)).toBe(19);
  });
});
