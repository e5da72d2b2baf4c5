import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  anglesOfNormal,
  arrisesOfCut,
  type Blank,
  cutError,
  type EndCut,
  type Laid,
  planeOfAngles,
  sawnCut,
} from '../../src/base/end-cut/index.ts';
import type { Vec3 } from '../../src/geometry/index.ts';
import {
  aboutZ,
  apply,
  bladeOf,
  blanks,
  DEGREE,
  dot,
  endPlanes,
  minus,
  outOfParallel,
  place,
} from './end-cut-bench.ts';

function endCut(plane: Parameters<typeof sawnCut>[0], blank: Blank): EndCut {
  const cut = sawnCut(plane, blank);
  if (cut.kind !== 'end') throw new Error(`${cut.kind} instead of an end cut`);
  return cut;
}

describe('an end cut', () => {
  it('is the plane that its mitre, bevel and point describe', () => {
    fc.assert(
      fc.property(endPlanes, (plane) => {
        const { normal } = planeOfAngles(anglesOfNormal(plane.normal), plane.point);
        expect(Math.hypot(...Object.values(minus(normal, plane.normal)))).toBeLessThan(1e-12);
      }),
    );
  });

  it('lies on the blade of a saw set as it says, however it lies', () => {
    fc.assert(
      fc.property(endPlanes, blanks, (plane, blank) => {
        const { onBack, onEdge } = endCut(plane, blank);
        for (const laid of [onBack, onEdge].filter((each): each is Laid => each !== undefined)) {
          const laidNormal = place(laid.lay)(plane.normal);
          expect(outOfParallel(laidNormal, bladeOf(laid.setting))).toBeLessThan(1e-12);
          expect(Math.sign(laidNormal.x)).toBe(laid.waste === 'right' ? 1 : -1);
          expect(laid.mitre.to).toBe(
            laid.setting.swing === 0 ? undefined : laid.setting.swing > 0 ? 'right' : 'left',
          );
        }
        expect(Math.abs(onBack.setting.swing)).toBeCloseTo(Math.abs(anglesOfNormal(plane.normal).mitre), 12);
        expect(Math.abs(onBack.setting.tilt)).toBeCloseTo(Math.abs(anglesOfNormal(plane.normal).bevel), 12);
      }),
    );
  });

  it('meets all four arrises where the plane does, and measures them along the part', () => {
    fc.assert(
      fc.property(endPlanes, blanks, (plane, blank) => {
        const { all, longest, shortest } = arrisesOfCut(plane, blank);
        const places = [
          [blank.left, 0],
          [blank.right, 0],
          [blank.left, -blank.thickness],
          [blank.right, -blank.thickness],
        ] as const;
        const far = plane.normal.y > 0 ? 1 : -1;
        all.forEach(({ at, length }, i) => {
          expect(at.x).toBeCloseTo(places[i]![0], 12);
          expect(at.z).toBeCloseTo(places[i]![1], 12);
          expect(Math.abs(dot(minus(at, plane.point), plane.normal))).toBeLessThan(1e-9 * 1e4);
          const y = blank.reference.kind === 'square' ? blank.reference.y : Number.NaN;
          expect(length).toBeCloseTo(far * (at.y - y), 7);
        });
        expect(longest.length).toBeCloseTo(Math.max(...all.map((each) => each.length)), 6);
        expect(shortest.length).toBeCloseTo(Math.min(...all.map((each) => each.length)), 6);
      }),
    );
  });

  it('is the same cut when part, cut and fence line are turned together', () => {
    fc.assert(
      fc.property(
        endPlanes,
        blanks,
        fc.double({ min: -1.2, max: 1.2, noNaN: true }),
        (plane, blank, turn) => {
          const turned = (v: Vec3): Vec3 => apply(aboutZ(turn), v);
          const there = endCut(
            { normal: turned(plane.normal), point: turned(plane.point) },
            { ...blank, fenceAngle: Math.PI / 2 + turn },
          );
          const here = endCut(plane, blank);
          expect(there.mitre).toBeCloseTo(here.mitre, 9);
          expect(there.bevel).toBeCloseTo(here.bevel, 9);
          here.arrises.all.forEach(({ at, length }, i) => {
            expect(there.arrises.all[i]!.length).toBeCloseTo(length, 6);
            expect(Math.hypot(...Object.values(minus(there.arrises.all[i]!.at, turned(at))))).toBeLessThan(
              1e-6,
            );
          });
        },
      ),
    );
  });

  it('stands on the lines that are marked on face and edge', () => {
    fc.assert(
      fc.property(endPlanes, blanks, (plane, blank) => {
        const { onFaceLine, onEdgeLine, arrises } = endCut(plane, blank);
        const [faceLeft, faceRight, backLeft] = arrises.all.map(({ at }) => at) as [Vec3, Vec3, Vec3];
        expect(faceLeft.y - faceRight.y).toBeCloseTo(
          (blank.right - blank.left) * Math.tan(onFaceLine.angle),
          6,
        );
        expect(backLeft.y - faceLeft.y).toBeCloseTo(blank.thickness * Math.tan(onEdgeLine.angle), 6);
        expect(onFaceLine.drop).toBeCloseTo(Math.abs(faceLeft.y - faceRight.y), 6);
        expect(onEdgeLine.over100 / 100).toBeCloseTo(Math.abs(backLeft.y - faceLeft.y) / blank.thickness, 6);
      }),
    );
  });

  it('has the angles inside the wood that its own corners show', () => {
    fc.assert(
      fc.property(endPlanes, blanks, (plane, blank) => {
        const { inside } = endCut(plane, blank);
        expect(inside.face + inside.back).toBeCloseTo(Math.PI, 12);
        expect(inside.left + inside.right).toBeCloseTo(Math.PI, 12);
        // Angle between two half planes from their common line: wood on the face lies against y where the cut is far.
        expect(Math.cos(inside.face)).toBeCloseTo(-plane.normal.z, 12);
        expect(Math.cos(inside.right)).toBeCloseTo(-plane.normal.x, 12);
      }),
    );
  });

  it('half a degree off never moves the far end by more than length times the slip', () => {
    fc.assert(
      fc.property(endPlanes, blanks, (plane, blank) => {
        const { slip, mitre, tilt } = cutError(plane, blank, { length: 700 });
        expect(slip).toBeCloseTo(0.5 * DEGREE, 12);
        const { mitre: angle, bevel } = anglesOfNormal(plane.normal);
        for (const { farEnd, moves } of [mitre, tilt]) {
          expect(farEnd).toBeLessThan(700 * slip);
          expect(Math.hypot(moves.x, moves.y, moves.z)).toBeCloseTo(farEnd, 9);
        }
        // To first order: the tilt turns the part about the line of cut, the mitre about the upright of the face, which twists
        // the sawn plane by cos bevel only.
        expect(tilt.farEnd).toBeCloseTo(700 * slip * Math.cos(angle), 1);
        const twist =
          700 * slip * Math.cos(bevel) * Math.hypot(Math.cos(bevel), Math.sin(bevel) * Math.sin(angle));
        expect(Math.abs(mitre.farEnd - twist)).toBeLessThan(0.05);
      }),
    );
  });
});
