import { describe, expect, test } from 'vitest';
import type { View, ViewedPart } from '../../../src/drawing/view/api.ts';
import { CAMERAS, cameraFrom, camerasOfPart } from '../../../src/drawing/view/cameras.ts';
import { viewOfParts } from '../../../src/drawing/view/view-of-parts.ts';
import {
  circleOutline,
  lengthOf,
  planeThrough,
  pointToFrame,
  type Vec3,
  vec3,
  WORLD,
} from '../../../src/geometry/index.ts';
import { box, rectangle, region, standing } from './standing.ts';

const lengths = (view: View, visible: boolean): number[] =>
  view.lines
    .filter((line) => line.visible === visible)
    .flatMap(({ edges }) => edges)
    .map(lengthOf)
    .sort((a, b) => a - b);

const total = (view: View, visible: boolean): number => lengths(view, visible).reduce((a, b) => a + b, 0);

/** How long an edge of the world shows in a camera's picture. */
const shown = (camera: (typeof CAMERAS)['front'], edge: Vec3): number => {
  const { x, y } = pointToFrame({ ...camera, origin: vec3(0, 0, 0) }, edge);
  return Math.hypot(x, y);
};

const disc = (radius: number, thickness: number): ViewedPart =>
  standing({
    region: region(circleOutline({ x: 0, y: 0 }, radius, { id: 'rim', role: 'routed' })),
    thickness,
  });

describe('a box', () => {
  test('seen square on is its four sides, and what lies behind them is not drawn again', () => {
    const view = viewOfParts([box('b', vec3(0, 0, 0), vec3(300, 40, 200))], CAMERAS.front);
    expect(lengths(view, true)).toEqual([200, 200, 300, 300]);
    expect(lengths(view, false)).toEqual([]);
    expect(view.box).toEqual({ minX: 0, maxX: 300, minY: 0, maxY: 200 });
  });

  test.each([
    [0.3, -0.7, 0.4],
    [-1, -0.2, 0.05],
    [0.2, -1, 0.9],
    [2, 3, -1.5],
  ])('seen from (%d, %d, %d) shows nine edges and hides three, as long as their projections', (x, y, z) => {
    const size = vec3(300, 40, 200);
    const camera = cameraFrom(vec3(x, y, z));
    const view = viewOfParts([box('b', vec3(17, -5, 3), size)], camera);
    const sides = [vec3(size.x, 0, 0), vec3(0, size.y, 0), vec3(0, 0, size.z)].map((edge) =>
      shown(camera, edge),
    );
    const each = (times: number) => sides.flatMap((side) => Array(times).fill(side)).sort((a, b) => a - b);
    expect(lengths(view, true)).toHaveLength(9);
    for (const [i, length] of lengths(view, true).entries()) expect(length).toBeCloseTo(each(3)[i], 8);
    for (const [i, length] of lengths(view, false).entries()) expect(length).toBeCloseTo(each(1)[i], 8);
    expect(lengths(view, false)).toHaveLength(3);
  });

  test('names part and edge of every line', () => {
    const view = viewOfParts([box('b', vec3(0, 0, 0), vec3(30, 40, 20))], cameraFrom(vec3(1, -1, 1)));
    expect(new Set(view.lines.map(({ part }) => part))).toEqual(new Set(['b']));
    expect(new Set(view.lines.map(({ edge }) => edge.id))).toEqual(new Set(['side']));
    expect(new Set(view.lines.map(({ on }) => on))).toEqual(new Set(['face', 'back', 'arris']));
  });
});

