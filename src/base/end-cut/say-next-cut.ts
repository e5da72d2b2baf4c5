import type { NextCut } from './next-cut.ts';
import { sayLaid } from './say-cut.ts';
import { type CutStyle, MOVE, TEXT, USUAL_STYLE } from './words.ts';

/** How the next cut is made, in sentences. */
export function sayNextCut(next: NextCut, style: CutStyle = USUAL_STYLE): readonly string[] {
  const lies = sayLaid(next.laid, style);
  switch (next.kind) {
    case 'turn':
      return [`${TEXT.turn(MOVE[next.move])}: ${lies}.`, ...(next.stopMoves ? [TEXT.stopMoves] : [])];
    case 'mirror': {
      const { both, swing, tilt } = TEXT.swingAndTilt;
      const what = next.swing && next.tilt ? both : next.swing ? swing : tilt;
      return [`${TEXT.mirror(what)}: ${lies}.`, ...(next.reached ? [] : [TEXT.notReached])];
    }
    case 'reset':
      return [`${TEXT.reset}: ${lies}.`, ...(next.reached ? [] : [TEXT.notReached])];
    default:
      return next satisfies never;
  }
}
