import type { Laid } from '../api.ts';
import { type CutStyle, USUAL_STYLE } from '../words.ts';
import type { SettingPicture, WorkSize } from './api.ts';
import { planOf } from './plan-of.ts';
import { tiltOf } from './tilt-of.ts';

/**
 * Picture of a saw set for a cut lying so, to be drawn at any scale: the table with its fence, the outline of the work above and
 * (dashed) at the table, the line of the blade against the square line, the stop, and the blade's tilt. The work is broken
 * off where nothing more is to be seen.
 */
export function settingPicture(laid: Laid, work: WorkSize, style: CutStyle = USUAL_STYLE): SettingPicture {
  return { plan: planOf(laid, work, style), tilt: tiltOf(laid, work, style) };
}
