import { expect, test } from 'vitest';
import { sectionOfPart } from '../../../src/base/contact/section-of-part.ts';
import {
  areaOfRegions,
  boundsOfRegions,
  circleOutline,
  type Frame,
  frameAlong,
  perimeterOfRegions,
  SECTION_TOLERANCE,
  vec,
  vec3,
} from '../../../src/geometry/index.ts';
import { board, partOf } from '../hand-made.ts';

const disc = partOf('disc', circleOutline(vec(0, 0), 50, { id: 'round', role: 'routed' }), 30, [
  circleOutline(vec(0, 20), 10, { id: 'hole', role: 'routed' }, -1),
]);

/** The plane through the middle of the disc's thickness that leans by an angle about its y axis. */
const leaning = (angle: number): Frame =>
  frameAlong(vec3(0, 0, -15), vec3(0, 1, 0), vec3(Math.sin(angle), 0, Math.cos(angle)))!;

/** Area of the part of a disc within h of its diameter (two segments taken away from a circle: any handbook of mensuration). */
const stripOfDisc = (r: number, h: number): number =>
  h >= r ? Math.PI * r * r : 2 * (h * Math.sqrt(r * r - h * h) + r * r * Math.asin(h / r));

test.each([10, 30, 45, 70, -45, 135])('a plane leaning by %d° cuts a disc along its ellipse', (lean) => {
  const angle = (lean * Math.PI) / 180;
  const section = sectionOfPart({ drawn: disc, cuts: [] }, leaning(angle));
  const half = 15 / Math.abs(Math.tan(angle));
  const exact = (stripOfDisc(50, half) - stripOfDisc(10, half)) / Math.abs(Math.cos(angle));
  const off = areaOfRegions(section) - exact;
  expect(Math.abs(off)).toBeLessThan(SECTION_TOLERANCE * perimeterOfRegions(section));
  const box = boundsOfRegions(section);
  expect(box.maxX - box.minX).toBeCloseTo(
    Math.min(30 / Math.abs(Math.sin(angle)), 100 / Math.abs(Math.cos(angle))),
    2,
  );
});

test('a plane square to the faces cuts rectangles, a plane along them the outline', () => {
  const square = sectionOfPart({ drawn: disc, cuts: [] }, leaning(Math.PI / 2));
  expect(areaOfRegions(square)).toBeCloseTo((100 - 20) * 30, 9);
  expect(square).toHaveLength(2);
  expect(new Set(square.flatMap(({ outer }) => outer.edges.map(({ tag }) => tag.id)))).toEqual(
    new Set(['face', 'back', 'round', 'hole']),
  );
  const level = sectionOfPart({ drawn: disc, cuts: [] }, leaning(0));
  expect(areaOfRegions(level)).toBeCloseTo(Math.PI * (2500 - 100), 9);
});

test('sections of a board cut by a bevelled plane stack up to its volume (Simpson, exact for flat walls)', () => {
  const plane = { normal: vec3(0.36, 0.48, 0.8), offset: 0.48 * 200 };
  const part = {
    drawn: board('board', 80, 300, 20),
    cuts: [{ name: 'cut', role: 'sawn', plane, meets: true, short: 0 } as const],
  };
  const areaAt = (z: number): number =>
    areaOfRegions(sectionOfPart(part, frameAlong(vec3(0, 0, z), vec3(1, 0, 0), vec3(0, 0, 1))!));
  const volume = (20 / 6) * (areaAt(0) + 4 * areaAt(-10) + areaAt(-20));
  // The mean length left over the width and the thickness: y ≤ (offset − 0.36 x − 0.8 z) / 0.48 at x = 40, z = −10.
  expect(volume).toBeCloseTo(80 * 20 * (200 - (0.36 * 40 - 0.8 * 10) / 0.48), 6);
  const across = sectionOfPart(part, frameAlong(vec3(40, 0, 0), vec3(0, 1, 0), vec3(1, 0, 0))!);
  expect(areaOfRegions(across)).toBeCloseTo(20 * (200 - (0.36 * 40 - 0.8 * 10) / 0.48), 6);
});
