import { saySetting } from './say-cut.ts';
import type { SawWay } from './ways-to-saw.ts';
import { type CutStyle, capital, END, sayAngle, sayRise, TEXT, USUAL_STYLE } from './words.ts';

/** Ways to hold the work, a sentence each; without any, that the cut is made by hand. */
export function sayWays(ways: readonly SawWay[], style: CutStyle = USUAL_STYLE): readonly string[] {
  if (ways.length === 0) return [TEXT.byHand];
  return ways.map((way) => `${capital(sayWay(way, style))}; ${saySetting(way.mitre, way.tilt, style)}.`);
}

/** How to hold work that lies on a wedge or at an auxiliary fence; nothing where it lies on the saw itself. */
export function sayHoldDown(ways: readonly Pick<SawWay, 'kind'>[]): readonly string[] {
  return ways.some(({ kind }) => kind !== 'direct') ? [TEXT.holdDown] : [];
}

function sayWay(way: SawWay, style: CutStyle): string {
  const end = way.stopEnd === 'far' ? END.near : END.far;
  const lies = `${TEXT.lie(way.lay)}, ${TEXT.endTo(end, way.waste)}`;
  const wedge = (text: (angle: string, thick: string, rise: string) => string): string =>
    text(sayAngle(way.wedge!.fromSquare, style), way.wedge!.to!, sayRise(way.wedge!, style));
  switch (way.kind) {
    case 'direct':
      return lies;
    case 'square-fence':
      return `${TEXT.squareFence}: ${TEXT.lie(way.lay).replace('the fence', 'the auxiliary fence')}`;
    case 'wedge-at-fence':
      return `${wedge(TEXT.wedgeAtFence)}: ${lies}`;
    case 'wedge-under':
      return `${wedge(TEXT.wedgeUnder)}: ${lies}`;
    default:
      return way.kind satisfies never;
  }
}
