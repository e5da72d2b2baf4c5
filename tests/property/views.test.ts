import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Camera, View, ViewedPart, ViewLine } from '../../src/drawing/view/api.ts';
import { CAMERAS, cameraFrom } from '../../src/drawing/view/cameras.ts';
import { viewOfParts } from '../../src/drawing/view/view-of-parts.ts';
import { directionAt, lengthOf, nearestOnEdges, pointAt, type Vec } from '../../src/geometry/index.ts';
import { randomFrom } from '../cases/outlines/random.ts';
import { rayHit } from '../drawing/view/ray-hit.ts';
import { leaningTable } from '../drawing/view/standing.ts';

/** mm: how far to either side of a line it is looked whether something changes there. */
const BESIDE = 0.4;
const TOLERANCE = 0.02;

const anyTable: fc.Arbitrary<readonly ViewedPart[]> = fc
  .record({
    splay: fc.double({ min: 0.02, max: 0.25, noNaN: true }),
    rake: fc.double({ min: 0.02, max: 0.25, noNaN: true }),
  })
  .map(({ splay, rake }) => leaningTable(splay, rake));

const anyCamera: fc.Arbitrary<Camera> = fc.oneof(
  fc.constantFrom(...Object.values(CAMERAS)),
  fc
    .record({
      x: fc.double({ min: -1, max: 1, noNaN: true }),
      y: fc.double({ min: -1, max: 1, noNaN: true }),
      z: fc.double({ min: -0.9, max: 0.9, noNaN: true }),
    })
    .filter(({ x, y }) => Math.hypot(x, y) > 0.2)
    .map(cameraFrom),
);

const edgesOf = (view: View, visible: boolean) =>
  view.lines.filter((line) => line.visible === visible).flatMap(({ edges }) => edges);

/** A place on a line well inside it, and a direction across. */
function placeOn(line: ViewLine, share: number): { readonly p: Vec; readonly across: Vec } | undefined {
  const edge = line.edges[Math.floor(share * line.edges.length)]!;
  if (lengthOf(edge) < 4) return undefined;
  const along = directionAt(edge, 0.5);
  return { p: pointAt(edge, 0.2 + 0.6 * ((share * 7919) % 1)), across: { x: -along.y, y: along.x } };
}

const step = (p: Vec, by: Vec, far: number): Vec => ({ x: p.x + by.x * far, y: p.y + by.y * far });

test('something else is seen on the one side of every visible line than on the other', () => {
  fc.assert(
    fc.property(anyTable, anyCamera, fc.integer(), (parts, camera, seed) => {
      const view = viewOfParts(parts, camera, { tolerance: TOLERANCE });
      const random = randomFrom(seed);
      for (const line of view.lines) {
        if (!line.visible) continue;
        const place = placeOn(line, random.next());
        if (place === undefined) continue;
        const { p, across } = place;
        // Where other lines pass near, one cannot tell which of them makes the change: that is as it may be.
        const [a, b] = [BESIDE, -BESIDE].map((far) => rayHit(parts, camera, step(p, across, far)));
        const same = a?.part === b?.part && a?.surface === b?.surface;
        const jump = Math.abs((a?.depth ?? 0) - (b?.depth ?? 0));
        // A wall that turns away and comes again is the same wall, farther off.
        if (same && jump < 0.2) {
          const near = view.lines.some(
            (other) =>
              other !== line && other.visible && nearestOnEdges(other.edges, p).distance < 2 * BESIDE,
          );
          if (!near) throw new Error(`nothing changes at ${JSON.stringify({ p, line, a, b })}`);
        }
      }
    }),
    { numRuns: 25 },
  );
});

test('wherever something else is seen a little farther on, a visible line lies between', () => {
  fc.assert(
    fc.property(anyTable, anyCamera, fc.integer(), (parts, camera, seed) => {
      const view = viewOfParts(parts, camera, { tolerance: TOLERANCE, hidden: false });
      const lines = edgesOf(view, true);
      const random = randomFrom(seed);
      const { minX, maxX, minY, maxY } = view.box;
      let changes = 0;
      for (let i = 0; i < 60; i++) {
        const p = { x: minX + (maxX - minX) * random.next(), y: minY + (maxY - minY) * random.next() };
        const angle = 2 * Math.PI * random.next();
        const q = step(p, { x: Math.cos(angle), y: Math.sin(angle) }, 40);
        let [from, to] = [p, q];
        let [a, b] = [rayHit(parts, camera, from), rayHit(parts, camera, to)];
        const differ = () => a?.part !== b?.part || a?.surface !== b?.surface;
        if (!differ()) continue;
        changes += 1;
        // Narrowed down to where it changes.
        for (let k = 0; k < 14; k++) {
          const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
          const c = rayHit(parts, camera, middle);
          if (c?.part === a?.part && c?.surface === a?.surface) [from, a] = [middle, c];
          else [to, b] = [middle, c];
        }
        expect(nearestOnEdges(lines, from).distance).toBeLessThan(2 * TOLERANCE + 0.01);
      }
      expect(changes).toBeGreaterThan(0);
    }),
    { numRuns: 25 },
  );
});

test('a hidden line has wood before it: what is seen there is nearer than the edge of its part could be alone', () => {
  fc.assert(
    fc.property(anyTable, anyCamera, (parts, camera) => {
      const view = viewOfParts(parts, camera, { tolerance: TOLERANCE });
      for (const line of view.lines) {
        if (line.visible) continue;
        const place = placeOn(line, 0.4);
        if (place === undefined) continue;
        expect(
          [BESIDE / 4, -BESIDE / 4].some((far) => rayHit(parts, camera, step(place.p, place.across, far))),
        ).toBe(true);
      }
    }),
    { numRuns: 15 },
  );
});

test('the mirrored base gives the mirrored view', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.02, max: 0.25, noNaN: true }),
      fc.double({ min: 0.02, max: 0.25, noNaN: true }),
      anyCamera,
      (splay, rake, camera) => {
        const parts = leaningTable(splay, rake);
        // The table is alike left and right, so that looked at from the mirrored side it shows its mirror image.
        const flip = (v: { x: number; y: number; z: number }) => ({ ...v, x: -v.x });
        const other: Camera = {
          origin: camera.origin,
          x: { x: camera.x.x, y: -camera.x.y, z: -camera.x.z },
          y: flip(camera.y),
          z: flip(camera.z),
        };
        const [a, b] = [camera, other].map((each) => viewOfParts(parts, each, { tolerance: TOLERANCE }));
        for (const visible of [true, false]) {
          const sum = (view: View) => edgesOf(view, visible).reduce((all, edge) => all + lengthOf(edge), 0);
          expect(Math.abs(sum(a!) - sum(b!))).toBeLessThan(0.002 * sum(a!) + 2);
        }
        for (const edge of edgesOf(a!, true)) {
          const p = pointAt(edge, 0.37);
          expect(nearestOnEdges(edgesOf(b!, true), { x: -p.x, y: p.y }).distance).toBeLessThan(3 * TOLERANCE);
        }
      },
    ),
    { numRuns: 15 },
  );
});
