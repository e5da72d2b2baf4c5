import { describe, expect, test } from 'vitest';
import table from '../../shared/tables/rake-splay.json';
import {
  type Blank,
  cutError,
  type EndCut,
  type LegFrame,
  leanOf,
  rakeAndSplayOf,
  rollToLean,
  rollToRails,
  sawnCut,
  sectionOfLeg,
} from '../../src/base/end-cut/index.ts';
import type { Vec3 } from '../../src/geometry/index.ts';

const DEGREE = Math.PI / 180;
const degrees = (rad: number): number => rad / DEGREE;
const INCH = 25.4;
const ORIGIN = { x: 0, y: 0, z: 0 };

function head({ level, skew }: LegFrame, size = 2 * INCH): EndCut {
  const blank: Blank = {
    left: 0,
    right: size,
    thickness: size,
    skew,
    faceEdge: 'left',
    reference: { kind: 'square', y: -700 },
  };
  const cut = sawnCut({ normal: level, point: ORIGIN }, blank);
  if (cut.kind !== 'end') throw new Error(`${cut.kind} instead of an end cut`);
  return cut;
}

// Source: shared/tables/rake-splay.json, definitions read, figures computed apart from this code.
describe('rake and splay', () => {
  test.each(table.table.rows)(
    '$rake° and $splay° lean as tabled',
    ({ rake, splay, lean, line, length, runByRake, runBySplay }) => {
      const found = leanOf(rake * DEGREE, splay * DEGREE);
      const { height } = table.table;
      expect(degrees(found.lean)).toBeCloseTo(lean, 2);
      expect(degrees(found.line)).toBeCloseTo(line, 2);
      expect(Math.abs(height * found.lengthPerHeight - length)).toBeLessThan(0.006);
      const run = height * Math.tan(found.lean);
      expect(Math.abs(run * Math.cos(found.line) - runByRake)).toBeLessThan(0.006);
      expect(Math.abs(run * Math.sin(found.line) - runBySplay)).toBeLessThan(0.006);
      const back = rakeAndSplayOf(found);
      expect(degrees(back.rake)).toBeCloseTo(rake, 9);
      expect(degrees(back.splay)).toBeCloseTo(splay, 9);
    },
  );

  test.each(table.sections.rows)(
    'at $rake°/$splay° a leg that follows its rails is $offSquare° out of square',
    ({ rake, splay, offSquare }) => {
      expect(
        Math.abs(degrees(sectionOfLeg(rake * DEGREE, splay * DEGREE).offSquare) - offSquare),
      ).toBeLessThan(0.006);
    },
  );

  test.each(table.levelCuts.rows)(
    'level cuts at $rake°/$splay° run at $face° on the face with the blade at $tilt°',
    ({ rake, splay, face, tilt }) => {
      const cut = head(rollToRails(rake * DEGREE, splay * DEGREE));
      expect(Math.abs(degrees(cut.onFaceLine.angle))).toBeCloseTo(face, 1);
      expect(degrees(cut.onBack.tilt.fromSquare)).toBeCloseTo(tilt, 9);
    },
  );
});

