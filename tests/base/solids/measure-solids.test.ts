import { beforeAll, describe, expect, test } from 'vitest';
import {
  loadSolidKernel,
  massOfPart,
  measureSolids,
  type SolidKernel,
  withSolids,
} from '../../../src/base/solids/index.ts';
import {
  circleOutline,
  frameAlong,
  planeThrough,
  polygonOutline,
  vec,
  vec3,
} from '../../../src/geometry/index.ts';
import { mirrorPart } from '../../../src/sketch/index.ts';
import { board, partOf } from '../hand-made.ts';
import { placedBoard, placedBox, placedPart } from '../placed.ts';

let kernel: SolidKernel;
beforeAll(async () => {
  kernel = await loadSolidKernel();
});

const TAG = { id: 'edge', role: 'routed' } as const;

/** What the solid itself holds, beside what is reckoned from the outline. */
const volumeOfSolid = (part: Parameters<typeof massOfPart>[0], pockets = [] as Pockets): number =>
  withSolids(
    kernel,
    [part],
    ([solid]) => solid!.body.volume(),
    () => pockets,
  );
type Pockets = NonNullable<Parameters<typeof massOfPart>[2]>;

describe('a part on its own', () => {
  test('a board weighs its three sides times its density, and balances in its middle', () => {
    const part = placedBox('board', [100, 200, 300], [600, 80, 25]);
    const { volume, mass, centre } = massOfPart(part, 720);
    expect(volume).toBeCloseTo(600 * 80 * 25, 6);
    expect(mass).toBeCloseTo(0.6 * 0.08 * 0.025 * 720, 12);
    expect(centre.x).toBeCloseTo(400, 9);
    expect(centre.y).toBeCloseTo(240, 9);
    expect(centre.z).toBeCloseTo(312.5, 9);
    expect(volumeOfSolid(part)).toBeCloseTo(volume, 3);
  });

  test('an end bevelled at 45° takes half of a square bar away', () => {
    const out = vec3(0, 1, 1);
    const part = placedBoard('bar', [40, 200, 30], {
      planes: { mitre: planeThrough(vec3(0, 200, -30), out) },
    });
    const { volume, centre } = massOfPart(part, 700);
    // A bar of 170 and half of one of 30, whose centre of mass lies a third in, on the back.
    const [whole, wedge] = [40 * 30 * 170, (40 * 30 * 30) / 2];
    expect(volume).toBeCloseTo(whole + wedge, 5);
    expect(centre.x).toBeCloseTo(20, 8);
    expect(centre.y).toBeCloseTo((whole * 85 + wedge * 180) / (whole + wedge), 8);
    expect(centre.z).toBeCloseTo((whole * -15 + wedge * -20) / (whole + wedge), 8);
    expect(volumeOfSolid(part)).toBeCloseTo(volume, 3);
  });

  test('three planes leave a corner of a block: a tetrahedron', () => {
    // What of the block lies under x/60 + y/90 + (z + 50)/30 = 1, seen from its lowest corner.
    const slant = planeThrough(vec3(60, 0, -50), vec3(1 / 60, 1 / 90, 1 / 30));
    const { volume, centre } = massOfPart(placedBoard('block', [60, 90, 50], { planes: { slant } }), 1);
    expect(volume).toBeCloseTo((60 * 90 * 30) / 6, 6);
    expect(centre.x).toBeCloseTo(15, 8);
    expect(centre.y).toBeCloseTo(22.5, 8);
    expect(centre.z).toBeCloseTo(-50 + 7.5, 8);
  });

  test('two planes that cross within the wood leave a roof', () => {
    const planes = {
      left: planeThrough(vec3(50, 0, 0), vec3(-1, 0, 1)),
      right: planeThrough(vec3(50, 0, 0), vec3(1, 0, 1)),
    };
    const part = placedBoard('roof', [100, 300, 40], { planes });
    // 45° down from the middle of the face: 80 wide on the back, a triangle of height 40.
    const { volume, centre } = massOfPart(part, 1);
    expect(volume).toBeCloseTo(((80 * 40) / 2) * 300, 5);
    expect([centre.x, centre.y]).toEqual([expect.closeTo(50, 8), expect.closeTo(150, 8)]);
    expect(centre.z).toBeCloseTo(-40 + 40 / 3, 8);
    expect(volumeOfSolid(part)).toBeCloseTo(volume, 3);
  });

  test('the same plane named twice cuts once', () => {
    const slant = planeThrough(vec3(0, 150, 0), vec3(0, 1, 0.5));
    const once = massOfPart(placedBoard('once', [40, 200, 30], { planes: { slant } }), 1);
    const twice = massOfPart(placedBoard('twice', [40, 200, 30], { planes: { slant, again: slant } }), 1);
    expect(twice.volume).toBeCloseTo(once.volume, 8);
  });

  test('an opening takes its prism out, and a round one is round', () => {
    const window = polygonOutline([vec(20, 20), vec(20, 60), vec(80, 60), vec(80, 20)], TAG);
    const round = circleOutline(vec(50, 120), 25, TAG, -1);
    const outer = board('panel', 100, 200, 20).region.outer;
    const part = placedPart(partOf('panel', outer, 20, [window, round]));
    const { volume } = massOfPart(part, 1);
    expect(volume).toBeCloseTo(20 * (100 * 200 - 60 * 40 - Math.PI * 625), 5);
    // Chords stray by up to 0.005 mm, over two thirds of that in the mean: 0.52 mm² round the hole.
    const chord = volumeOfSolid(part) - volume;
    expect(chord).toBeGreaterThan(0);
    expect(chord).toBeLessThan(20 * ((2 * Math.PI * 25 * 0.005 * 2) / 3) + 1e-3);
  });

  test('halving a crossing takes half the thickness between two lines, whichever way the cuts lie', () => {
    const region = [
      { outer: polygonOutline([vec(0, 80), vec(40, 80), vec(40, 120), vec(0, 120)], TAG), holes: [] },
    ];
    const pocket = { region, fromZ: 0, toZ: -15 };
    const slant = planeThrough(vec3(0, 120, 0), vec3(0, 1, 1));
    const part = placedBoard('lath', [40, 200, 30], { planes: { slant } });
    const { volume, centre } = massOfPart(part, 1, [pocket]);
    // The end runs on by as much as it is deep. Above, a wedge of it stays beyond the pocket.
    const above = { volume: 40 * 15 * 80, y: 40, z: -7.5 };
    const beyond = { volume: (40 * 15 * 15) / 2, y: 125, z: -10 };
    const below = { volume: 40 * 15 * 135, y: 67.5, z: -22.5 };
    const tip = { volume: (40 * 15 * 15) / 2, y: 140, z: -25 };
    const left = [above, beyond, below, tip];
    const total = left.reduce((sum, each) => sum + each.volume, 0);
    expect(volume).toBeCloseTo(total, 5);
    expect(centre.y).toBeCloseTo(left.reduce((sum, each) => sum + each.y * each.volume, 0) / total, 8);
    expect(centre.z).toBeCloseTo(left.reduce((sum, each) => sum + each.z * each.volume, 0) / total, 8);
    expect(volumeOfSolid(part, [pocket])).toBeCloseTo(volume, 3);
  });

  test('two pockets that overlap take their wood once', () => {
    const square = (x: number) => [
      { outer: polygonOutline([vec(x, 0), vec(x + 20, 0), vec(x + 20, 50), vec(x, 50)], TAG), holes: [] },
    ];
    const pockets = [
      { region: square(10), fromZ: 0, toZ: -10 },
      { region: square(20), fromZ: 0, toZ: -20 },
    ];
    const part = placedBoard('block', [60, 50, 30]);
    const { volume } = massOfPart(part, 1, pockets);
    expect(volume).toBeCloseTo(60 * 50 * 30 - 50 * (10 * 10 + 20 * 20), 5);
    expect(volumeOfSolid(part, pockets)).toBeCloseTo(volume, 3);
  });
});

