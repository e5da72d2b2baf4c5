import { describe, expect, it } from 'vitest';
import { type FramedPlace, faceOfPlace, planesOfBase } from '../../../src/base/stand/planes-of-base.ts';
import { frameOfPlace } from '../../../src/base/stand/stand-part.ts';
import { dot3, heightOver, type Plane3, pointToWorld, type Vec3, vec3 } from '../../../src/geometry/index.ts';
import type { BasePlane, SketchedBase } from '../../../src/sketch/index.ts';
import { board, place } from '../hand-made.ts';

const DEGREE = Math.PI / 180;
const UP = vec3(0, 0, 1);

/** A leaning leg, 80 × 700 × 30 mm, and a rail behind it that lies along the table. */
const LEG = place('leg', 'leg', { at: vec3(-500, -200, 0), along: vec3(Math.tan(10 * DEGREE), 0, 1) });
const RAIL = place('rail', 'rail', { at: vec3(0, -200, 600), along: vec3(1, 0, 0), face: vec3(0, -1, 0) });
const PLACES: ReadonlyMap<string, FramedPlace> = new Map([
  ['leg', { frame: frameOfPlace(LEG)!, drawn: board('leg', 80, 700, 30) }],
  ['rail', { frame: frameOfPlace(RAIL)!, drawn: board('rail', 90, 900, 24) }],
]);

const made = (planes: Readonly<Record<string, BasePlane>>) =>
  planesOfBase({ planes } as SketchedBase, PLACES);

function planeOf(plane: BasePlane, others: Readonly<Record<string, BasePlane>> = {}): Plane3 {
  const result = made({ ...others, wanted: plane });
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('; '));
  return result.value.wanted!;
}

const faceOf = (face: string, more: Partial<Extract<BasePlane, { kind: 'face' }>['of']> = {}, out = 0) =>
  ({ kind: 'face', of: { place: 'leg', face, mirrored: [], ...more }, out }) as const;

const through = (at: Vec3, facing: Vec3): BasePlane => ({ kind: 'through', through: at, facing });

const messageOf = (plane: BasePlane, others: Readonly<Record<string, BasePlane>> = {}): string => {
  const result = made({ ...others, wanted: plane });
  return result.ok ? '' : result.problems[0]!.message;
};

