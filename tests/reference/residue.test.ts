import { describe, expect, test } from 'vitest';
import { polar } from '../../src/geometry/index.ts';
import { routePart } from '../../src/routing/index.ts';
import { bearingTooling, bushingTooling, loopOf, partOf } from '../routing/support/parts.ts';

/**
 * Wood left in an inside corner of angle θ by a cutter of radius r, by elementary geometry of the circle inscribed in an
 * angle: each tangent is r cot(θ/2) long, so the two right triangles have the area r² cot(θ/2), less the sector of π − θ;
 * the centre lies r / sin(θ/2) from the corner.
 */
const area = (r: number, theta: number) => r * r * (1 / Math.tan(theta / 2) - (Math.PI - theta) / 2);
const reach = (r: number, theta: number) => r * (1 / Math.sin(theta / 2) - 1);

/** A block with a notch of angle θ cut into its right edge, its walls `deep` mm long, turned by `turn`. */
function notched(theta: number, deep: number, turn: number) {
  const half = theta / 2;
  const up = polar(half, deep);
  const down = polar(-half, deep);
  const corners: [number, number, string, ('sawn' | 'routed')?][] = [
    [up.x, up.y, 'upper-face', 'sawn'],
    [up.x, 600, 'top', 'sawn'],
    [-600, 600, 'back', 'sawn'],
    [-600, -600, 'bottom', 'sawn'],
    [down.x, -600, 'lower-face', 'sawn'],
    [down.x, down.y, 'wall-a'],
    [0, 0, 'wall-b'],
  ];
  const c = Math.cos(turn);
  const s = Math.sin(turn);
  return loopOf(corners.map(([x, y, id, role]) => [c * x - s * y, s * x + c * y, id, role] as const));
}

describe('residue in an inside corner', () => {
  const angles = [20, 30, 45, 60, 75, 90, 105, 120, 135, 150, 165, 168];

  test.each(angles)('of %i° agrees with the closed form in area and reach', (degrees) => {
    const theta = (degrees * Math.PI) / 180;
    for (const [r, turn] of [
      [3, 0],
      [6.35, 0.3],
      [9.5, 1.1],
      [15, 2.6],
    ] as const) {
      const deep = Math.max(100, 3 * (r / Math.tan(theta / 2)));
      const { differences, tightest } = routePart(partOf(notched(theta, deep, turn)), bearingTooling(2 * r));
      expect(differences).toHaveLength(1);
      const [left] = differences;
      expect(left!.kind).toBe('left');
      expect(left!.area).toBeCloseTo(area(r, theta), 6);
      expect(left!.reach).toBeCloseTo(reach(r, theta), 6);
      expect(Math.hypot(left!.at.x, left!.at.y)).toBeCloseTo(0, 6);
      expect(tightest?.radius).toBe(0);
    }
  });

  test('is the same with a bushing: the cutter alone decides what stands in the corner', () => {
    const theta = Math.PI / 3;
    const { differences } = routePart(partOf(notched(theta, 200, 0.4)), bushingTooling(10, 24));
    const left = differences.filter(({ kind }) => kind === 'left');
    expect(left).toHaveLength(1);
    expect(left[0]!.area).toBeCloseTo(area(5, theta), 6);
    expect(left[0]!.reach).toBeCloseTo(reach(5, theta), 6);
  });

  test('an outer corner turned by φ loses δ² (tan(φ/2) − φ/2) to a guide larger than the cutter by 2δ', () => {
    const phi = Math.PI / 2;
    const delta = 7;
    const square = loopOf([
      [0, 0, 'foot', 'sawn'],
      [300, 0, 'right'],
      [300, 300, 'head'],
      [0, 300, 'left', 'sawn'],
    ]);
    const { differences } = routePart(partOf(square), bushingTooling(10, 24));
    expect(differences).toHaveLength(1);
    expect(differences[0]!.kind).toBe('lost');
    expect(differences[0]!.area).toBeCloseTo(delta * delta * (Math.tan(phi / 2) - phi / 2), 6);
    expect(differences[0]!.reach).toBeCloseTo(delta * (Math.SQRT2 - 1), 6);
  });
});
