import {
  add,
  cross,
  dot,
  type Edge,
  lengthOf,
  type Outline,
  polygonOutline,
  SMOOTH_TURN,
  scale,
  type Vec,
} from '../../geometry/index.ts';

/**
 * One side of a run of unrouted edges: where the routed edge beside it stops, and which way it would run on. Seen from the
 * wood the waste lies to the right of `along` on the side before the run (`hand` 1), to the left after it (`hand` −1).
 */
export interface Side {
  readonly corner: Vec;
  /** Unit direction away from the routed edge. */
  readonly along: Vec;
  readonly routed: Edge;
  /** The unrouted edge at the corner. */
  readonly end: Edge;
  /** Unit direction in which that edge leaves the corner. */
  readonly endAlong: Vec;
  readonly hand: 1 | -1;
  /**
   * Whether the routed edge can run on: not where the unrouted edge carries it on smoothly, nor where it turns into the
   * waste, so that running on would run into the wood.
   */
  readonly runsOn: boolean;
}

export function makeSide(side: Omit<Side, 'runsOn'>): Side {
  const turn = cross(side.along, side.endAlong) * side.hand;
  return { ...side, runsOn: turn > SMOOTH_TURN };
}

export function pointAhead({ corner, along }: Side, by: number): Vec {
  return add(corner, scale(along, by));
}

/**
 * The strip on the waste's side of a run-on from `start` for `long` mm, `wide` mm across, its near end cut along `slant`
 * (a direction towards the waste). It is tucked a little under what it lies beside, so that no edges coincide: at its near
 * end backwards into the wood, or forwards past the end of a template. Anticlockwise.
 */
export function wasteStrip(
  side: Side,
  start: Vec,
  slant: Vec,
  size: { readonly long: number; readonly wide: number; readonly tuck: 'backwards' | 'forwards' },
): Outline {
  const { along, hand, routed, end } = side;
  const across = { x: hand * along.y, y: -hand * along.x };
  const share = dot(slant, across);
  // A slant nearly along the run-on would make the strip endless; cut it square instead.
  const out = share > 0.3 ? scale(slant, size.wide / share) : scale(across, size.wide);
  const far = scale(along, size.long);
  const under = Math.min(TUCK, lengthOf(end) / 4, lengthOf(routed) / 4);
  const inward = scale(out, -under / size.wide);
  const near = scale(along, size.tuck === 'forwards' ? under : -under);
  const corners = [
    start,
    add(start, out),
    add(add(start, out), far),
    add(add(start, far), inward),
    add(add(start, inward), near),
  ];
  return polygonOutline(hand === 1 ? corners : corners.reverse(), routed.tag);
}

/** mm. */
const TUCK = 3;
