import { describe, expect, it } from 'vitest';
import { cutError, sawnCut, sayCut, sayCutError } from '../../../src/base/end-cut/index.ts';
import { DEGREE, endCut, farCut, nearCut, RAIL } from './parts.ts';

const INCHES = { length: { unit: 'in', denominator: 32 }, angle: { unit: 'deg-min', half: true } } as const;

describe('a cut in words', () => {
  it('says everything that is set, marked and measured', () => {
    expect(sayCut(endCut(farCut(20, 10)))).toMatchInlineSnapshot(`
      [
        "Far end: mitre 20°, bevel 10°.",
        "Lying flat: back down, right edge against the fence, far end to the left, stop against the near end; swing the saw 20° to the left (a gauge that reads 90° when square shows 70°), rises 109.2 mm over 300 mm; tilt the blade 10° to the right (80° from the table), rises 52.9 mm over 300 mm.",
        "Standing on edge: right edge down, back against the fence, far end to the right, stop against the near end; swing the saw 10.63° to the left (a gauge that reads 90° when square shows 79.37°), rises 56.3 mm over 300 mm; tilt the blade 19.68° to the right (70.32° from the table), rises 107.3 mm over 300 mm.",
        "On the face side the line stands at 70° to the length; from the left edge to the right it runs 32.8 mm towards the near end. Set the bevel from 36.4 mm struck over a board 100 mm wide.",
        "On the edges the line stands at 79.37° to the length; from the back to the face side it runs 4.7 mm towards the near end. Set the bevel from 18.8 mm struck over a board 100 mm wide.",
        "Lengths of the corners from the reference: face side left 500.0 mm, face side right 467.2 mm, back left 504.7 mm, back right 471.9 mm.",
        "Long point on the face side: left corner, by 32.8 mm.",
        "Long point on the back: left corner, by 32.8 mm.",
        "To prove the sawn end: 100° to the face side, 80° to the back, measured through the wood.",
      ]
    `);
  });

  it('says inches over 12 in, and minutes to the half, without a millimetre', () => {
    const text = sayCut(endCut(farCut(9.855, 0)), INCHES).join('\n');
    expect(text).toContain('9° 51½′');
    expect(text).toContain('over 12 in');
    expect(text).toContain('over a board 4 in wide');
    expect(text).not.toMatch(/mm/);
  });

  it('says a square cut in few words', () => {
    const text = sayCut(endCut(farCut(0, 0)));
    expect(text[0]).toBe('Far end: square.');
    expect(text[1]).toMatch(/saw square across; blade upright\.$/);
    expect(text.join(' ')).not.toMatch(/Long point|0°/);
  });

  it('says a rip as a rip', () => {
    const text = sayCut(
      sawnCut({ normal: { x: 1, y: 0.04, z: 0.2 }, point: { x: 90, y: 0, z: 0 } }, RAIL),
    ).join('\n');
    expect(text).toMatch(/ripped and not mitred/);
    expect(text).toMatch(/narrows towards the far end/);
    expect(text).not.toMatch(/8\d\.\d+°.*mitre|mitre 8/);
    const upright = sayCut(sawnCut({ normal: { x: -1, y: 0, z: 0 }, point: { x: 0, y: 0, z: 0 } }, RAIL));
    expect(upright[0]).toMatch(/^Left edge: .*blade upright\.$/);
  });

  it('says that a cut along the face is no cut', () => {
    expect(sayCut(sawnCut({ normal: { x: 0, y: 0, z: 1 }, point: { x: 0, y: 0, z: 0 } }, RAIL))).toEqual([
      'The cut lies along the face side: plane or resaw it; no saw is set for it.',
    ]);
  });

  it('says what half a degree does', () => {
    const error = cutError(farCut(0, 0), RAIL, { length: 700 });
    expect(sayCutError(error, 700)).toEqual([
      '0.5° off in the mitre opens the joint by 0.8 mm and moves the other end, 700.0 mm away, by 6.1 mm.',
      '0.5° off in the tilt opens the joint by 0.2 mm and moves the other end, 700.0 mm away, by 6.1 mm.',
    ]);
    // Too large a mitre turns the part anticlockwise on its seat: what lies beyond the cut's own end goes the other way at each.
    expect(error.mitre.moves.x).toBeCloseTo(6.1, 1);
    expect(cutError(nearCut(0, 0), RAIL, { length: 700 }).mitre.moves.x).toBeCloseTo(-6.1, 1);
    expect(cutError(farCut(0, 0), RAIL, { length: 700, slip: 1 * DEGREE }).mitre.farEnd).toBeCloseTo(12.2, 1);
  });
});