describe('a base', () => {
  test('a mirrored copy weighs the same and balances on the other side', () => {
    const drawn = partOf('leg', polygonOutline([vec(0, 0), vec(60, 0), vec(30, 400), vec(0, 400)], TAG), 30);
    const slant = planeThrough(vec3(0, 0, 40), vec3(0.1, 0.2, -1));
    const frame = frameAlong(vec3(200, 50, 0), vec3(0.1, 0.15, 1), vec3(0, -1, 0))!;
    const mirrored = {
      ...frame,
      x: flipX(frame.x, -1),
      y: flipX(frame.y),
      z: flipX(frame.z),
      origin: flipX(frame.origin),
    };
    const left = placedPart(drawn, { frame, planes: { slant } });
    const right = placedPart(mirrorPart(drawn), {
      frame: mirrored,
      planes: { slant: { normal: flipX(slant.normal), offset: slant.offset } },
      hand: 'right',
    });
    const base = withSolids(kernel, [left, right], (solids) => measureSolids(solids, () => 700));
    const [a, b] = base.parts;
    expect(b!.volume).toBeCloseTo(a!.volume, 6);
    expect(b!.centre.x).toBeCloseTo(-a!.centre.x, 8);
    expect(b!.centre.z).toBeCloseTo(a!.centre.z, 8);
    expect(b!.bounds.min.x).toBeCloseTo(-a!.bounds.max.x, 7);
    expect(b!.bounds.max.y).toBeCloseTo(a!.bounds.max.y, 7);
    expect(base.centre.x).toBeCloseTo(0, 8);
    expect(base.mass).toBeCloseTo(2 * a!.mass, 12);
  });

  test('wood of two kinds balances nearer to the heavier', () => {
    const parts = [
      placedBox('light', [0, 0, 0], [100, 100, 100]),
      placedBox('heavy', [300, 0, 0], [100, 100, 100]),
    ];
    const base = withSolids(kernel, parts, (solids) =>
      measureSolids(solids, ({ id }) => (id === 'heavy' ? 900 : 300)),
    );
    expect(base.mass).toBeCloseTo(1.2, 12);
    expect(base.centre.x).toBeCloseTo(50 + (300 * 3) / 4, 8);
  });

  test('bounds are those of the corners, wherever the part is turned to', () => {
    const frame = frameAlong(vec3(10, 20, 30), vec3(0, 0, 1), vec3(1, -1, 0))!;
    const part = placedBoard('post', [40, 500, 40], { frame });
    const [bounds] = withSolids(kernel, [part], (solids) => measureSolids(solids, () => 1).parts).map(
      (each) => each.bounds,
    );
    const diagonal = 40 * Math.SQRT2;
    expect(bounds!.max.z).toBeCloseTo(530, 7);
    expect(bounds!.min.z).toBeCloseTo(30, 7);
    expect(bounds!.max.x - bounds!.min.x).toBeCloseTo(diagonal, 7);
    expect(bounds!.max.y - bounds!.min.y).toBeCloseTo(diagonal, 7);
  });
});

const flipX = <V extends { x: number; y: number; z: number }>({ x, y, z }: V, by: 1 | -1 = 1) => ({
  x: -x * by,
  y: y * by,
  z: z * by,
});
