import { beforeAll, describe, expect, test } from 'vitest';
import {
  findCollisions,
  findMisses,
  leastGap,
  loadSolidKernel,
  type SolidKernel,
  withSolids,
} from '../../../src/base/solids/index.ts';
import {
  arc,
  circleOutline,
  line,
  planeThrough,
  polygonOutline,
  vec,
  vec3,
  WORLD,
} from '../../../src/geometry/index.ts';
import { joint, partOf } from '../hand-made.ts';
import { placedBoard, placedBox, placedPart } from '../placed.ts';

let kernel: SolidKernel;
beforeAll(async () => {
  kernel = await loadSolidKernel();
});

const TAG = { id: 'edge', role: 'routed' } as const;

const leg = placedBox('leg', [0, 0, 0], [60, 60, 700]);

const collisionsOf = (...parts: Parameters<typeof withSolids>[1][number][]) =>
  withSolids(kernel, parts, (solids) => findCollisions(kernel, solids));

describe('parts that run into each other', () => {
  test('a rail cut 3 mm too long goes 3 mm into the leg, in the middle of its end', () => {
    const rail = placedBox('rail', [57, 20, 600], [500, 20, 80]);
    const [collision, ...others] = collisionsOf(leg, rail);
    expect(others).toEqual([]);
    expect(collision).toMatchObject({ a: 'leg', b: 'rail' });
    expect(collision!.volume).toBeCloseTo(3 * 20 * 80, 4);
    expect(collision!.depth).toBeCloseTo(3, 6);
    expect(collision!.at.x).toBeCloseTo(58.5, 6);
    expect(collision!.at.y).toBeCloseTo(30, 6);
    expect(collision!.at.z).toBeCloseTo(640, 6);
  });

  test('parts that touch, or lie into each other by less than a pattern promises, do not', () => {
    const touching = placedBox('touching', [60, 20, 600], [500, 20, 80]);
    const nearly = placedBox('nearly', [20, 60 - 0.009, 600], [20, 500, 80]);
    expect(collisionsOf(leg, touching, nearly)).toEqual([]);
  });

  test('a corner that goes in by more than that in every direction is named, however small', () => {
    const corner = placedBox('corner', [60 - 0.02, 60 - 0.02, 700 - 0.02], [100, 100, 100]);
    const [collision] = collisionsOf(leg, corner);
    expect(collision?.depth).toBeCloseTo(0.02, 6);
  });

  test('a point that goes 5 mm into a face is named by where it is thinnest', () => {
    const spike = placedPart(
      partOf('spike', polygonOutline([vec(0, 0), vec(100, -50), vec(100, 50)], TAG), 400),
      { frame: { ...WORLD, origin: vec3(55, 30, 400) } },
    );
    const [collision] = collisionsOf(leg, spike);
    // A wedge 5 mm high on a base of 5 mm: thinnest square to a slanting side.
    expect(collision!.volume).toBeCloseTo(((5 * 5) / 2) * 400, 3);
    expect(collision!.depth).toBeCloseTo(5 * Math.cos(Math.atan(0.5)), 1);
    expect(collision!.at.x).toBeCloseTo(60 - 5 / 3, 1);
  });

  test('one deep place is named although the parts also touch all over a face', () => {
    // A step 2 mm high on a board that otherwise lies on the other one.
    const steps = [
      vec(0, 0),
      vec(400, 0),
      vec(400, 20),
      vec(220, 20),
      vec(220, 22),
      vec(200, 22),
      vec(200, 20),
      vec(0, 20),
    ];
    const upright = { origin: vec3(0, 0, 0), x: vec3(1, 0, 0), y: vec3(0, 0, 1), z: vec3(0, -1, 0) };
    const lower = placedPart(partOf('lower', polygonOutline(steps, TAG), 50), { frame: upright });
    const upper = placedBox('upper', [0, 0, 20], [400, 50, 20]);
    const [collision] = collisionsOf(lower, upper);
    expect(collision!.volume).toBeCloseTo(20 * 2 * 50, 3);
    expect(collision!.depth).toBeCloseTo(2, 6);
    expect(collision!.at.x).toBeCloseTo(210, 6);
  });

  test('a peg in a hole of its own size is no collision; one that is 0.2 mm too thick is one of 0.1 mm', () => {
    const round = (radius: number) => circleOutline(vec(0, 0), radius, TAG);
    const square = polygonOutline([vec(-40, -40), vec(40, -40), vec(40, 40), vec(-40, 40)], TAG);
    const plate = placedPart(partOf('plate', square, 20, [circleOutline(vec(0, 0), 10, TAG, -1)]));
    expect(collisionsOf(plate, placedPart(partOf('peg', round(10), 20)))).toEqual([]);
    const [collision] = collisionsOf(plate, placedPart(partOf('thick peg', round(10.1), 20)));
    expect(collision!.depth).toBeCloseTo(0.1, 2);
    expect(collision!.volume / (20 * Math.PI * (10.1 ** 2 - 10 ** 2))).toBeCloseTo(1, 1);
  });

  test('an arched rail lies on its arch without running into what fills it', () => {
    const [from, to, centre] = [vec(-100, 0), vec(100, 0), vec(0, -300)];
    const arch = (turn: 1 | -1) =>
      turn === -1 ? arc(from, to, centre, -1, TAG) : arc(to, from, centre, 1, TAG);
    const rail = {
      edges: [
        arch(-1),
        line(to, vec(100, 60), TAG),
        line(vec(100, 60), vec(-100, 60), TAG),
        line(vec(-100, 60), from, TAG),
      ],
    };
    const filling = { edges: [arch(1), line(from, to, TAG)] };
    expect(
      collisionsOf(placedPart(partOf('rail', rail, 25)), placedPart(partOf('filling', filling, 25))),
    ).toEqual([]);
  });

  test('parts that are halved into each other fit, and collide by what is left when one is not', () => {
    const along = placedBoard('along', [40, 300, 30]);
    const across = placedBoard('across', [40, 300, 30], {
      frame: { origin: vec3(-130, 190, 0), x: vec3(0, -1, 0), y: vec3(1, 0, 0), z: vec3(0, 0, 1) },
    });
    const square = (x: number, y: number) => [
      {
        outer: polygonOutline([vec(x, y), vec(x + 40, y), vec(x + 40, y + 40), vec(x, y + 40)], TAG),
        holes: [],
      },
    ];
    const upper = { region: square(0, 150), fromZ: 0, toZ: -15 };
    const lower = { region: square(0, 130), fromZ: -15, toZ: -30 };
    const crossing = (halved: readonly string[]) =>
      withSolids(
        kernel,
        [along, across],
        (solids) => findCollisions(kernel, solids),
        ({ id }) => (halved.includes(id) ? [id === 'along' ? upper : lower] : []),
      );
    expect(crossing(['along', 'across'])).toEqual([]);
    const [half] = crossing(['along']);
    expect(half!.volume).toBeCloseTo(40 * 40 * 15, 3);
    expect(half!.depth).toBeCloseTo(15, 6);
    expect(half!.at.z).toBeCloseTo(-22.5, 6);
    const [whole] = crossing([]);
    expect(whole!.volume).toBeCloseTo(40 * 40 * 30, 3);
  });
});

