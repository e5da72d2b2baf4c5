import { describe, expect, it } from 'vitest';
import { type Blank, type CutPlane, sawnCut } from '../../../src/base/end-cut/index.ts';
import { DEGREE, endCut, farCut, nearCut, RAIL } from './parts.ts';

const at = (x: number, y: number, z: number): CutPlane => ({
  normal: { x, y, z },
  point: { x: 90, y: 0, z: 0 },
});

describe('a cut across a part', () => {
  it('at a mitre alone leaves the left corner long at the far end, and the right one at the near end', () => {
    const far = endCut(farCut(20, 0));
    expect(far.end).toBe('far');
    expect(far.arrises.onFace).toMatchObject({ long: 'face-left', short: 'face-right' });
    expect(far.arrises.onFace.by).toBeCloseTo(90 * Math.tan(20 * DEGREE), 9);
    expect(far.arrises.longest.name).toBe('face-left');
    const near = endCut(nearCut(20, 0), { ...RAIL, reference: { kind: 'square', y: 500 } });
    expect(near.end).toBe('near');
    expect(near.arrises.onFace.long).toBe('face-right');
  });

  it('at a bevel alone leaves both corners of a face even, and the back longer', () => {
    const { arrises, mitre } = endCut(farCut(0, 10));
    expect(mitre).toBe(0);
    expect(arrises.onFace).toEqual({ long: 'even', short: 'even', by: 0 });
    expect(arrises.longest.name).toBe('back-left');
    expect(arrises.longest.length - arrises.shortest.length).toBeCloseTo(25 * Math.tan(10 * DEGREE), 9);
  });

  it('says the figures of both ways of lying: mitre and bevel change places on edge', () => {
    const { onBack, onEdge } = endCut(farCut(0, 10));
    expect(onBack.tilt.fromSquare).toBeCloseTo(10 * DEGREE, 12);
    expect(onEdge?.mitre.fromSquare).toBeCloseTo(10 * DEGREE, 12);
    expect(onEdge?.tilt.fromSquare).toBe(0);
    expect(onEdge?.lay).toEqual({ down: 'right', fence: 'back' });
  });

  it('stops at the end that is kept, across the blade from the waste', () => {
    // Face side up with its right edge at the fence, the far end lies to the left.
    expect(endCut(farCut(20, 0)).onBack).toMatchObject({ waste: 'left', stopEnd: 'near' });
    expect(endCut(farCut(20, 0), { ...RAIL, faceEdge: 'left' }).onBack).toMatchObject({
      waste: 'right',
      stopEnd: 'near',
    });
    expect(endCut(nearCut(20, 0)).onBack).toMatchObject({ waste: 'right', stopEnd: 'far' });
  });

  it('gives rise over 300 mm and over 12 in, and the complement of each scale', () => {
    const { mitre } = endCut(farCut(30, 0)).onBack;
    expect(mitre.riseOver300).toBeCloseTo(173.205, 3);
    expect(mitre.riseOver12in / 25.4).toBeCloseTo(6.9282, 4);
    expect(mitre.complement).toBeCloseTo(60 * DEGREE, 12);
  });

  it('counts lengths from another cut along each arris', () => {
    const { arrises } = endCut(farCut(12, 5), { ...RAIL, reference: { kind: 'cut', plane: nearCut(12, 5) } });
    for (const { length } of arrises.all) expect(length).toBeCloseTo(500, 9);
  });

  it('measures a curved part from the fence line of its blank', () => {
    const fenceAngle = 80 * DEGREE;
    const square: CutPlane = {
      normal: { x: Math.cos(fenceAngle), y: Math.sin(fenceAngle), z: 0 },
      point: { x: 0, y: 500, z: 0 },
    };
    const curved: Blank = { ...RAIL, fenceAngle, straight: 'right' };
    expect(endCut(square, curved)).toMatchObject({ square: true });
    expect(endCut(square, RAIL).mitre).toBeCloseTo(10 * DEGREE, 12);
    // Level across the part frame, the cut is 10° off the fence line, to the other side.
    expect(endCut(farCut(0, 0), curved).mitre).toBeCloseTo(-10 * DEGREE, 12);
  });

  it('does not stand a part on edge where its face edge is not straight, or not square', () => {
    expect(endCut(farCut(20, 0), { ...RAIL, straight: 'left' }).onEdge).toBeUndefined();
    expect(endCut(farCut(20, 0), { ...RAIL, skew: 0.03 }).onEdge).toBeUndefined();
  });

  it('refuses a normal without direction', () => {
    expect(() => sawnCut(at(0, 0, 0), RAIL)).toThrow(/no direction/);
    expect(() => sawnCut(at(Number.NaN, 1, 0), RAIL)).toThrow(/no direction/);
  });
});

describe('a cut along a part', () => {
  it('is a rip bevel, not a mitre near 90°', () => {
    const cut = sawnCut(at(Math.cos(0.2), 0, Math.sin(0.2)), RAIL);
    expect(cut).toMatchObject({ kind: 'rip', edge: 'right', taper: 0, wider: 'back', down: 'face' });
    if (cut.kind !== 'rip') return;
    expect(cut.tilt.fromSquare).toBeCloseTo(0.2, 12);
    expect(cut.width.face).toBeCloseTo(90, 9);
    expect(cut.width.back).toBeCloseTo(90 + 25 * Math.tan(0.2), 9);
  });

  it('that runs out of parallel says its taper, and the end to which the part narrows', () => {
    const cut = sawnCut(at(Math.cos(0.05), Math.sin(0.05), 0), RAIL);
    expect(cut).toMatchObject({ kind: 'rip', wider: undefined });
    expect(cut.kind === 'rip' && cut.taper).toBeCloseTo(0.05, 12);
    const left = sawnCut({ normal: { x: -1, y: -0.05, z: 0 }, point: { x: 0, y: 0, z: 0 } }, RAIL);
    expect(left.kind === 'rip' && left.taper).toBeLessThan(0);
  });

  it('leaves a skew part the width between two edges that lean alike', () => {
    const cut = sawnCut(at(Math.cos(0.1), 0, -Math.sin(0.1)), { ...RAIL, skew: 0.1 });
    // Both edges go 25 · tan 0.1 to the right from face to back only where the cut leans as the skew does.
    expect(cut.kind === 'rip' && cut.width.face).toBeCloseTo(90, 9);
    expect(cut.kind === 'rip' && cut.width.back).toBeCloseTo(90 - 2 * 25 * Math.tan(0.1), 9);
    const along = sawnCut(at(Math.cos(0.1), 0, Math.sin(0.1)), { ...RAIL, skew: 0.1 });
    expect(along.kind === 'rip' && along.width.back).toBeCloseTo(90, 9);
  });

  it('begins where the cut is within 15° of the length', () => {
    expect(sawnCut(farCut(74.9, 0), RAIL).kind).toBe('end');
    expect(sawnCut(farCut(75.1, 0), RAIL).kind).toBe('rip');
  });

  it('along the face is neither', () => {
    expect(sawnCut(at(0, 0, -1), RAIL)).toMatchObject({ kind: 'flat', side: 'back' });
  });
});
