import { describe, expect, it } from 'vitest';
import {
  excessOver,
  type SawRange,
  sawCautions,
  sayWays,
  waysToSaw,
} from '../../../src/base/end-cut/index.ts';
import { aboutY, apply, bladeOf, outOfParallel } from '../../property/end-cut-bench.ts';
import { DEGREE, farCut, RAIL } from './parts.ts';

/** A saw that swings to 45° both ways and tilts to 45° to the left only. */
const SAW: SawRange = {
  swing: { left: 45 * DEGREE, right: 45 * DEGREE },
  tilt: { left: 45 * DEGREE, right: 0 },
};

describe('a saw of limited range', () => {
  it('makes a cut that it reaches as the part usually lies', () => {
    const [first] = waysToSaw(farCut(30, 0), RAIL, SAW);
    expect(first).toMatchObject({ kind: 'direct', lay: { down: 'back', fence: 'right' } });
  });

  it('that tilts to one side gets the work turned, and keeps its angles', () => {
    const [first] = waysToSaw(farCut(20, 10), RAIL, SAW);
    expect(first).toMatchObject({ kind: 'direct', lay: { down: 'back', fence: 'left' } });
    expect(first?.setting.tilt).toBeCloseTo(-10 * DEGREE, 12);
  });

  // Common practice: a cut of 57° on a saw that ends at 45° is set as 33° with the work held at 90° to the fence.
  it('makes a cut of 57° as its complement of 33° at a square fence', () => {
    const ways = waysToSaw(farCut(57, 0), RAIL, SAW);
    const square = ways.find(({ kind }) => kind === 'square-fence');
    expect(square?.mitre.fromSquare).toBeCloseTo(33 * DEGREE, 12);
    expect(square?.mitre.to).toBe('right');
    const wedge = ways.find(({ kind }) => kind === 'wedge-at-fence');
    expect(wedge?.wedge?.fromSquare).toBeCloseTo(12 * DEGREE, 12);
    expect(wedge?.mitre.fromSquare).toBeCloseTo(45 * DEGREE, 12);
    expect(sayWays(ways).join('\n')).toContain('swing the saw 33° to the right');
  });

  it('brings a steep compound cut to the end of its tilt by a wedge under the work, swing and wedge together in the plane of the cut', () => {
    const plane = farCut(25, 52);
    const saw: SawRange = { swing: SAW.swing, tilt: { left: 45 * DEGREE, right: 45 * DEGREE } };
    const wedged = waysToSaw(plane, RAIL, saw).find(({ kind }) => kind === 'wedge-under')!;
    // The same work lying so on a saw without an end to its tilt.
    const free: SawRange = { swing: saw.swing, tilt: { left: 80 * DEGREE, right: 80 * DEGREE } };
    const direct = waysToSaw(plane, RAIL, free).find(
      ({ lay }) => lay.down === wedged.lay.down && lay.fence === wedged.lay.fence,
    )!;
    expect(wedged.tilt.fromSquare).toBeCloseTo(45 * DEGREE, 9);
    // Raised along the fence the work turns about the line away from the sawyer, and the blade with it (rotations by matrices).
    const { fromSquare, to } = wedged.wedge!;
    const raised = aboutY((to === 'right' ? -1 : 1) * fromSquare);
    expect(outOfParallel(apply(raised, bladeOf(direct.setting)), bladeOf(wedged.setting))).toBeLessThan(1e-9);
    // Not the plain difference of the tilts: the swing takes a part of it.
    expect(Math.abs(fromSquare - (direct.tilt.fromSquare - 45 * DEGREE))).toBeGreaterThan(0.2 * DEGREE);
  });

  it('stands the work on edge for a bevel that it does not tilt to', () => {
    const [first] = waysToSaw(farCut(0, 40), RAIL, { ...SAW, tilt: { left: 0, right: 0 } });
    expect(first?.kind).toBe('direct');
    expect(first?.lay.down).toBe('right');
    expect(first?.mitre.fromSquare).toBeCloseTo(40 * DEGREE, 12);
  });

  it('without any way has the line marked and sawn by hand', () => {
    const fixed: SawRange = { swing: { left: 0, right: 0 }, tilt: { left: 0, right: 0 } };
    const ways = waysToSaw(farCut(40, 40), RAIL, fixed);
    expect(ways).toEqual([]);
    expect(sayWays(ways)[0]).toMatch(/by hand/);
  });

  it('loses depth by tilting and width by swinging', () => {
    const saw = { ...SAW, depth: 60, width: 100 };
    const section = { high: 50, across: 90 };
    expect(excessOver({ swing: 0, tilt: 0 }, saw, section)).toEqual([]);
    const [width] = excessOver({ swing: 30 * DEGREE, tilt: 0 }, saw, section);
    expect(width).toMatchObject({ what: 'width', wanted: 90 });
    expect(width?.most).toBeCloseTo(86.6, 1);
    const [depth] = excessOver({ swing: 0, tilt: -40 * DEGREE }, saw, section);
    expect(depth).toMatchObject({ what: 'depth' });
    expect(
      waysToSaw(farCut(30, 0), { ...RAIL, straight: 'right' }, saw).every(({ lay }) => lay.down === 'right'),
    ).toBe(true);
  });

  it('does not gain width by turning the work: the blade crosses as much of it as before', () => {
    // 90 mm at 57° is 165 mm along the blade.
    const kinds = (width: number) =>
      waysToSaw(farCut(57, 0), { ...RAIL, skew: 0.001 }, { ...SAW, width }).map(({ kind }) => kind);
    expect(kinds(160)).toEqual([]);
    expect(kinds(170)).toContain('square-fence');
  });

  it('has its cautions, with more of them for jigs and for work on edge', () => {
    const plain = sawCautions(waysToSaw(farCut(30, 0), { ...RAIL, skew: 0.01 }, SAW));
    const jigs = sawCautions(waysToSaw(farCut(57, 0), RAIL, SAW));
    expect(plain.at(-1)).toMatch(/maker of the saw/);
    expect(jigs.length).toBeGreaterThan(plain.length);
    expect(plain.join(' ')).toMatch(/150 mm/);
    expect(sawCautions([], { unit: 'in', denominator: 16 }).join(' ')).toMatch(/stay 6 in from/);
  });
});
