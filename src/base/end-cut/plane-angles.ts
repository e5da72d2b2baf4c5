import type { Vec3 } from '../../geometry/index.ts';
import type { CutPlane, End } from './api.ts';

export interface PlaneAngles {
  readonly end: End;
  readonly mitre: number;
  readonly bevel: number;
}

/**
 * End, signed mitre and signed bevel (rad) of a cut with unit outward normal m in the frame of the fence line, for a part on
 * its back, face side up: with s = sign(my) the mitre is atan2(mx·s, my·s), in (−π/2, π/2], and the bevel asin(mz·s).
 * Parallel planes at the two ends have the same angles. On the face the cut then runs along dy/dx = −tan mitre, and on an
 * edge along dy/dz = −tan bevel / cos mitre. A plane along the length counts as the far end, with a mitre of ±π/2.
 * Elementary: the direction of the normal in plan, and its height above the table.
 */
export function anglesOfNormal(m: Vec3): PlaneAngles {
  const s = m.y < 0 ? -1 : 1;
  return {
    end: s > 0 ? 'far' : 'near',
    mitre: unsigned(Math.atan2(m.x * s, m.y * s)),
    bevel: unsigned(Math.asin(Math.max(-1, Math.min(1, m.z * s)))),
  };
}

/** The plane with these angles through a point, in the frame of the fence line: the way back from anglesOfNormal. */
export function planeOfAngles({ end, mitre, bevel }: PlaneAngles, point: Vec3): CutPlane {
  const s = end === 'far' ? 1 : -1;
  const flat = Math.cos(bevel) * s;
  return {
    normal: { x: flat * Math.sin(mitre), y: flat * Math.cos(mitre), z: Math.sin(bevel) * s },
    point,
  };
}

/** −0 is no other angle than 0. */
function unsigned(angle: number): number {
  return angle === 0 ? 0 : angle;
}
