import type { LengthStyle } from '../../measure/index.ts';
import { HAND_CLEARANCE } from '../end-cut/facts.ts';
import { sayRound } from '../end-cut/words.ts';

/**
 * The usual cautions for sawing small wedges and for clamping over them, in our own words, in the order of work, for print. They
 * defer to the makers of saw, clamps and glue, local codes and licensed practice. Common practice.
 */
export function caulCautions(length: LengthStyle): readonly string[] {
  const clear = sayRound(length.unit === 'mm' ? HAND_CLEARANCE.metric : HAND_CLEARANCE.inch, { length });
  return [
    `A wedge is too small to be held at a blade: draw it at the end of a longer board, saw its slope first and free it last. Hold the board, never the wedge; hands stay ${clear} from the blade.`,
    'The slope runs nearly along the grain: rip it at the band saw or by hand, or in a jig that clamps the board. Never freehand, never against a fence with the slope, and not at a saw made for cutting across.',
    'Guard down to just over the work; push with a stick. Unplug before the saw is set or the blade touched.',
    'A thin wedge drops beside the blade and can be thrown: close the opening round the blade, leave the wedge room to fall clear, and let the blade stop before reaching for it.',
    'Sound wood alone, its grain along the wedge, without knots or splits. Saw on the waste side of the line and plane to it in a vice.',
    'Prove the first with the bevel and on the work, and make the others after it: jaws that are not square to the pull walk off under load.',
    'Slope on the work, jaw in the middle of the flat side. Leather or cork on the slope and a stop or a small clamp at the thin end keep it from creeping; paper or wax keeps glue off it.',
    'Try every clamp dry. Tighten slowly and by turns, and stop when a wedge moves: loosen, and set it anew. Fingers stay out from under it, and nothing is struck while clamped.',
    'Stand beside a loaded clamp, not in the line of its bar or of a wedge that may slip out; loosen by turns too.',
    'Wear eye and ear protection at the saw, keep the dust away, and wear eye protection at the clamps too.',
    'What the makers of saw, clamps and glue say, local codes and licensed practice go before anything printed here.',
  ];
}
