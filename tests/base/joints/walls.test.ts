import { describe, expect, test } from 'vitest';
import { distanceBetweenBodies } from '../../../src/base/joints/between-bodies.ts';
import { wallOfBore } from '../../../src/base/joints/wall-of-bore.ts';
import { woodBehind } from '../../../src/base/joints/wood-behind.ts';
import {
  arc,
  circleOutline,
  type Frame,
  frameAlong,
  line,
  slotOutline,
  turn3,
  unit3,
  vec,
  vec3,
} from '../../../src/geometry/index.ts';
import { board, partOf } from '../hand-made.ts';

const TAG = { id: 'mouth', role: 'joint' } as const;

/** A mortise 30 × 8 drilled level into the left edge of a leg 60 wide and 40 thick, its middle at half thickness and 200 up. */
const leg = { drawn: board('leg', 60, 700, 40), cuts: [] };
const into = (
  x: number,
  y: number,
  z: number,
  along: ReturnType<typeof vec3>,
  drilled: typeof along,
): Frame => {
  const frame = frameAlong(vec3(x, y, z), along, drilled)!;
  // x along the mortise, z along the drilled line.
  return { ...frame, x: frame.y, y: { x: -frame.x.x, y: -frame.x.y, z: -frame.x.z } };
};
const slot = { outer: slotOutline(vec(-11, 0), vec(11, 0), 4, TAG), holes: [] };

describe('wood round a bore', () => {
  test('beside it and behind it, to the nearest face', () => {
    const own = into(0, 200, -20, vec3(0, 1, 0), vec3(1, 0, 0));
    const shallow = { own, outline: slot, depth: 30, mouthOn: ['left'] };
    expect(wallOfBore(leg, shallow)).toMatchObject({ to: 'face' });
    expect(wallOfBore(leg, shallow).value).toBeCloseTo(16, 9);
    const deep = wallOfBore(leg, { ...shallow, depth: 50 });
    expect(deep).toMatchObject({ to: 'right' });
    expect(deep.value).toBeCloseTo(10, 9);
    expect(wallOfBore(leg, { ...shallow, depth: 63.5 }).value).toBeCloseTo(-3.5, 9);
    const behind = woodBehind(leg, shallow);
    expect(behind.to).toBe('right');
    expect(behind.reach).toBeCloseTo(60, 9);
  });

  test('a cut end counts where it stands', () => {
    const plane = { normal: unit3(vec3(1, 2, 0)), offset: 0 };
    const cut = {
      name: 'top',
      role: 'sawn',
      meets: true,
      short: 0,
      plane: { ...plane, offset: (2 * 250) / Math.sqrt(5) },
    } as const;
    const own = into(0, 200, -20, vec3(0, 1, 0), vec3(1, 0, 0));
    const wall = wallOfBore({ ...leg, cuts: [cut] }, { own, outline: slot, depth: 40, mouthOn: ['left'] });
    // The end of the mortise at (40, 211) with a round of 4 in the other plane: (2 · 250 − 40 − 2 · 215) / √5.
    expect(wall.to).toBe('top');
    expect(wall.value).toBeCloseTo((500 - 40 - 430) / Math.sqrt(5), 6);
  });

  test('a hollow edge comes nearest in its middle', () => {
    // The right edge is hollowed by a circle of radius 500 about (530, 200): it comes to x = 30 at y = 200.
    const at = (y: number) => 530 - Math.sqrt(500 * 500 - (y - 200) ** 2);
    const corners = [vec(0, 0), vec(at(0), 0), vec(at(400), 400), vec(0, 400)];
    const [a, b, c, d] = corners;
    const drawn = partOf(
      'leg',
      {
        edges: [
          line(a!, b!, { id: 'bottom', role: 'sawn' }),
          arc(b!, c!, vec(530, 200), -1, { id: 'hollow', role: 'routed' }),
          line(c!, d!, { id: 'top', role: 'sawn' }),
          line(d!, a!, { id: 'left', role: 'left' }),
        ],
      },
      60,
    );
    const own = into(0, 200, -30, vec3(0, 1, 0), vec3(1, 0, 0));
    const bore = { own, outline: slot, depth: 20, mouthOn: ['left'] };
    const wall = wallOfBore({ drawn, cuts: [] }, bore);
    expect(wall.to).toBe('hollow');
    expect(wall.value).toBeCloseTo(10, 9);
    expect(wall.at.y).toBeCloseTo(200, 6);
    const behind = woodBehind({ drawn, cuts: [] }, bore);
    expect(behind.to).toBe('hollow');
    // Rays run from the chord ends of the mortise's rounds, within a chord of its middle.
    expect(behind.reach).toBeGreaterThanOrEqual(30);
    expect(behind.reach).toBeLessThan(30.2);
    expect(wallOfBore({ drawn, cuts: [] }, { ...bore, depth: 33 }).value).toBeLessThan(-2.8);
  });

  test('a slanting hole comes out of the face it leans towards', () => {
    const own = into(0, 200, -20, vec3(0, 1, 0), vec3(1, 0, 1));
    const hole = { own, outline: { outer: circleOutline(vec(0, 0), 5, TAG), holes: [] }, mouthOn: ['left'] };
    const behind = woodBehind(leg, hole);
    expect(behind.to).toBe('face');
    // The side towards the face starts 5 / √2 nearer to it.
    expect(behind.reach).toBeCloseTo((20 - 5 / Math.SQRT2) * Math.SQRT2, 2);
  });
});

describe('two bodies', () => {
  const box = (size: number, middle: ReturnType<typeof vec3>, turn = 0) =>
    [-1, 1].flatMap((x) =>
      [-1, 1].flatMap((y) =>
        [-1, 1].map((z) => {
          const p = turn3(vec3((x * size) / 2, (y * size) / 2, (z * size) / 2), vec3(0, 0, 1), turn);
          return vec3(p.x + middle.x, p.y + middle.y, p.z + middle.z);
        }),
      ),
    );

  test.each([
    ['face to face', box(10, vec3(0, 0, 0)), box(10, vec3(14, 3, -2)), 4],
    ['edge to edge', box(10, vec3(0, 0, 0)), box(10, vec3(13, 14, 0)), 5],
    ['corner to corner', box(10, vec3(0, 0, 0)), box(10, vec3(11, 12, 12)), 3],
    ['edge to face', box(10, vec3(0, 0, 0)), box(10, vec3(20, 0, 0), Math.PI / 4), 15 - 5 * Math.SQRT2],
    ['one in the other', box(10, vec3(0, 0, 0)), box(4, vec3(1, 1, 1)), 0],
    ['through each other', box(10, vec3(0, 0, 0)), box(10, vec3(6, 6, 6)), 0],
  ])('%s', (_, a, b, distance) => {
    expect(distanceBetweenBodies(a, b)).toBeCloseTo(distance, 6);
    expect(distanceBetweenBodies(b, a)).toBeCloseTo(distance, 6);
  });
});