describe('a plane of a base', () => {
  it('runs through a place, its normal of unit length', () => {
    expect(planeOf(through(vec3(10, 20, 700), vec3(0, 0, 8)))).toEqual({ normal: UP, offset: 700 });
  });

  it.each([
    ['face', 40, 350, 0],
    ['back', 40, 350, -30],
    ['bottom', 40, 0, -15],
    ['right', 80, 350, -15],
    ['top', 40, 700, -15],
    ['left', 0, 350, -15],
  ])('lies on the %s of a part, its normal out of the wood', (face, x, y, z) => {
    const plane = planeOf(faceOf(face));
    const { frame } = PLACES.get('leg')!;
    expect(heightOver(plane, pointToWorld(frame, { x, y, z }))).toBeCloseTo(0, 9);
    expect(heightOver(plane, pointToWorld(frame, { x: 40, y: 350, z: -15 }))).toBeLessThan(-14);
  });

  it('moves out of the wood by what is asked', () => {
    const [flush, proud] = [planeOf(faceOf('right')), planeOf(faceOf('right', {}, 5))];
    expect(proud.normal).toEqual(flush.normal);
    expect(proud.offset - flush.offset).toBeCloseTo(5, 12);
  });

  it('is mirrored with the part, its normal out of the other one', () => {
    const own = planeOf(faceOf('right'));
    expect(planeOf(faceOf('right', { mirrored: ['left-right'] }))).toEqual({
      normal: { ...own.normal, x: -own.normal.x },
      offset: own.offset,
    });
    const face = planeOf(faceOf('face', { mirrored: ['left-right', 'front-back'] }));
    expect(face.normal.y).toBeCloseTo(1, 12);
    expect(face.offset).toBeCloseTo(200, 9);
  });

  it('halves the angle of two others through the line where they cross, nearest to the direction asked', () => {
    const sides = {
      a: through(vec3(100, 0, 0), vec3(1, 0, 0)),
      b: through(vec3(0, 40, 0), vec3(0, 1, 0)),
    };
    const between = ['a', 'b'] as const;
    for (const [facing, x, y] of [
      [vec3(1, 1, 0), 1, 1],
      [vec3(1, 0.1, 0), 1, 1],
      [vec3(-1, -3, 5), -1, -1],
      [vec3(1, -1, 0), 1, -1],
      [vec3(-2, 1, 0), -1, 1],
    ] as const) {
      const mitre = planeOf({ kind: 'mitre', between, facing }, sides);
      expect(mitre.normal.x).toBeCloseTo(x * Math.SQRT1_2, 12);
      expect(mitre.normal.y).toBeCloseTo(y * Math.SQRT1_2, 12);
      expect(heightOver(mitre, vec3(100, 40, -300))).toBeCloseTo(0, 9);
    }
  });

  it('halves the angle of planes that are between others themselves', () => {
    const planes: Readonly<Record<string, BasePlane>> = {
      quarter: { kind: 'mitre', between: ['half', 'a'], facing: vec3(1, 0, 0) },
      half: { kind: 'mitre', between: ['a', 'b'], facing: vec3(1, 1, 0) },
      a: through(vec3(0, 0, 0), vec3(1, 0, 0)),
      b: through(vec3(0, 0, 0), vec3(0, 1, 0)),
    };
    const result = made(planes);
    const normal = result.ok ? result.value.quarter!.normal : UP;
    expect(Math.atan2(normal.y, normal.x) / DEGREE).toBeCloseTo(22.5, 9);
  });

  it('between the mirrored faces of a pair is the middle of the base', () => {
    const mitre = planeOf(
      { kind: 'mitre', between: ['own', 'other'], facing: vec3(1, 0, 0) },
      { own: faceOf('right'), other: faceOf('right', { mirrored: ['left-right'] }) },
    );
    expect(dot3(mitre.normal, vec3(1, 0, 0))).toBeCloseTo(1, 12);
    expect(mitre.offset).toBeCloseTo(0, 9);
  });

  it('is refused where there is none', () => {
    expect(messageOf(through(vec3(0, 0, 0), vec3(0, 0, 0)))).toBe('this plane faces nowhere');
    expect(messageOf(faceOf('hollow'))).toBe('leg has no flat face called hollow');
    expect(messageOf(faceOf('face', { place: 'shelf' }))).toBe('shelf has no flat face called face');
    const a = through(vec3(0, 0, 0), UP);
    const facing = vec3(1, 0, 0);
    expect(
      messageOf({ kind: 'mitre', between: ['a', 'b'], facing }, { a, b: through(vec3(0, 0, 9), UP) }),
    ).toBe('these two planes are parallel');
    expect(messageOf({ kind: 'mitre', between: ['a', 'c'], facing }, { a })).toBe(
      'there is no plane called c',
    );
    expect(messageOf({ kind: 'mitre', between: ['a', 'wanted'], facing }, { a })).toBe(
      'planes need each other: wanted → wanted',
    );
  });

  it('has no flat face on a curve', () => {
    const curved = board('leg', 80, 700, 30);
    const [bottom, , ...rest] = curved.region.outer.edges;
    const tag = { id: 'right', role: 'routed' } as const;
    const arc = {
      kind: 'arc',
      from: { x: 80, y: 0 },
      to: { x: 80, y: 700 },
      centre: { x: -500, y: 350 },
      radius: Math.hypot(580, 350),
      turn: 1,
      tag,
    } as const;
    const region = { outer: { edges: [bottom!, arc, ...rest] }, holes: [] };
    const places = new Map([['leg', { frame: PLACES.get('leg')!.frame, drawn: { ...curved, region } }]]);
    expect(faceOfPlace({ place: 'leg', face: 'right', mirrored: [] }, places)).toBeUndefined();
    expect(faceOfPlace({ place: 'leg', face: 'left', mirrored: [] }, places)).toBeDefined();
  });
});
