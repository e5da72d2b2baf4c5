import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  changesHand,
  type Motion,
  motionsOf,
  moveDirection,
  moveFrame,
  movePlane,
  movePoint,
} from '../../../src/base/stand/copies.ts';
import {
  cross3,
  distance3,
  dot3,
  type Frame,
  frameAlong,
  heightOver,
  length3,
  planeThrough,
  pointToWorld,
  type Vec3,
  vec3,
} from '../../../src/geometry/index.ts';
import type { CopyOfPlace } from '../../../src/sketch/index.ts';

const FRONT_LEFT = vec3(-600, -300, 40);

const placesOf = (copies: readonly CopyOfPlace[], p: Vec3 = FRONT_LEFT): readonly Vec3[] =>
  motionsOf(copies).map((motion) => movePoint(p, motion));

const figure = fc.integer({ min: -2000, max: 2000 });
const spot = fc.tuple(figure, figure, figure).map(([x, y, z]) => vec3(x, y, z));
const frame: fc.Arbitrary<Frame> = fc
  .tuple(spot, spot, spot)
  .map(([origin, along, face]) => frameAlong(origin, along, face))
  .filter((made): made is Frame => made !== undefined);
const copy: fc.Arbitrary<CopyOfPlace> = fc.oneof(
  fc
    .constantFrom('left-right' as const, 'front-back' as const)
    .map((across) => ({ kind: 'mirror' as const, across })),
  fc.record({ kind: fc.constant('repeat' as const), count: fc.integer({ min: 1, max: 3 }), step: spot }),
  fc.record({ kind: fc.constant('turn' as const), count: fc.integer({ min: 1, max: 4 }) }),
);
const motions = fc.array(copy, { maxLength: 4 }).map(motionsOf);

function expectNear(a: Vec3, b: Vec3, within = 1e-8): void {
  expect(distance3(a, b), `${JSON.stringify(a)} and ${JSON.stringify(b)}`).toBeLessThan(within);
}

describe('copies of a place', () => {
  it('leave it alone where there are none', () => {
    expect(placesOf([])).toEqual([FRONT_LEFT]);
  });

  it('are mirrored over the middle of the base', () => {
    const both: readonly CopyOfPlace[] = [
      { kind: 'mirror', across: 'left-right' },
      { kind: 'mirror', across: 'front-back' },
    ];
    expect(placesOf(both)).toEqual([
      vec3(-600, -300, 40),
      vec3(600, -300, 40),
      vec3(-600, 300, 40),
      vec3(600, 300, 40),
    ]);
    expect(motionsOf(both).map(changesHand)).toEqual([false, true, true, false]);
  });

  it('stand one step beyond each other', () => {
    expect(placesOf([{ kind: 'repeat', count: 3, step: vec3(0, 100, 5) }])).toEqual([
      vec3(-600, -300, 40),
      vec3(-600, -200, 45),
      vec3(-600, -100, 50),
    ]);
  });

  it('stand round the plumb line through the middle, anticlockwise from above', () => {
    const [, quarter, half, last] = placesOf([{ kind: 'turn', count: 4 }]);
    expectNear(quarter!, vec3(300, -600, 40));
    expectNear(half!, vec3(600, 300, 40));
    expectNear(last!, vec3(-300, 600, 40));
  });

  it('are made of all that stands before: a row that is mirrored runs the other way', () => {
    const row: CopyOfPlace = { kind: 'repeat', count: 2, step: vec3(100, 0, 0) };
    const mirror: CopyOfPlace = { kind: 'mirror', across: 'left-right' };
    expect(placesOf([row, mirror]).map(({ x }) => x)).toEqual([-600, -500, 600, 500]);
    expect(placesOf([mirror, row]).map(({ x }) => x)).toEqual([-600, 600, -500, 700]);
  });

  it('mirror and turn do not commute: each step takes what the one before it made', () => {
    const turn: CopyOfPlace = { kind: 'turn', count: 4 };
    const mirror: CopyOfPlace = { kind: 'mirror', across: 'left-right' };
    const [first, , , , mirrored, other] = placesOf([turn, mirror]);
    expectNear(mirrored!, vec3(-first!.x, first!.y, first!.z));
    expectNear(other!, vec3(-300, -600, 40));
  });
});

describe('whatever the copies', () => {
  it('frames stay right-handed, and a point of the part goes where its copy has it', () => {
    fc.assert(
      fc.property(frame, motions, spot, (from, all, own) => {
        for (const motion of all) {
          const to = moveFrame(from, motion);
          expectNear(cross3(to.x, to.y), to.z, 1e-9);
          // The mirrored part is drawn turned over about its y axis.
          const drawn = changesHand(motion) ? { ...own, x: -own.x } : own;
          expectNear(pointToWorld(to, drawn), movePoint(pointToWorld(from, own), motion), 1e-6);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('planes keep the heights of points that go with them, and lengths and angles stay', () => {
    fc.assert(
      fc.property(
        spot,
        spot.filter((v) => length3(v) > 0),
        spot,
        motions,
        (through, facing, p, all) => {
          const plane = planeThrough(through, facing);
          for (const motion of all) {
            const moved = movePlane(plane, motion);
            expect(heightOver(moved, movePoint(p, motion))).toBeCloseTo(heightOver(plane, p), 6);
            expect(length3(moved.normal)).toBeCloseTo(1, 12);
            expect(dot3(moveDirection(p, motion), moveDirection(facing, motion))).toBeCloseTo(
              dot3(p, facing),
              3,
            );
          }
        },
      ),
      { numRuns: 100 },
    );
  });

  it('the first is the place itself, and there are as many as the steps multiply to', () => {
    fc.assert(
      fc.property(fc.array(copy, { maxLength: 4 }), (copies) => {
        const all: readonly Motion[] = motionsOf(copies);
        const count = copies.reduce((n, each) => n * (each.kind === 'mirror' ? 2 : each.count), 1);
        expect(all).toHaveLength(count);
        expectNear(movePoint(FRONT_LEFT, all[0]!), FRONT_LEFT, 1e-12);
      }),
      { numRuns: 100 },
    );
  });
});
