import { mirrorPart, type SketchedPart } from '../sketch/index.ts';
import type { Routing } from './api.ts';
import { mirrorRouting } from './mirror-routing.ts';

/** What a hand is called; of a part without hands, one that is made as drawn or turned over. */
export type HandName = 'left' | 'right' | 'as drawn' | 'mirrored';

/** A part as one of its hands is made: turned over for the right one. */
export interface Hand {
  readonly name: HandName;
  readonly mirrored: boolean;
  /** How many are made. */
  readonly quantity: number;
  readonly part: SketchedPart;
  readonly routing: Routing;
}

/**
 * The hands that a part is made in, the one as drawn first: those of which its form wants some, and those of which a
 * pattern is asked for (`asked`: turned over or not). The cutter turns one way, so that each hand has its own feed.
 */
export function handsOf(part: SketchedPart, routing: Routing, asked: readonly boolean[] = []): Hand[] {
  const { left, right } = part.quantity;
  const isHanded = right > 0;
  // A part without hands is made as its patterns are asked for: as drawn unless all of them are turned over.
  const isMirrored = isHanded || asked.includes(true);
  const isAsDrawn = asked.includes(false) || (isHanded ? left > 0 : !isMirrored);
  const hands: Hand[] = [];
  if (isAsDrawn) {
    const name = isHanded ? 'left' : 'as drawn';
    hands.push({ name, mirrored: false, quantity: left, part, routing });
  }
  if (isMirrored) {
    hands.push({
      name: isHanded ? 'right' : 'mirrored',
      mirrored: true,
      quantity: isHanded ? right : left,
      part: mirrorPart(part),
      routing: mirrorRouting(routing),
    });
  }
  return hands;
}
