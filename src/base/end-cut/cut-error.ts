import {
  ANGLE_TOLERANCE,
  add3,
  cross3,
  dot3,
  length3,
  scale3,
  turn3,
  unit3,
  type Vec3,
  vec3,
} from '../../geometry/index.ts';
import type { Blank, CutPlane } from './api.ts';
import { USUAL_SLIP } from './facts.ts';
import { fromFenceFrame, planeInFenceFrame } from './fence-frame.ts';
import { anglesOfNormal, planeOfAngles } from './plane-angles.ts';

/** What one slip does. mm. */
export interface SlipEffect {
  /** Gap that opens at one side of the joint while the other touches. */
  readonly gap: number;
  /** How far the other end of the part is moved. */
  readonly farEnd: number;
  /** The same by its components, in the part frame, for a slip to larger figures. */
  readonly moves: Vec3;
}

export interface CutError {
  /** rad. */
  readonly slip: number;
  readonly mitre: SlipEffect;
  readonly tilt: SlipEffect;
}

/**
 * What a slip (rad, half a degree unless given) of the mitre or of the tilt does, for a part this long (mm) that is set by the
 * cut. A slip of the mitre opens width / cos mitre · tan slip, seen on the face, one of the tilt thickness / cos bevel · tan slip.
 * The far end is moved by what turns the wrong plane onto the right one: length · slip where the part turns across its length,
 * less where it also twists. For an end cut; throws on a cut along the length.
 */
export function cutError(
  plane: CutPlane,
  blank: Blank,
  { length, slip = USUAL_SLIP }: { readonly length: number; readonly slip?: number },
): CutError {
  const { normal, point } = planeInFenceFrame(plane, blank.fenceAngle);
  if (normal.y === 0) throw new RangeError('a cut along the length sets no far end');
  const right = anglesOfNormal(normal);
  const width = blank.right - blank.left;
  const effect = (wrong: Partial<typeof right>, seam: number): SlipEffect => {
    const moves = movesOf(normal, planeOfAngles({ ...right, ...wrong }, point).normal, length);
    return {
      gap: seam * Math.tan(slip),
      farEnd: length3(moves),
      moves: fromFenceFrame(moves, blank.fenceAngle),
    };
  };
  return {
    slip,
    mitre: effect({ mitre: right.mitre + slip }, width / Math.cos(right.mitre)),
    tilt: effect({ bevel: right.bevel + slip }, blank.thickness / Math.cos(right.bevel)),
  };
}

/** Where the far end goes when the wrong plane is laid on the right one. */
function movesOf(right: Vec3, wrong: Vec3, length: number): Vec3 {
  const axis = cross3(wrong, right);
  if (length3(axis) < ANGLE_TOLERANCE) return vec3(0, 0, 0);
  const far = vec3(0, right.y < 0 ? length : -length, 0);
  const turned = turn3(far, unit3(axis), Math.atan2(length3(axis), dot3(wrong, right)));
  return add3(turned, scale3(far, -1));
}