describe('several parts', () => {
  test('that lie flush show the joint between them once', () => {
    const parts = [box('a', vec3(0, 0, 0), vec3(100, 40, 200)), box('b', vec3(100, 0, 0), vec3(50, 40, 200))];
    const view = viewOfParts(parts, CAMERAS.front);
    expect(total(view, true)).toBeCloseTo(2 * 150 + 3 * 200, 8);
    expect(total(view, false)).toBe(0);
  });

  test('one behind another is hidden just as far as that covers it', () => {
    const front = box('front', vec3(50, -10, -50), vec3(100, 10, 300));
    const rail = box('rail', vec3(0, 0, 0), vec3(200, 20, 60));
    const view = viewOfParts([rail, front], CAMERAS.front);
    const ofRail = view.lines.filter(({ part }) => part === 'rail');
    const horizontal = (visible: boolean) =>
      ofRail
        .filter((line) => line.visible === visible)
        .flatMap(({ edges }) => edges)
        .filter(({ from, to }) => from.y === to.y)
        .map(({ from, to }) => [Math.min(from.x, to.x), Math.max(from.x, to.x)]);
    expect(horizontal(false)).toEqual([
      [50, 150],
      [50, 150],
    ]);
    expect(horizontal(true)).toHaveLength(4);
  });

  test('without hidden edges shows only what is seen', () => {
    const parts = [box('a', vec3(0, 0, 0), vec3(100, 40, 200)), box('b', vec3(20, 60, 20), vec3(30, 40, 20))];
    const view = viewOfParts(parts, CAMERAS.front, { hidden: false });
    expect(view.lines.every(({ visible, part }) => visible && part === 'a')).toBe(true);
  });
});

describe('curves', () => {
  test('square on come back as arcs: a disc is one whole circle', () => {
    const view = viewOfParts([disc(75, 30)], CAMERAS.plan);
    expect(view.lines).toHaveLength(1);
    const [edge] = view.lines[0]!.edges;
    expect(edge).toMatchObject({ kind: 'arc', radius: 75 });
    expect(lengthOf(edge!)).toBeCloseTo(2 * Math.PI * 75, 8);
  });

  test('turned are within the tolerance: a tilted disc is as wide and as high as its ellipses say', () => {
    const tilt = 0.6;
    const camera = cameraFrom(vec3(0, -Math.cos(tilt), Math.sin(tilt)));
    const tolerance = 0.02;
    const { box: around, lines } = viewOfParts([disc(75, 30)], camera, { tolerance });
    // The face's ellipse has the half axes r and r sin(tilt); the rim hangs t cos(tilt) below it.
    expect(Math.abs(around.maxX - 75)).toBeLessThan(tolerance);
    expect(Math.abs(around.maxY - 75 * Math.sin(tilt))).toBeLessThan(tolerance);
    expect(Math.abs(around.minY + 75 * Math.sin(tilt) + 30 * Math.cos(tilt))).toBeLessThan(tolerance);
    for (const { edges, on, visible } of lines) {
      if (on !== 'face') continue;
      expect(visible).toBe(true);
      for (const { from } of edges) {
        expect(Math.hypot(from.x / 75, from.y / (75 * Math.sin(tilt)))).toBeCloseTo(1, 9);
      }
    }
    // The wall turns away at both ends of the long axis, and nowhere else.
    const contours = lines.filter(({ on }) => on === 'arris');
    expect(contours.map(({ visible }) => visible)).toEqual([true, true]);
    for (const { edges } of contours) expect(Math.abs(edges[0]!.from.x)).toBeGreaterThan(75 - tolerance);
  });

  test('a hole shows its far rim as far as one sees into it', () => {
    const plate = standing({
      region: region(rectangle(200, 200, { x: -100, y: -100 }).outer, {
        edges: circleOutline({ x: 0, y: 0 }, 40, { id: 'hole', role: 'routed' })
          .edges.toReversed()
          .map((e) => (e.kind === 'arc' ? { ...e, from: e.to, to: e.from, turn: -1 as const } : e)),
      }),
      thickness: 20,
    });
    const view = viewOfParts([plate], cameraFrom(vec3(0, -Math.tan(0.5), 1)));
    const far = view.lines.filter(({ edge, on }) => edge.id === 'hole' && on === 'back');
    const seen = far
      .filter(({ visible }) => visible)
      .flatMap(({ edges }) => edges)
      .map(lengthOf);
    const hidden = far
      .filter(({ visible }) => !visible)
      .flatMap(({ edges }) => edges)
      .map(lengthOf);
    // Two circles of one radius, shifted by t·sin(0.5) against each other across their short axes: of the far one that arc is seen
    // which lies within the near one.
    const shift = 20 * Math.sin(0.5);
    const cos = Math.cos(0.5);
    const half = Math.acos(shift / (2 * 40 * cos));
    const ellipse = (from: number, to: number): number => {
      let sum = 0;
      const n = 20000;
      for (let i = 0; i < n; i++) {
        const a = from + ((to - from) * (i + 0.5)) / n;
        sum += Math.hypot(40 * Math.cos(a), 40 * cos * Math.sin(a)) * ((to - from) / n);
      }
      return sum;
    };
    // Measured from the short axis: x = 40 sin a, y = ± 40 cos(0.5) cos a.
    expect(seen.reduce((a, b) => a + b, 0)).toBeCloseTo(ellipse(-half, half), 0);
    // Where the wall turns away its contour touches both rims, and within the nearness of lines that are drawn once only one is.
    const lost = ellipse(half, 2 * Math.PI - half) - hidden.reduce((a, b) => a + b, 0);
    expect(lost).toBeGreaterThanOrEqual(-1e-3);
    expect(lost).toBeLessThan(4 * Math.sqrt(2 * ((40 * cos * cos * 40) / 40) * 0.04));
  });
});

