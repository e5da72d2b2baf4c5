import type { NextCut } from './next-cut.ts';
import { sayLaid } from './say-cut.ts';
import { sayWays } from './say-ways.ts';
import type { SawWay } from './ways-to-saw.ts';
import { type CutStyle, MOVE, TEXT, USUAL_STYLE } from './words.ts';

/** How the next cut is made, in sentences. */
export function sayNextCut(next: NextCut, style: CutStyle = USUAL_STYLE): readonly string[] {
  if (next.kind !== 'turn' && !next.reached) return sayHeld(next.ways ?? [], style);
  const lies = sayLaid(next.laid, style);
  switch (next.kind) {
    case 'turn':
      return [`${TEXT.turn(MOVE[next.move])}: ${lies}.`, ...(next.stopMoves ? [TEXT.stopMoves] : [])];
    case 'mirror': {
      const { both, swing, tilt } = TEXT.swingAndTilt;
      const what = next.swing && next.tilt ? both : next.swing ? swing : tilt;
      return [`${TEXT.mirror(what)}: ${lies}.`];
    }
    case 'reset':
      return [`${TEXT.reset}: ${lies}.`];
    default:
      return next satisfies never;
  }
}

/** The saw does not reach with the work as it lay: no setting for that side is said, but how the work is held instead. */
function sayHeld(ways: readonly SawWay[], style: CutStyle): readonly string[] {
  const [best] = ways;
  if (best === undefined) return [TEXT.byHand];
  const [said] = sayWays([best], style);
  return [
    best.kind === 'direct' ? `${TEXT.layAnew}: ${said!.charAt(0).toLowerCase()}${said!.slice(1)}` : said!,
  ];
}
