import type { Vec3 } from '../../geometry/index.ts';
import type { End, Hand, Lay, SawSetting } from './api.ts';
import { frameOfLay, onSaw } from './lay.ts';

export interface SetCut {
  readonly setting: SawSetting;
  /** Where the waste falls, seen by the sawyer. */
  readonly waste: Hand;
  readonly stopEnd: End;
}

/**
 * Setting of the saw for a cut with outward normal m (frame of the fence line) in a part that lies so. The blade's own
 * normal n is taken to the sawyer's right: swing = atan2(nY, nX), tilt = −asin(nZ), both positive to the right, since the
 * line of cut runs along (nY, −nX) towards the sawyer and the blade's top leans against nZ. A cut along the fence gives a
 * swing of a quarter turn.
 */
export function settingOfCut(m: Vec3, lay: Lay): SetCut {
  const { setting, waste } = settingOnSaw(onSaw(m, frameOfLay(lay)));
  return { setting, waste, stopEnd: m.y < 0 ? 'far' : 'near' };
}

/** The same for a normal already in the saw frame. */
export function settingOnSaw(n: Vec3): Pick<SetCut, 'setting' | 'waste'> {
  const right = n.x < 0 ? -1 : 1;
  const swing = Math.atan2(n.y * right, n.x * right);
  const tilt = -Math.asin(Math.max(-1, Math.min(1, n.z * right)));
  return {
    setting: { swing: swing === 0 ? 0 : swing, tilt: tilt === 0 ? 0 : tilt },
    waste: right > 0 ? 'right' : 'left',
  };
}

/** The blade's normal, to the sawyer's right, in the saw frame: the way back from settingOnSaw. */
export function bladeNormal({ swing, tilt }: SawSetting): Vec3 {
  return {
    x: Math.cos(tilt) * Math.cos(swing),
    y: Math.cos(tilt) * Math.sin(swing),
    z: -Math.sin(tilt),
  };
}