describe('cuts', () => {
  const leg = standing({
    region: rectangle(60, 500),
    thickness: 40,
    cuts: { slope: planeThrough(vec3(0, 400, 0), vec3(0, 1, Math.tan(0.2))) },
  });

  test('show where a bevel leaves the face and the back', () => {
    const { edges } = viewOfParts([leg], CAMERAS.plan).lines.find(
      ({ edge, visible }) => edge.id === 'slope' && visible,
    )!;
    expect(edges[0]!.from.y).toBeCloseTo(400, 9);
    // The back, 40 below, is longer by 40 tan(0.2).
    const view = viewOfParts([leg], camerasOfPart(WORLD).right);
    expect(view.box.maxY).toBeCloseTo(400 + 40 * Math.tan(0.2), 9);
    expect(view.box).toMatchObject({ minX: 0, maxX: 40, minY: 0 });
  });

  test('two that cross make an edge between them', () => {
    const roof = standing({
      region: rectangle(60, 500),
      thickness: 40,
      cuts: {
        left: planeThrough(vec3(30, 480, 0), vec3(-1, 1, 0)),
        right: planeThrough(vec3(30, 480, 0), vec3(1, 1, 0)),
      },
    });
    const view = viewOfParts([roof], camerasOfPart(WORLD).top);
    const ridge = view.lines.filter(({ edges }) =>
      edges.every(({ from, to }) => from.x === to.x && Math.abs(from.x - 30) < 1e-9),
    );
    expect(ridge).toHaveLength(1);
    expect(lengthOf(ridge[0]!.edges[0]!)).toBeCloseTo(40, 9);
  });
});

describe('pockets', () => {
  const pocketed = (from: number, to: number) =>
    standing({
      region: rectangle(60, 500),
      thickness: 40,
      pockets: [
        { name: 'mortise', frame: WORLD, region: rectangle(to - from, 80, { x: from, y: 200 }), depth: 25 },
      ],
    });

  test('a mortise shows its mouth, and from the side its hidden floor and walls', () => {
    const face = viewOfParts([pocketed(20, 40)], CAMERAS.plan);
    const mouth = face.lines
      .filter(({ on }) => on === 'pocket')
      .flatMap(({ edges }) => edges)
      .map(lengthOf);
    expect(mouth.toSorted((a, b) => a - b).map((l) => Number(l.toFixed(9)))).toEqual([20, 20, 80, 80]);
    const side = viewOfParts([pocketed(20, 40)], camerasOfPart(WORLD).right);
    expect(total(side, false)).toBeCloseTo(25 + 80 + 25, 6);
  });

  test('a notch across takes the arrises away with it', () => {
    const side = viewOfParts([pocketed(0, 60)], camerasOfPart(WORLD).right);
    // Down, along the floor of the notch, and up again, all of it seen; the face's arris is gone between.
    expect(total(side, true)).toBeCloseTo(2 * 500 + 2 * 40 - 80 + 2 * 25 + 80, 6);
    expect(total(side, false)).toBe(0);
  });
});
