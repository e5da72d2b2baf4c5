import type { Blank, Lay, Side } from './api.ts';

/** What of a blank decides how it can lie. */
export type Holding = Pick<Blank, 'straight' | 'faceUp' | 'skew'>;

/** Whether a blank can lie so: only straight edges bear, a face side that must show lies up, a skew section has no square edge. */
export function canLie(
  { down, fence }: Lay,
  { straight = 'both', faceUp = false, skew = 0 }: Holding,
): boolean {
  const bears = (side: Side): boolean =>
    side === 'face' || side === 'back' || straight === 'both' || straight === side;
  if (!bears(down) || !bears(fence)) return false;
  const standing = down === 'left' || down === 'right';
  if (standing) return skew === 0;
  return !faceUp || down === 'back';
}

/** Lying on its back, face side up, the face edge against the fence. */
export function layOnBack({ faceEdge }: Pick<Blank, 'faceEdge'>): Lay {
  return { down: 'back', fence: faceEdge };
}

/** Standing on its face edge, the back against the fence, so that the face side shows. */
export function layOnEdge({ faceEdge }: Pick<Blank, 'faceEdge'>): Lay {
  return { down: faceEdge, fence: 'back' };
}
