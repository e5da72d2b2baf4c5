import { type Similarity, STAY, transformPoint } from '../../geometry/index.ts';

/** First `inner`, then `outer`. */
export function compose(outer: Similarity, inner: Similarity): Similarity {
  return {
    // A mirror turned by t is the mirror after a turn by −t.
    turn: outer.turn + (outer.mirrored ? -inner.turn : inner.turn),
    mirrored: outer.mirrored !== inner.mirrored,
    scale: outer.scale * inner.scale,
    shift: transformPoint(inner.shift, outer),
  };
}

export function inverse({ turn, mirrored, scale, shift }: Similarity): Similarity {
  const linear: Similarity = { ...STAY, turn: mirrored ? turn : -turn, mirrored, scale: 1 / scale };
  const back = transformPoint(shift, linear);
  return { ...linear, shift: { x: -back.x, y: -back.y } };
}

/** Only its turn and mirror: what it does to directions. */
export const linearOf = (by: Similarity): Similarity => ({ ...by, shift: { x: 0, y: 0 } });
