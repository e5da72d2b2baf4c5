import type { LengthStyle } from '../../measure/index.ts';
import { HAND_CLEARANCE } from './facts.ts';
import type { SawWay } from './ways-to-saw.ts';
import { sayRound, USUAL_STYLE } from './words.ts';

/**
 * The usual cautions for sawing end cuts in these ways, in our own words, for print. They defer to the makers of the tools,
 * local codes and licensed practice. Common practice.
 */
export function sawCautions(
  ways: readonly Pick<SawWay, 'kind' | 'lay'>[],
  length: LengthStyle = USUAL_STYLE.length,
): readonly string[] {
  const clear = sayRound(length.unit === 'mm' ? HAND_CLEARANCE.metric : HAND_CLEARANCE.inch, { length });
  const jigs = ways.some(({ kind }) => kind !== 'direct');
  const standing = ways.some(({ lay }) => lay.down === 'left' || lay.down === 'right');
  return [
    'Guard in place and free to move. Unplug before the saw is set or the blade touched.',
    `Hold or clamp the part that is kept, never the waste; hands stay ${clear} from the blade, and a piece too short for that is cut from a longer one or clamped in a jig.`,
    'A small off-cut can be thrown: leave it room to fall clear, never trap it between blade and stop, and let the blade stop before lifting it or reaching in.',
    'The stop stands at the end that is kept, never at the waste.',
    ...(standing
      ? [
          'Work standing on edge is clamped to a tall fence, and the saw’s depth is tried with the blade at rest.',
        ]
      : []),
    ...(jigs
      ? [
          'Clamp wedges and auxiliary fences to the saw and the work to them. Bring the blade down at rest first, to see that it, its guard and the clamps pass each other.',
        ]
      : []),
    'Cut a test piece first and prove it with the bevel; a scale is good to about half a degree.',
    'Wear eye and ear protection, keep the dust away, and stand out of the line of the blade.',
    'What the maker of the saw says, local codes and licensed practice go before anything here.',
  ];
}
