import fc from 'fast-check';
import type { Blank, CutPlane, Lay, SawSetting, Side } from '../../src/base/end-cut/index.ts';
import type { Vec3 } from '../../src/geometry/index.ts';

/*
 * A saw and a part laid on it, moved about as solid things by matrices: nothing here is taken from the code under test.
 * Saw frame: X to the sawyer's right along the fence, Y away through it, Z up.
 */

export const DEGREE = Math.PI / 180;

/** Rows of a rotation. */
export type Turn = readonly [Vec3, Vec3, Vec3];

export const dot = (a: Vec3, b: Vec3): number => a.x * b.x + a.y * b.y + a.z * b.z;
export const minus = (a: Vec3, b: Vec3): Vec3 => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
export const cross = (a: Vec3, b: Vec3): Vec3 => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});
export const apply = (turn: Turn, v: Vec3): Vec3 => ({
  x: dot(turn[0], v),
  y: dot(turn[1], v),
  z: dot(turn[2], v),
});

export function aboutX(angle: number): Turn {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [
    { x: 1, y: 0, z: 0 },
    { x: 0, y: c, z: -s },
    { x: 0, y: s, z: c },
  ];
}
export function aboutY(angle: number): Turn {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [
    { x: c, y: 0, z: s },
    { x: 0, y: 1, z: 0 },
    { x: -s, y: 0, z: c },
  ];
}
export function aboutZ(angle: number): Turn {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [
    { x: c, y: -s, z: 0 },
    { x: s, y: c, z: 0 },
    { x: 0, y: 0, z: 1 },
  ];
}

const QUARTER = Math.PI / 2;

/**
 * The part put on the saw by quarter turns, from lying on its back with its length along the fence and its left edge against
 * it (that is −90° about Z of the part's own frame): the turns about the fence that bring each side down, then end for end.
 */
export function place({ down, fence }: Lay): (v: Vec3) => Vec3 {
  for (const roll of [0, 1, 2, 3]) {
    for (const swap of [0, 1]) {
      const put = (v: Vec3): Vec3 =>
        apply(aboutZ(swap * Math.PI), apply(aboutX(roll * QUARTER), apply(aboutZ(-QUARTER), v)));
      const points = (side: Side, to: Vec3): boolean => dot(put(OUT_OF[side]), to) > 0.9;
      if (points(down, { x: 0, y: 0, z: -1 }) && points(fence, { x: 0, y: 1, z: 0 })) return put;
    }
  }
  throw new Error(`cannot lie: ${down} down, ${fence} at the fence`);
}

const OUT_OF: Readonly<Record<Side, Vec3>> = {
  face: { x: 0, y: 0, z: 1 },
  back: { x: 0, y: 0, z: -1 },
  left: { x: -1, y: 0, z: 0 },
  right: { x: 1, y: 0, z: 0 },
};

/**
 * Normal of the blade of a saw set so: an upright blade square to the fence, tilted to the right about the line of cut, then
 * swung so that the arm's near end goes to the right.
 */
export function bladeOf({ swing, tilt }: SawSetting): Vec3 {
  return apply(aboutZ(swing), apply(aboutY(tilt), { x: 1, y: 0, z: 0 }));
}

/** How far two planes are from parallel (sine of the angle between them). */
export function outOfParallel(a: Vec3, b: Vec3): number {
  const c = cross(a, b);
  return Math.hypot(c.x, c.y, c.z) / Math.hypot(a.x, a.y, a.z) / Math.hypot(b.x, b.y, b.z);
}

const angle = (most: number): fc.Arbitrary<number> =>
  fc.double({ min: -most * DEGREE, max: most * DEGREE, noNaN: true });
const place1 = fc.double({ min: -900, max: 900, noNaN: true });

/** Cuts across a part, by a normal in space. Angles that makers use come up often: zero and whole degrees. */
export const endPlanes: fc.Arbitrary<CutPlane> = fc
  .tuple(
    fc.oneof(
      angle(70),
      fc.integer({ min: -60, max: 60 }).map((d) => d * DEGREE),
      fc.constant(0),
    ),
    fc.oneof(
      angle(60),
      fc.integer({ min: -45, max: 45 }).map((d) => d * DEGREE),
      fc.constant(0),
    ),
    fc.boolean(),
    fc.tuple(place1, place1, place1),
  )
  .map(([turn, lean, far, [x, y, z]]) => {
    const s = far ? 1 : -1;
    const normal = {
      x: s * Math.cos(lean) * Math.sin(turn),
      y: s * Math.cos(lean) * Math.cos(turn),
      z: s * Math.sin(lean),
    };
    return { normal, point: { x, y, z } };
  });

export const blanks: fc.Arbitrary<Blank> = fc.record({
  left: fc.double({ min: -100, max: 0, noNaN: true }),
  right: fc.double({ min: 10, max: 200, noNaN: true }),
  thickness: fc.double({ min: 5, max: 90, noNaN: true }),
  faceEdge: fc.constantFrom('left', 'right'),
  straight: fc.constantFrom('both', 'left', 'right'),
  faceUp: fc.boolean(),
  reference: fc.record({ kind: fc.constant('square' as const), y: place1 }),
});
