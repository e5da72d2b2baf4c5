import { ANGLE_TOLERANCE, norm } from '../../geometry/index.ts';
import type { SawRange, SawSetting } from './api.ts';
import { bladeNormal } from './saw-setting.ts';

/**
 * Angle (rad) of the wedge between fence and work that brings a swing beyond the saw's range back to its end; positive where
 * it is thick at the sawyer's right. The work turns with the wedge, so swing = end of range + wedge. Nothing where the saw
 * reaches already.
 */
export function swingWithWedge({ swing }: SawSetting, saw: SawRange): number | undefined {
  const most = swing < 0 ? saw.swing.left : saw.swing.right;
  if (Math.abs(swing) <= most + ANGLE_TOLERANCE) return undefined;
  return Math.sign(swing) * (Math.abs(swing) - most);
}

/**
 * Angle (rad) of the wedge under the work, along the fence, that brings a tilt beyond the saw's range back to its end;
 * positive where it is thick at the sawyer's right. With the blade's normal (nX, nY, nZ), work raised at the right by v has
 * nZ' = nX sin v + nZ cos v, which is −sin of the tilt: v = atan(|nZ| / nX) − asin(sin most / √(nX² + nZ²)). Nothing where the
 * saw reaches already, or where no wedge helps.
 */
export function tiltWithWedge(setting: SawSetting, saw: SawRange): number | undefined {
  const most = setting.tilt < 0 ? saw.tilt.left : saw.tilt.right;
  if (Math.abs(setting.tilt) <= most + ANGLE_TOLERANCE) return undefined;
  const n = bladeNormal(setting);
  const share = Math.sin(most) / norm(n.x, n.z);
  if (share > 1) return undefined;
  return Math.sign(setting.tilt) * (Math.atan2(Math.abs(n.z), n.x) - Math.asin(share));
}
