import { ANGLE_TOLERANCE, POSITION_TOLERANCE } from '../../geometry/index.ts';
import type { SawRange, SawSetting } from './api.ts';

/** One way in which a saw does not reach, with what was wanted and what it gives (rad or mm). */
export interface Excess {
  readonly what: 'swing' | 'tilt' | 'depth' | 'width';
  readonly wanted: number;
  readonly most: number;
}

/** What lies on the saw: its height over the table and its extent square to the fence, mm. */
export interface Section {
  readonly high: number;
  readonly across: number;
}

/**
 * What keeps a saw from a setting; nothing where it reaches. A tilted blade of depth d reaches d · cos tilt high, a swung one
 * of width w reaches w · cos swing across (elementary; the saw's own table goes before it).
 */
export function excessOver(setting: SawSetting, saw: SawRange, section?: Section): readonly Excess[] {
  const excess: Excess[] = [];
  const angles = [
    ['swing', setting.swing, saw.swing],
    ['tilt', setting.tilt, saw.tilt],
  ] as const;
  for (const [what, signed, range] of angles) {
    const most = signed < 0 ? range.left : range.right;
    if (Math.abs(signed) > most + ANGLE_TOLERANCE) excess.push({ what, wanted: Math.abs(signed), most });
  }
  if (section === undefined) return excess;
  const lengths = [
    ['depth', section.high, saw.depth, setting.tilt],
    ['width', section.across, saw.width, setting.swing],
  ] as const;
  for (const [what, wanted, square, angle] of lengths) {
    const most = square === undefined ? undefined : square * Math.cos(angle);
    if (most !== undefined && wanted > most + POSITION_TOLERANCE) excess.push({ what, wanted, most });
  }
  return excess;
}

/** Whether a saw can be set to these angles. */
export function withinAngles(setting: SawSetting, saw: SawRange): boolean {
  return excessOver(setting, saw).length === 0;
}
