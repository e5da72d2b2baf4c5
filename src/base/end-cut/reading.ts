import type { Reading } from './api.ts';
import { RUN } from './facts.ts';

/**
 * A signed angle (rad, positive to the sawyer's right, within a quarter turn either way) in every way that it is set.
 * Source of rise and run: elementary, rise = run · tan angle.
 */
export function readingOf(signed: number): Reading {
  const angle = Math.abs(signed);
  return {
    fromSquare: angle,
    complement: Math.PI / 2 - angle,
    to: signed === 0 ? undefined : signed > 0 ? 'right' : 'left',
    riseOver300: RUN.metric * Math.tan(angle),
    riseOver12in: RUN.inch * Math.tan(angle),
  };
}
