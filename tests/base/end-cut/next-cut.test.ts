import { describe, expect, it } from 'vitest';
import {
  type Blank,
  mirrorBlank,
  mirroredCut,
  mirrorPlane,
  nextCut,
  sayNextCut,
} from '../../../src/base/end-cut/index.ts';
import { DEGREE, endCut, farCut, nearCut, RAIL } from './parts.ts';

describe('the other end of a part', () => {
  it('of a parallelogram is turned end for end, the stop staying', () => {
    const next = nextCut(endCut(farCut(12, 0)).onBack, nearCut(12, 0), RAIL);
    expect(next).toMatchObject({ kind: 'turn', move: 'end-for-end', stopMoves: false });
  });

  it('of a parallelogram with one straight edge is slid along, and the stop goes over', () => {
    const curved = { ...RAIL, straight: 'right' } as const;
    const next = nextCut(endCut(farCut(12, 0), curved).onBack, nearCut(12, 0), curved);
    expect(next).toMatchObject({ kind: 'turn', move: 'slide', stopMoves: true });
    expect(sayNextCut(next).join(' ')).toMatch(/stop goes over/);
  });

  it('of a trapezium is turned over', () => {
    const next = nextCut(endCut(farCut(12, 0)).onBack, nearCut(-12, 0), RAIL);
    expect(next).toMatchObject({ kind: 'turn', move: 'over', stopMoves: false });
  });

  it('of a trapezium whose face side must be up swings the saw, and nothing is turned', () => {
    const shown = { ...RAIL, faceUp: true };
    const first = endCut(farCut(12, 0), shown).onBack;
    const next = nextCut(first, nearCut(-12, 0), shown);
    expect(next).toMatchObject({ kind: 'mirror', swing: true, tilt: false, reached: true });
    expect(next.laid.lay).toEqual(first.lay);
    expect(next.laid.setting.swing).toBeCloseTo(-first.setting.swing, 12);
    expect(sayNextCut(next)[0]).toMatch(
      /^Leave the work lying as it did and set the same swing to the other side/,
    );
  });

  it('says where the saw does not reach to the other side', () => {
    const shown = { ...RAIL, faceUp: true };
    const saw = {
      swing: { left: 10 * DEGREE, right: 45 * DEGREE },
      tilt: { left: 0, right: 0 },
    };
    const first = endCut(nearCut(-12, 0), shown).onBack;
    const next = nextCut(first, farCut(12, 0), shown, saw);
    expect(next).toMatchObject({ kind: 'mirror', reached: false });
    // No setting of that side is said, but how the work is held instead.
    const said = sayNextCut(next).join(' ');
    expect(said).toMatch(/wedge|auxiliary fence|lay the work anew/);
    expect(said).not.toMatch(/12° to the left/);
  });

  it('with other angles is set anew', () => {
    const next = nextCut(endCut(farCut(12, 0)).onBack, nearCut(20, 5), RAIL);
    expect(next.kind).toBe('reset');
    expect(sayNextCut(next)[0]).toMatch(/set the saw anew/);
  });
});

describe('the mirrored part', () => {
  it('is rolled over about its length under the same setting', () => {
    const first = endCut(farCut(12, 7)).onBack;
    const next = mirroredCut(first, farCut(12, 7), RAIL);
    expect(next).toMatchObject({
      kind: 'turn',
      move: 'roll',
      laid: { lay: { down: 'face', fence: 'right' } },
    });
    expect(next.laid.setting.swing).toBeCloseTo(first.setting.swing, 12);
    expect(next.laid.setting.tilt).toBeCloseTo(first.setting.tilt, 12);
  });

  it('whose face side must be up has swing and tilt on the other side', () => {
    const shown = { ...RAIL, faceUp: true };
    const next = mirroredCut(endCut(farCut(12, 7), shown).onBack, farCut(12, 7), shown);
    expect(next).toMatchObject({ kind: 'mirror', swing: true, tilt: true });
  });

  it('is the mirror image in every length, its fence line and skew mirrored as well', () => {
    const curved: Blank = { ...RAIL, fenceAngle: 80 * DEGREE, skew: 0.05, straight: 'right' };
    const cut = endCut(farCut(12, 7), curved);
    const mirrored = endCut(mirrorPlane(farCut(12, 7)), mirrorBlank(curved));
    expect(mirrored.mitre).toBeCloseTo(-cut.mitre, 12);
    expect(mirrored.bevel).toBeCloseTo(cut.bevel, 12);
    const [faceLeft, faceRight, backLeft, backRight] = cut.arrises.all.map(({ length }) => length);
    const swapped = [faceRight!, faceLeft!, backRight!, backLeft!];
    mirrored.arrises.all.forEach(({ length }, i) => {
      expect(length).toBeCloseTo(swapped[i]!, 9);
    });
  });
});
