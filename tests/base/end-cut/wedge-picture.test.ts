import { describe, expect, it } from 'vitest';
import {
  nextCut,
  type SawRange,
  sayHoldDown,
  sayNextCut,
  settingPicture,
  waysToSaw,
} from '../../../src/base/end-cut/index.ts';
import { DEGREE, endCut, farCut, nearCut, RAIL } from './parts.ts';

const SAW: SawRange = {
  swing: { left: 45 * DEGREE, right: 45 * DEGREE },
  tilt: { left: 45 * DEGREE, right: 45 * DEGREE },
};
const WORK = { high: 25, across: 90 };

type Points = readonly { readonly x: number; readonly y: number }[];

/** Angle in degrees of the line between two points, from the level. */
const steep = (points: Points): number => {
  const [a, b] = [points[0]!, points.at(-1)!];
  return (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
};

describe('the picture of a cut beyond the saw', () => {
  const ways = waysToSaw(farCut(57, 0), RAIL, SAW);
  const wedged = ways.find(({ kind }) => kind === 'wedge-at-fence')!;

  it('shows the wedge that stands between fence and work, as steep as it is to be made, and the work along it', () => {
    const { plan, wedge } = settingPicture(wedged, WORK);
    const shape = plan.lines.find(({ what }) => what === 'wedge')!.points;
    const kept = plan.lines.find(({ what, points }) => what === 'work' && points.length === 4)!.points;
    // Of the wedge the side at the work, of the work the side at the wedge.
    const slope = Math.abs(steep([shape[0]!, shape[2]!]));
    expect(Math.min(slope, 180 - slope)).toBeCloseTo(12, 9);
    const side = Math.abs(steep([kept[0]!, kept[1]!]));
    expect(Math.min(side, 180 - side)).toBeCloseTo(12, 9);
    // 57° is beyond 45° by 12°: over 300 mm that rises 300 tan 12° = 63.77 mm, over 12 in 2.5507 in (tables of tangents).
    expect(wedge).toMatchObject({ run: 300 });
    expect(wedge!.rise).toBeCloseTo(63.77, 2);
    const inches = settingPicture(wedged, WORK, {
      length: { unit: 'in', denominator: 16 },
      angle: { unit: 'deg', decimals: 2 },
    }).wedge!;
    expect(inches.run).toBeCloseTo(304.8, 9);
    expect(inches.rise / 25.4).toBeCloseTo(2.5507, 4);
  });

  it('cuts the work at its own mitre, whatever the wedge takes of it', () => {
    const { plan } = settingPicture(wedged, WORK);
    const [, far, near] = plan.lines.find(
      ({ what, points }) => what === 'work' && points.length === 4,
    )!.points;
    const shape = plan.lines.find(({ what }) => what === 'wedge')!.points;
    const along = steep([shape[0]!, shape[2]!]);
    const across = Math.abs(steep([far!, near!]) - along) % 180;
    // Between the cut and the length of the work: the complement of the mitre.
    expect(Math.min(across, 180 - across)).toBeCloseTo(90 - 57, 9);
  });

  it('has no wedge where the saw reaches, and asks to hold the work down where it does not', () => {
    const [direct] = waysToSaw(farCut(30, 0), RAIL, SAW);
    const { plan, wedge } = settingPicture(direct!, WORK);
    expect(wedge).toBeUndefined();
    expect(plan.lines.some(({ what }) => what === 'wedge')).toBe(false);
    expect(sayHoldDown([direct!])).toEqual([]);
    expect(sayHoldDown([wedged]).join(' ')).toMatch(/hold the work down .* clamp/);
  });

  it('stands the work along a fence square to the saw’s own, its waste towards that', () => {
    const square = ways.find(({ kind }) => kind === 'square-fence')!;
    const { plan } = settingPicture(square, WORK);
    const fence = plan.lines.find(({ what }) => what === 'auxiliary')!.points;
    expect(Math.abs(steep([fence[0]!, fence[3]!]))).toBeCloseTo(90, 9);
    const work = plan.lines.find(({ what }) => what === 'work')!.points;
    const waste = plan.lines.find(({ what }) => what === 'waste')!.points;
    expect(Math.max(...waste.map(({ y }) => y))).toBeGreaterThan(Math.max(...work.map(({ y }) => y)));
    // The cut runs at the mitre to the length of the work.
    const angle = Math.abs(steep([work[1]!, work[2]!]));
    expect(Math.min(angle, 180 - angle)).toBeCloseTo(57, 9);
  });
});

describe('a second cut on the side that the saw does not reach', () => {
  const oneSided: SawRange = { swing: { left: 45 * DEGREE, right: 0 }, tilt: { left: 0, right: 0 } };
  const shown = { ...RAIL, faceUp: true, straight: 'right' as const };

  it('is told by how the work is held instead, never by a setting there', () => {
    const first = endCut(farCut(20, 0), shown).onBack;
    for (const plane of [nearCut(-20, 0), nearCut(20, 0), nearCut(-30, 0)]) {
      const next = nextCut(first, plane, shown, oneSided);
      const said = sayNextCut(next).join(' ');
      expect(said).not.toMatch(/does not reach/);
      if (next.kind === 'turn') continue;
      const swings = [...said.matchAll(/swing the saw ([\d.]+)° to the (left|right)/g)];
      for (const [, angle, side] of swings) {
        expect(Number(angle) * DEGREE).toBeLessThanOrEqual(oneSided.swing[side as 'left' | 'right'] + 1e-6);
      }
    }
  });
});
