import { beforeAll, describe, expect, test } from 'vitest';
import { loadSolidKernel, massOfPart, meshesOf, type SolidKernel } from '../../../src/base/solids/index.ts';
import { planeThrough, vec3 } from '../../../src/geometry/index.ts';
import { placedBoard, placedBox } from '../placed.ts';

let kernel: SolidKernel;
beforeAll(async () => {
  kernel = await loadSolidKernel();
});

/** Volume inside triangles by the divergence theorem, and how often each side of one is run along. */
function reckon({ positions, triangles }: ReturnType<typeof meshesOf>[number]) {
  const at = (i: number) => [positions[3 * i]!, positions[3 * i + 1]!, positions[3 * i + 2]!] as const;
  let volume = 0;
  const sides = new Map<string, number>();
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
    const [a, b, c] = corners.map(at) as [
      ReturnType<typeof at>,
      ReturnType<typeof at>,
      ReturnType<typeof at>,
    ];
    volume +=
      (a[0] * (b[1] * c[2] - b[2] * c[1]) +
        a[1] * (b[2] * c[0] - b[0] * c[2]) +
        a[2] * (b[0] * c[1] - b[1] * c[0])) /
      6;
    for (const [i, from] of corners.entries()) {
      const key = `${from}-${corners[(i + 1) % 3]}`;
      sides.set(key, (sides.get(key) ?? 0) + 1);
    }
  }
  return { volume, sides };
}

describe('parts as triangles', () => {
  test('are closed, seen from outside, and hold as much as the part', () => {
    const board = placedBoard('bar', [40, 200, 30], {
      planes: { mitre: planeThrough(vec3(0, 200, -30), vec3(0, 1, 1)) },
    });
    const parts = [placedBox('board', [100, 200, 300], [600, 80, 25]), board];
    const meshes = meshesOf(kernel, parts);
    expect(meshes.map(({ part }) => part)).toEqual(parts.map(({ id }) => id));
    for (const [at, mesh] of meshes.entries()) {
      const { volume, sides } = reckon(mesh);
      expect(volume / massOfPart(parts[at]!, 700).volume).toBeCloseTo(1, 5);
      for (const [key, count] of sides) {
        const [from, to] = key.split('-');
        expect(count).toBe(1);
        expect(sides.get(`${to}-${from}`)).toBe(1);
      }
    }
  });
});
