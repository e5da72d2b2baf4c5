import { expect, it } from 'vitest';
import {
  type PointPair,
  project,
  projectionFromPoints,
  similarityFromPoints,
  transformPoint,
  vec,
} from '../../src/geometry/index.ts';

const SQUARE = [vec(0, 0), vec(100, 0), vec(100, 100), vec(0, 100)];
const pairsTo = (to: readonly { x: number; y: number }[]): PointPair[] =>
  SQUARE.map((from, i) => ({ from, to: to[i]! }));

it('a photograph of a square seen slantwise is made true', () => {
  const seen = [vec(120, 900), vec(980, 940), vec(700, 300), vec(310, 280)];
  const found = projectionFromPoints(SQUARE.map((to, i) => ({ from: seen[i]!, to })));
  if (found.kind !== 'found') throw new Error(found.kind);
  for (const [i, p] of seen.entries()) {
    expect(project(p, found.projection)!.x).toBeCloseTo(SQUARE[i]!.x, 9);
    expect(project(p, found.projection)!.y).toBeCloseTo(SQUARE[i]!.y, 9);
  }
});

it('the middle of the square lies where its diagonals cross, not in the middle of the photograph', () => {
  const found = projectionFromPoints(pairsTo([vec(0, 0), vec(4, 0), vec(3, 2), vec(1, 2)]));
  if (found.kind !== 'found') throw new Error(found.kind);
  // Diagonals (0,0)-(3,2) and (4,0)-(1,2) cross at x = 2, y = 4/3.
  const middle = project(vec(50, 50), found.projection)!;
  expect(middle.x).toBeCloseTo(2, 12);
  expect(middle.y).toBeCloseTo(4 / 3, 12);
});

it('nothing is seen on the horizon or beyond it', () => {
  const found = projectionFromPoints(pairsTo([vec(0, 0), vec(4, 0), vec(3, 2), vec(1, 2)]));
  if (found.kind !== 'found') throw new Error(found.kind);
  // Its sides meet at (2, 4): they run away from the camera without end and never come back.
  expect(project(vec(50, 1e9), found.projection)!.y).toBeCloseTo(4, 5);
  expect(project(vec(50, -101), found.projection)).toBeUndefined();
});

it('says which points lie together, which in one line, and when two were named the wrong way round', () => {
  expect(projectionFromPoints(pairsTo([vec(0, 0), vec(4, 0), vec(4, 0.001), vec(1, 2)]))).toEqual({
    kind: 'together',
    pairs: [1, 2],
  });
  expect(projectionFromPoints(pairsTo([vec(0, 0), vec(4, 0), vec(2, 0.001), vec(1, 2)]))).toEqual({
    kind: 'in-line',
    pairs: [0, 1, 2],
  });
  expect(projectionFromPoints(pairsTo([vec(0, 0), vec(4, 0), vec(1, 2), vec(3, 2)]))).toMatchObject({
    kind: 'crossed',
  });
});

it('a picture whose y runs down, or that is seen in a mirror, is no fault', () => {
  expect(projectionFromPoints(pairsTo([vec(0, 9), vec(9, 9), vec(9, 0), vec(0, 0)])).kind).toBe('found');
});

it('two points of a picture taken square on give turn, scale and shift', () => {
  // A picture of 2 pixels a millimetre with y running down.
  const pairs: [PointPair, PointPair] = [
    { from: vec(100, 700), to: vec(0, 0) },
    { from: vec(500, 700), to: vec(200, 0) },
  ];
  const found = similarityFromPoints(pairs, true)!;
  expect(found.scale).toBeCloseTo(0.5, 12);
  const up = transformPoint(vec(100, 500), found);
  expect(up.x).toBeCloseTo(0, 9);
  expect(up.y).toBeCloseTo(100, 9);
  expect(similarityFromPoints([pairs[0], { ...pairs[1], from: pairs[0].from }], true)).toBeUndefined();
});
