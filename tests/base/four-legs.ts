import type { StandingBase } from '../../src/base/index.ts';
import { vec, vec3 } from '../../src/geometry/index.ts';
import type { JointKind } from '../../src/sketch/index.ts';
import { board, joint, place, stand } from './hand-made.ts';

/**
 * A table of boards whose figures can be reckoned by hand, mm: legs 50 square and 700 high, outside to outside 900 × 500, long rails
 * 800 × 80 × 20 and end rails 400 × 80 × 20 with their upper edges at 700. Long rails are named first.
 */
export function fourLegs(kind: JointKind = 'glued', legLength = 700): StandingBase {
  const mirrored = (across: 'left-right' | 'front-back') => ({ kind: 'mirror', across }) as const;
  return stand(
    [board('leg', 50, legLength + 20, 50), board('long', 80, 800, 20), board('end', 80, 400, 20)],
    [
      place('leg', 'leg', {
        pin: vec(0, 20),
        at: vec3(-450, -250, 0),
        trims: [{ plane: 'floor', otherSide: false }],
        copies: [mirrored('left-right'), mirrored('front-back')],
      }),
      // Its width runs downwards, so that its left edge carries the top.
      place('long', 'long', {
        at: vec3(-400, -240, 700),
        along: vec3(1, 0, 0),
        copies: [mirrored('front-back')],
        beam: true,
      }),
      place('end', 'end', {
        at: vec3(-440, -200, 620),
        along: vec3(0, 1, 0),
        face: vec3(-1, 0, 0),
        copies: [mirrored('left-right')],
      }),
    ],
    {
      planes: { floor: { kind: 'through', through: vec3(0, 0, 0), facing: vec3(0, 0, -1) } },
      joints: [joint('long leg', kind, 'long', 'leg'), joint('end leg', kind, 'end', 'leg')],
    },
  );
}

/** The same under another top, its underside still at 700. */
export function under(base: StandingBase, top: Partial<StandingBase['top']>): StandingBase {
  return { ...base, top: { ...base.top, ...top } };
}
