import { expect, it } from 'vitest';
import { matrix3d, project, projectionFromPoints, type Vec, vec } from '../../src/geometry/index.ts';
import { randomFrom } from '../cases/outlines/random.ts';

/**
 * The closed form for a unit square seen as any quadrilateral: P. Heckbert, Fundamentals of Texture Mapping and Image Warping,
 * University of California, Berkeley, 1989, section 2.2.3 (from memory): with the sums of the corners' differences, two
 * determinants give g and h and the rest follows.
 */
function unitSquareTo([p0, p1, p2, p3]: readonly [Vec, Vec, Vec, Vec]): (u: number, v: number) => Vec {
  const dx1 = p1.x - p2.x;
  const dx2 = p3.x - p2.x;
  const dy1 = p1.y - p2.y;
  const dy2 = p3.y - p2.y;
  const sx = p0.x - p1.x + p2.x - p3.x;
  const sy = p0.y - p1.y + p2.y - p3.y;
  const determinant = dx1 * dy2 - dx2 * dy1;
  const g = (sx * dy2 - dx2 * sy) / determinant;
  const h = (dx1 * sy - sx * dy1) / determinant;
  return (u, v) => {
    const w = g * u + h * v + 1;
    return vec(
      ((p1.x - p0.x + g * p1.x) * u + (p3.x - p0.x + h * p3.x) * v + p0.x) / w,
      ((p1.y - p0.y + g * p1.y) * u + (p3.y - p0.y + h * p3.y) * v + p0.y) / w,
    );
  };
}

it('the eight unknowns agree with the closed form for a unit square', () => {
  const random = randomFrom(8);
  for (let draw = 0; draw < 500; draw++) {
    const at = (x: number, y: number) =>
      vec(4000 * (x + random.between(-0.24, 0.24)), 3000 * (y + random.between(-0.24, 0.24)));
    const quad: [Vec, Vec, Vec, Vec] = [at(0, 0), at(1, 0), at(1, 1), at(0, 1)];
    const corners = [vec(0, 0), vec(1, 0), vec(1, 1), vec(0, 1)];
    const found = projectionFromPoints(corners.map((from, i) => ({ from, to: quad[i]! })));
    if (found.kind !== 'found') throw new Error(found.kind);
    const closed = unitSquareTo(quad);
    for (let probe = 0; probe < 5; probe++) {
      const p = vec(random.next(), random.next());
      const ours = project(p, found.projection)!;
      const theirs = closed(p.x, p.y);
      expect(Math.hypot(ours.x - theirs.x, ours.y - theirs.y)).toBeLessThan(1e-7);
    }
  }
});

/** A pinhole camera: a world plane goes to the image by focal length over depth, whatever the plane's lean. */
it('four points of a board under a pinhole camera make the whole photograph true', () => {
  const focal = 3200;
  const lean = 0.5;
  const shot = ({ x, y }: Vec): Vec => {
    const depth = 1500 + y * Math.sin(lean);
    return vec(2000 + (focal * x) / depth, 1500 - (focal * y * Math.cos(lean)) / depth);
  };
  const corners = [vec(-600, -90), vec(600, -90), vec(600, 110), vec(-600, 110)];
  const found = projectionFromPoints(corners.map((to) => ({ from: shot(to), to })));
  if (found.kind !== 'found') throw new Error(found.kind);
  for (const knot of [vec(0, 0), vec(333, 41), vec(-871, -75), vec(590, 160)]) {
    const place = project(shot(knot), found.projection)!;
    expect(Math.hypot(place.x - knot.x, place.y - knot.y)).toBeLessThan(1e-7);
  }
});

/** CSS Transforms Module Level 2, matrix3d(): sixteen values in column-major order, applied to (x, y, 0, 1) and divided by w. */
it('the sixteen numbers do the same as the nine', () => {
  const found = projectionFromPoints([
    { from: vec(0, 0), to: vec(3, 4) },
    { from: vec(10, 0), to: vec(90, 11) },
    { from: vec(10, 7), to: vec(77, 60) },
    { from: vec(0, 7), to: vec(8, 50) },
  ]);
  if (found.kind !== 'found') throw new Error(found.kind);
  const m = matrix3d(found.projection);
  const row = (k: number) => m[k]! * 4 + m[4 + k]! * 5 + m[12 + k]!;
  expect(m).toHaveLength(16);
  expect(row(0) / row(3)).toBeCloseTo(project(vec(4, 5), found.projection)!.x, 10);
  expect(row(1) / row(3)).toBeCloseTo(project(vec(4, 5), found.projection)!.y, 10);
});