describe('joints that miss', () => {
  const missesOf = (...parts: Parameters<typeof withSolids>[1][number][]) =>
    withSolids(kernel, parts, (solids) => findMisses(solids, [joint('rail_leg', 'dowels', 'rail', 'leg')]));

  test('a rail 2 mm too short is told with the gap, in the middle of its end', () => {
    const [miss, ...others] = missesOf(leg, placedBox('rail', [62, 20, 600], [500, 20, 80]));
    expect(others).toEqual([]);
    expect(miss).toMatchObject({ joint: 'rail_leg', part: 'rail', nearest: 'leg' });
    expect(miss!.gap).toBeCloseTo(2, 8);
    expect(miss!.at.x).toBeCloseTo(61, 6);
    expect(miss!.at.y).toBeGreaterThan(20);
    expect(miss!.at.y).toBeLessThan(40);
    expect(miss!.at.z).toBeGreaterThan(600);
    expect(miss!.at.z).toBeLessThan(680);
  });

  test('a rail whose end leans misses where it stays away least', () => {
    const planes = { end: planeThrough(vec3(62, 0, 600), vec3(-1, 0, -0.1)) };
    const frame = { ...WORLD, origin: vec3(0, 20, 680) };
    const [miss] = missesOf(leg, placedBoard('rail', [500, 20, 80], { frame, planes }));
    // The plane keeps x ≥ 62 − (z − 600) / 10, so that its upper corner would go into the leg: 54 at the top.
    expect(miss).toBeUndefined();
    const [away] = missesOf(
      leg,
      placedBoard('rail', [500, 20, 80], {
        frame,
        planes: { end: planeThrough(vec3(69, 0, 600), vec3(-1, 0, -0.1)) },
      }),
    );
    expect(away!.gap).toBeCloseTo(1, 8);
    expect(away!.at.x).toBeCloseTo(60.5, 1);
    expect(away!.at.z).toBeCloseTo(680, 1);
  });

  test('four legs may share two rails, but a leg that none reaches is told with the nearer rail', () => {
    const legs = [0, 440].flatMap((y, i) =>
      [0, 540].map((x, j) => ({ ...placedBox(`leg-${i}${j}`, [x, y, 0], [60, 60, 700]), place: 'leg' })),
    );
    const rail = (id: string, y: number, length: number) => ({
      ...placedBox(id, [60, y + 20, 600], [length, 20, 80]),
      place: 'rail',
    });
    expect(missesOf(...legs, rail('front', 0, 480), rail('back', 440, 480))).toEqual([]);
    const [miss, ...others] = missesOf(...legs, rail('front', 0, 480), rail('back', 440, 475));
    expect(others).toEqual([]);
    // Each rail still meets a leg; of the legs one is alone.
    expect(miss).toBeUndefined();
  });

  test('parts in contact are no distance apart, and a search has an end', () => {
    const parts = [
      leg,
      placedBox('touching', [60, 0, 0], [10, 10, 10]),
      placedBox('far', [560, 0, 0], [10, 10, 10]),
    ];
    withSolids(kernel, parts, ([a, touching, far]) => {
      expect(leastGap(a!, touching!)).toBeCloseTo(0, 9);
      expect(leastGap(a!, far!)).toBeCloseTo(500, 8);
      expect(leastGap(a!, far!, 20)).toBe(20);
    });
  });
});
