import { describe, expect, test } from 'vitest';
import table from '../../shared/tables/compound-mitre.json';
import { type Blank, type EndCut, sawnCut } from '../../src/base/end-cut/index.ts';
import type { Vec3 } from '../../src/geometry/index.ts';

const DEGREE = Math.PI / 180;
const dot = (a: Vec3, b: Vec3): number => a.x * b.x + a.y * b.y + a.z * b.z;

/**
 * A side of a box whose sides rise outwards at this pitch (degrees from flat), in the world: z up, this side's middle towards
 * +x. Its own frame: x up the slope, y along the side, face side within.
 */
function sideAt(pitch: number): { readonly x: Vec3; readonly y: Vec3; readonly z: Vec3 } {
  const [c, s] = [Math.cos(pitch * DEGREE), Math.sin(pitch * DEGREE)];
  return { x: { x: c, y: 0, z: s }, y: { x: 0, y: 1, z: 0 }, z: { x: -s, y: 0, z: c } };
}

/** The cut of that side by a plane with this normal in the world. */
function cutOfSide(pitch: number, world: Vec3): EndCut {
  const side = sideAt(pitch);
  const normal = { x: dot(world, side.x), y: dot(world, side.y), z: dot(world, side.z) };
  const blank: Blank = {
    left: 0,
    right: 150,
    thickness: 18,
    faceEdge: 'left',
    reference: { kind: 'square', y: -400 },
  };
  const cut = sawnCut({ normal, point: { x: 0, y: 0, z: 0 } }, blank);
  if (cut.kind !== 'end') throw new Error(`${cut.kind} instead of an end cut`);
  return cut;
}

/** The upright plane between this side and the next of so many. */
function mitredCut(pitch: number, sides: number): EndCut {
  const half = Math.PI / sides;
  return cutOfSide(pitch, { x: -Math.sin(half), y: Math.cos(half), z: 0 });
}

/** The inner face of the next of four sides. */
function buttedCut(pitch: number): EndCut {
  const s = Math.sin(pitch * DEGREE);
  return cutOfSide(pitch, { x: 0, y: s, z: -Math.cos(pitch * DEGREE) });
}

const degrees = (rad: number): number => rad / DEGREE;

describe('boxes with sloping sides', () => {
  // Source: chart in owner's manuals of compound mitre saws (shared/tables/compound-mitre.json). Printed to two decimals,
  // and 0.0075° off at most.
  test.each(table.chart.rows)(
    '$sides sides at $pitch° from flat are set as the chart says',
    ({ sides, pitch, mitre, bevel }) => {
      const { mitre: swing, tilt } = mitredCut(pitch, sides).onBack;
      if (mitre !== null) expect(Math.abs(degrees(swing.fromSquare) - mitre)).toBeLessThan(0.0076);
      expect(Math.abs(degrees(tilt.fromSquare) - bevel)).toBeLessThan(0.0076);
    },
  );

  // Source: Popular Woodworking no. 119, December 2000, p. 46, which counts the mitre from the fence.
  test('a worked example in print, its mitre counted from the fence', () => {
    const { sides, slope, mitreFromFence, tolerance } = table.magazineExample;
    const { complement } = mitredCut(slope, sides).onBack.mitre;
    expect(Math.abs(degrees(complement) - mitreFromFence)).toBeLessThan(tolerance);
  });

  // Source: quarter-degree table of machine manuals, from memory; common practice. Rounded to a quarter of a degree, and
  // farther off the exact figures where the table says so.
  test.each(table.quarterDegreeTable.rows)(
    'four sides that slope $slope° from plumb, as gauge and tilt are tabled',
    ({ slope, buttTilt, gauge, mitreTilt }) => {
      const { tolerance } = table.quarterDegreeTable;
      const mitred = mitredCut(90 - slope, 4).onBack;
      const butted = buttedCut(90 - slope).onBack;
      expect(Math.abs(degrees(mitred.mitre.complement) - gauge)).toBeLessThan(tolerance.gauge);
      expect(Math.abs(degrees(mitred.tilt.fromSquare) - mitreTilt)).toBeLessThan(tolerance.mitreTilt);
      expect(Math.abs(degrees(butted.mitre.complement) - gauge)).toBeLessThan(tolerance.gauge);
      expect(Math.abs(degrees(butted.tilt.fromSquare) - buttTilt)).toBeLessThan(tolerance.buttTilt);
    },
  );

  // Source: stops of many compound mitre saws, from memory; common practice.
  test('a moulding of 38° spring lying flat, for a corner of 90°', () => {
    const { spring, corner, mitre, bevel } = table.moulding;
    const { mitre: swing, tilt } = mitredCut(90 - spring, 360 / corner).onBack;
    expect(degrees(swing.fromSquare)).toBeCloseTo(mitre, 2);
    expect(degrees(tilt.fromSquare)).toBeCloseTo(bevel, 2);
  });

  // Interior angle of two mitred sides = 180° − 2 · tilt (D. L. Snyder and B. Gottesman, "Compound-Angle Joinery", 2014).
  test('the faces of two mitred sides meet at 180° less twice the tilt', () => {
    for (const pitch of [20, 45, 70]) {
      const a = sideAt(pitch).z;
      const next = { x: -a.y, y: a.x, z: a.z };
      const between = 180 - degrees(Math.acos(dot(a, next)));
      const { tilt } = mitredCut(pitch, 4).onBack;
      expect(between).toBeCloseTo(180 - 2 * degrees(tilt.fromSquare), 9);
    }
  });
});
