import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createOccupancy } from '../../src/drawing/layout/occupancy.ts';
import {
  boxesOverlap,
  cornersOf,
  inFrame,
  type OrientedBox,
  segmentMeetsBox,
  toFrame,
} from '../../src/drawing/layout/oriented-box.ts';
import { arc, line, vec } from '../../src/geometry/index.ts';

const TAG = { id: 'edge', role: 'routed' } as const;
const place = fc.double({ min: -40, max: 40, noNaN: true });
const size = fc.double({ min: 0.5, max: 20, noNaN: true });
const boxes: fc.Arbitrary<OrientedBox> = fc.record({
  centre: fc.record({ x: place, y: place }),
  halfWidth: size,
  halfHeight: size,
  angle: fc.double({ min: -4, max: 4, noNaN: true }),
});

/** Points all over a box, its corners drawn in by a share. */
function pointsIn(box: OrientedBox, share: number) {
  const steps = [-1, -0.6, -0.2, 0, 0.2, 0.6, 1].map((s) => s * share);
  return steps.flatMap((x) =>
    steps.map((y) => inFrame(box.centre, box.angle, { x: x * box.halfWidth, y: y * box.halfHeight })),
  );
}

function holds(box: OrientedBox, p: { x: number; y: number }, slack: number): boolean {
  const own = toFrame(box.centre, box.angle, p);
  return Math.abs(own.x) <= box.halfWidth + slack && Math.abs(own.y) <= box.halfHeight + slack;
}

test('boxes that share a point overlap', () => {
  fc.assert(
    fc.property(boxes, boxes, (a, b) => {
      const shared = pointsIn(a, 0.999).some((p) => holds(b, p, -1e-6));
      return !shared || boxesOverlap(a, b);
    }),
  );
});

test('boxes that overlap cannot be parted by any line along their sides', () => {
  fc.assert(
    fc.property(boxes, boxes, (a, b) => {
      if (!boxesOverlap(a, b)) return true;
      return [a, b].every((one) => {
        const other = one === a ? b : a;
        const own = cornersOf(other).map((p) => toFrame(one.centre, one.angle, p));
        const xs = own.map(({ x }) => x);
        const ys = own.map(({ y }) => y);
        return (
          Math.min(...xs) < one.halfWidth &&
          Math.max(...xs) > -one.halfWidth &&
          Math.min(...ys) < one.halfHeight &&
          Math.max(...ys) > -one.halfHeight
        );
      });
    }),
  );
});

test('a straight piece meets a box when a point of it lies inside', () => {
  fc.assert(
    fc.property(boxes, place, place, place, place, (box, x0, y0, x1, y1) => {
      const inside = Array.from({ length: 401 }, (_, i) => i / 400).some((t) =>
        holds(box, vec(x0 + t * (x1 - x0), y0 + t * (y1 - y0)), -1e-6),
      );
      const meets = segmentMeetsBox(vec(x0, y0), vec(x1, y1), box);
      // Sampling may miss a short cut across a corner, never the other way round.
      return inside ? meets : true;
    }),
  );
});

test('a box is free until a line or a box comes into it', () => {
  const box: OrientedBox = { centre: vec(100, 50), halfWidth: 10, halfHeight: 3, angle: 0.7 };
  const room = createOccupancy(500);
  expect(room.isFree(box)).toBe(true);
  room.addEdges([line(vec(0, 0), vec(60, 200), TAG)]);
  expect(room.isFree(box)).toBe(true);
  room.addEdges([line(vec(100, -400), vec(100, 400), TAG)]);
  expect(room.isFree(box)).toBe(false);
  expect(room.isClearOfBoxes(vec(100, -400), vec(100, 400))).toBe(true);
  room.addBox(box);
  expect(room.isClearOfBoxes(vec(100, -400), vec(100, 400))).toBe(false);
});

test('a box is free of another only where they do not overlap', () => {
  const room = createOccupancy(500);
  room.addBox({ centre: vec(0, 0), halfWidth: 10, halfHeight: 3, angle: 0 });
  const small = { halfWidth: 2, halfHeight: 2, angle: Math.PI / 4 };
  expect(room.isFree({ ...small, centre: vec(8, 4) })).toBe(false);
  expect(room.isFree({ ...small, centre: vec(11, 5.5) })).toBe(true);
});

test('an arc takes the room along its bow, not along its chord', () => {
  const room = createOccupancy(500);
  room.addEdges([arc(vec(50, 0), vec(-50, 0), vec(0, 0), 1, TAG)]);
  const small = { halfWidth: 2, halfHeight: 2, angle: 0 };
  expect(room.isFree({ ...small, centre: vec(0, 50) })).toBe(false);
  expect(room.isFree({ ...small, centre: vec(0, 0) })).toBe(true);
  expect(room.isFree({ ...small, centre: vec(0, -50) })).toBe(true);
});

test('a line across a thousand kilometres takes bounded memory', () => {
  const room = createOccupancy(1e9);
  room.addEdges([line(vec(0, 0), vec(1e9, 1e9), TAG)]);
  expect(room.isFree({ centre: vec(5e8, 5e8), halfWidth: 5, halfHeight: 5, angle: 0 })).toBe(false);
});
