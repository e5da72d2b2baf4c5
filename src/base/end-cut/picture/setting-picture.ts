import { RUN } from '../facts.ts';
import { type CutStyle, USUAL_STYLE } from '../words.ts';
import type { SettingPicture, SetWork, WorkSize } from './api.ts';
import { atSquareFence } from './at-square-fence.ts';
import { planOf } from './plan-of.ts';
import { tiltOf } from './tilt-of.ts';

/**
 * Picture of a saw set for a cut lying so, to be drawn at any scale: the table with its fence, the outline of the work above and
 * (dashed) at the table, the line of the blade against the square line, the stop, and the blade's tilt; of work that is held by a wedge or at
 * an auxiliary fence that as well, and the wedge to make. The work is broken off where nothing more is to be seen.
 */
export function settingPicture(set: SetWork, work: WorkSize, style: CutStyle = USUAL_STYLE): SettingPicture {
  const plan = set.kind === 'square-fence' ? atSquareFence(set, work, style) : planOf(set, work, style);
  const run = style.length.unit === 'mm' ? RUN.metric : RUN.inch;
  return {
    plan,
    tilt: tiltOf(set, work, style),
    ...(set.wedge === undefined
      ? {}
      : { wedge: { run, rise: run * Math.tan(set.wedge.fromSquare), angle: set.wedge.fromSquare } }),
  };
}