describe('facts of the trade (common practice)', () => {
  test('10° of rake and of splay lean 14.0°', () => {
    expect(degrees(leanOf(10 * DEGREE, 10 * DEGREE).lean).toFixed(1)).toBe('14.0');
  });

  test('a leg rolled to its line of lean has one tilt of 14.0° and no mitre', () => {
    const cut = head(rollToLean(10 * DEGREE, 10 * DEGREE));
    expect(degrees(cut.onBack.tilt.fromSquare).toFixed(1)).toBe('14.0');
    expect(Math.abs(cut.mitre)).toBeLessThan(1e-12);
  });

  test('long and short points of a 2 in leg at 10° differ by 0.35 in', () => {
    const cut = head(rollToRails(0, 10 * DEGREE));
    expect((cut.arrises.onFace.by / INCH).toFixed(2)).toBe('0.35');
    expect((cut.arrises.onBack.by / INCH).toFixed(2)).toBe('0.35');
  });

  test('half a degree moves the foot of a 700 mm leg by 6.1 mm, and opens 0.026 in on a 3 in face', () => {
    const blank: Blank = {
      left: 0,
      right: 3 * INCH,
      thickness: 1 * INCH,
      faceEdge: 'left',
      reference: { kind: 'square', y: -700 },
    };
    const { mitre, tilt } = cutError({ normal: { x: 0, y: 1, z: 0 }, point: ORIGIN }, blank, { length: 700 });
    expect(mitre.farEnd.toFixed(1)).toBe('6.1');
    expect(tilt.farEnd.toFixed(1)).toBe('6.1');
    expect((mitre.gap / INCH).toFixed(3)).toBe('0.026');
  });

  test('half a degree moves the foot of a 28 in leg by 0.24 in', () => {
    const cut = { normal: { x: 0, y: 1, z: 0 }, point: ORIGIN };
    const blank: Blank = {
      left: 0,
      right: 50,
      thickness: 50,
      faceEdge: 'left',
      reference: { kind: 'square', y: 0 },
    };
    expect((cutError(cut, blank, { length: 28 * INCH }).mitre.farEnd / INCH).toFixed(2)).toBe('0.24');
  });

  test('1 mm over 300 mm is 0.19°', () => {
    const normal: Vec3 = { x: Math.sin(0.19 * DEGREE), y: Math.cos(0.19 * DEGREE), z: 0 };
    const blank: Blank = {
      left: 0,
      right: 50,
      thickness: 50,
      faceEdge: 'left',
      reference: { kind: 'square', y: -1 },
    };
    const cut = sawnCut({ normal, point: ORIGIN }, blank);
    expect(cut.kind === 'end' && cut.onBack.mitre.riseOver300.toFixed(1)).toBe('1.0');
  });

  test('a square cut is zero in every way', () => {
    const cut = head({ ...rollToRails(0, 0) });
    expect(cut).toMatchObject({ square: true, mitre: 0, bevel: 0, end: 'far' });
    for (const laid of [cut.onBack, cut.onEdge!]) {
      expect(laid.setting).toEqual({ swing: 0, tilt: 0 });
      for (const reading of [laid.mitre, laid.tilt]) {
        expect(reading).toMatchObject({ fromSquare: 0, to: undefined, riseOver300: 0, riseOver12in: 0 });
        expect(reading.complement).toBe(Math.PI / 2);
      }
    }
    expect([cut.onFaceLine.drop, cut.onEdgeLine.drop, cut.arrises.onFace.by, cut.arrises.onBack.by]).toEqual([
      0, 0, 0, 0,
    ]);
    expect(Object.values(cut.inside)).toEqual([Math.PI / 2, Math.PI / 2, Math.PI / 2, Math.PI / 2]);
    expect(cut.arrises.all.map(({ length }) => length)).toEqual([700, 700, 700, 700]);
  });
});

/*
 * The section of a leg whose faces follow the rails, found by cutting four planes in space square to the leg: an
 * independent way to the angle at its corners.
 */
test('cutting the planes of the rails square to the leg gives the corners of its section', () => {
  for (const [rake, splay] of [
    [10, 10],
    [12, 7],
    [4, 15],
  ] as const) {
    const [a, b] = [rake * DEGREE, splay * DEGREE];
    const axis = { x: -Math.tan(b), y: -Math.tan(a), z: 1 };
    // Where the planes of both outer faces meet the plane through the origin square to the axis: directions along the section's sides.
    const front = cross({ x: 0, y: Math.cos(a), z: Math.sin(a) }, axis);
    const side = cross({ x: Math.cos(b), y: 0, z: Math.sin(b) }, axis);
    const corner = Math.acos(Math.abs(dot(front, side)) / Math.sqrt(dot(front, front) * dot(side, side)));
    const section = sectionOfLeg(a, b);
    expect(corner).toBeCloseTo(section.acrossLean, 9);
    expect(section.alongLean + section.acrossLean).toBeCloseTo(Math.PI, 12);
  }
});

/* The same leg as a solid in the world: its faces and edges in the planes of the rails, its head level. */
test('a leg that follows its rails has its arrises and angles where the planes of the rails put them', () => {
  const [rake, splay] = [12 * DEGREE, 7 * DEGREE];
  const frame = rollToRails(rake, splay);
  const world = ({ x, y, z }: Vec3): Vec3 => ({
    x: x * frame.x.x + y * frame.y.x + z * frame.z.x,
    y: x * frame.x.y + y * frame.y.y + z * frame.z.y,
    z: x * frame.x.z + y * frame.y.z + z * frame.z.z,
  });
  const byRake = { x: 0, y: Math.cos(rake), z: Math.sin(rake) };
  const bySplay = { x: Math.cos(splay), y: 0, z: Math.sin(splay) };
  const { arrises, inside } = head(frame);
  const [faceLeft, faceRight, backLeft, backRight] = arrises.all.map(({ at }) => world(at)) as [
    Vec3,
    Vec3,
    Vec3,
    Vec3,
  ];
  for (const corner of [faceLeft, faceRight, backLeft, backRight]) expect(corner.z).toBeCloseTo(0, 9);
  expect(dot(faceLeft, byRake)).toBeCloseTo(dot(faceRight, byRake), 9);
  expect(dot(faceLeft, bySplay)).toBeCloseTo(dot(backLeft, bySplay), 9);
  expect(dot(faceRight, bySplay)).toBeCloseTo(dot(backRight, bySplay), 9);
  // The left edge looks the way of the splay; on a level head it stands at 90° and the splay.
  expect(degrees(inside.left)).toBeCloseTo(90 + 7, 9);
  expect(degrees(inside.face)).toBeCloseTo(90 + 12, 9);
});

function dot(a: Vec3, b: Vec3): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}
function cross(a: Vec3, b: Vec3): Vec3 {
  return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x };
}
