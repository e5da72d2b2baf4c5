import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rockFromLegLengths, rocking } from '../../../src/base/statics/index.ts';
import type { Vec3 } from '../../../src/geometry/index.ts';

const NAMES = ['FL', 'FR', 'BR', 'BL'];
const PLACES = [
  [-500, -300],
  [500, -300],
  [500, 300],
  [-500, 300],
] as const;
const feetAt = (heights: readonly number[]) =>
  heights.map((z, i) => ({ name: NAMES[i]!, at: { x: PLACES[i]![0], y: PLACES[i]![1], z } }));
const over = (x: number, y: number): Vec3 => ({ x, y, z: 500 });

describe('rocking', () => {
  test('feet in one plane do not rock, level or not', () => {
    for (const heights of [
      [0, 0, 0, 0],
      [0, 5, 5, 0],
      [0, 5, 8, 3],
    ]) {
      const { stances, rock } = rocking(feetAt(heights), over(0, 0));
      expect(rock).toBe(0);
      expect(stances).toHaveLength(1);
      expect(stances[0]!.carrying).toEqual(NAMES);
    }
  });

  test('one short leg leaves its gap where the weight leans away from it', () => {
    const { stances, rock, off } = rocking(feetAt([0, 0, 0, 2]), over(100, -50));
    expect(stances).toHaveLength(1);
    expect(stances[0]!.carrying).toEqual(['FL', 'FR', 'BR']);
    expect(stances[0]!.gaps.map(({ name }) => name)).toEqual(['BL']);
    expect(rock).toBeCloseTo(2, 9);
    // Short by two, or one of its neighbours short, or the one across long: each by as much, in a rectangle.
    const long = Object.fromEntries(off.map((foot) => [foot.name, Math.round(foot.long * 1000) / 1000]));
    expect(long).toEqual({ FL: 2, FR: -2, BR: 2, BL: -2 });
  });

  test('a weight over the line on which it rocks lets it stand either way', () => {
    const { stances } = rocking(feetAt([0, 0, 0, 2]), { x: 0, y: 0, z: 0 });
    expect(stances.map(({ carrying }) => carrying.join(' ')).sort()).toEqual(['FL BR BL', 'FL FR BR']);
  });

  test('a weight outside all feet falls over', () => {
    const { stances, rock } = rocking(feetAt([0, 0, 0, 1]), over(900, 0));
    expect(stances).toEqual([]);
    expect(rock).toBe(Infinity);
  });

  test('trimming or packing any one foot by what is said cures it', () => {
    const height = fc.double({ min: -4, max: 4, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(height, height, height, height), fc.nat(3), (heights, which) => {
        const feet = feetAt(heights);
        const others = feet.filter((_, i) => i !== which);
        const { off } = rocking(feet, over(0, 0));
        const { long } = off.find(({ name }) => name === NAMES[which])!;
        // Square to the plane of the other three.
        const [a, b, c] = others.map(({ at }) => at) as [Vec3, Vec3, Vec3];
        const u = { x: b.x - a.x, y: b.y - a.y, z: b.z - a.z };
        const v = { x: c.x - a.x, y: c.y - a.y, z: c.z - a.z };
        let n = { x: u.y * v.z - u.z * v.y, y: u.z * v.x - u.x * v.z, z: u.x * v.y - u.y * v.x };
        const size = Math.hypot(n.x, n.y, n.z) * Math.sign(n.z);
        n = { x: n.x / size, y: n.y / size, z: n.z / size };
        const cured = feet.map((foot, i) =>
          i !== which
            ? foot
            : {
                ...foot,
                at: { x: foot.at.x + long * n.x, y: foot.at.y + long * n.y, z: foot.at.z + long * n.z },
              },
        );
        expect(rocking(cured, over(0, 0)).rock).toBe(0);
      }),
    );
  });

  test('however many feet, all others hang over the three that carry, and some stance holds the weight', () => {
    const foot = fc.record({
      x: fc.integer({ min: -600, max: 600 }),
      y: fc.integer({ min: -400, max: 400 }),
      z: fc.double({ min: 0, max: 6, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(foot, { minLength: 2, maxLength: 4 }), (more) => {
        const feet = [...feetAt([0, 1, 0.5, 2]), ...more.map((at, i) => ({ name: `more ${i}`, at }))];
        const { stances } = rocking(feet, { x: 30, y: 10, z: 0 });
        expect(stances.length).toBeGreaterThan(0);
        for (const { carrying, gaps } of stances) {
          expect(carrying.length).toBeGreaterThanOrEqual(3);
          expect(carrying.length + gaps.length).toBe(feet.length);
          for (const { gap } of gaps) expect(gap).toBeGreaterThan(0);
        }
      }),
    );
  });

  test('the rock of legs off in length is never more than the budget says, and reaches it', () => {
    const feet = PLACES.map(([x, y]) => ({ x, y }));
    const { worst } = rockFromLegLengths(feet as never, 0.5)!;
    let most = 0;
    for (let mask = 0; mask < 16; mask++) {
      const heights = [0, 1, 2, 3].map((i) => (mask & (1 << i) ? 0.5 : -0.5));
      most = Math.max(most, rocking(feetAt(heights), over(3, 1)).rock);
    }
    expect(most).toBeLessThanOrEqual(worst + 1e-9);
    expect(most).toBeCloseTo(worst, 4);
  });
});
