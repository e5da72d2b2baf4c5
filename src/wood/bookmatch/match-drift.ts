import type { ResawStack } from '../resaw/api.ts';
import type { LeafFace, LeafMap, LeafPlace } from './api.ts';

/** How far the figure of two faces that ought to match has moved apart. */
export interface MatchDrift {
  /** `mates`: the two pieces of a frame; `frames`: pieces of two frames that stand alike in them; `neighbours`: next to each other round the base. */
  readonly kind: 'mates' | 'frames' | 'neighbours';
  readonly a: LeafPlace;
  readonly b: LeafPlace;
  /**
   * Wood between the two faces that show, as they lay in the board, mm: at least the kerf and what planing took of both. Absent where they come
   * from different boards.
   */
  readonly apart?: number;
  /** The same should the saw drift: more is planed off a face that it left. */
  readonly mostApart?: number;
}

/** Slopes of growth rings against the face, rad, for which the shift of the figure is told: rift, then ever flatter. */
export const RING_SLOPES: readonly number[] = [60, 45, 30, 15].map((degrees) => (degrees * Math.PI) / 180);

/**
 * How far along the face (mm) the line of a growth ring moves, that crosses it at this slope (rad), when so much wood goes: it is followed down
 * the ring. A ring square to the face does not move.
 */
export const figureShift = (apart: number, slope: number): number => apart / Math.tan(slope);

/**
 * How deep in the rough board (mm from its upper face) the face of a leaf that shows once lay: planed, dried flat and planed once more after
 * gluing. `drift`: what the saw's drift takes besides, where it left that face.
 */
export function depthOfShow({ leaf, shows }: LeafPlace, { plan, leaves }: ResawStack, drift = 0): number {
  const { ready } = leaves[leaf - 1]!;
  const isSawn = shows === 'upper' ? leaf > 1 : leaf < plan.leaves;
  const more = plan.lastPlaning.show + (isSawn ? drift : 0);
  return shows === 'upper' ? ready.from + more : ready.to - more;
}

/** The drift of the match within every frame, between the first frame and each other one, and round the base where leaves go round it. */
export function matchDrift(map: LeafMap, stack: ResawStack): readonly MatchDrift[] {
  const { frames, places, match } = map;
  const of = (face: LeafFace, pieces: readonly string[]): readonly LeafPlace[] =>
    pieces.flatMap((id) => places.find((each) => each.piece === id && each.face === face) ?? []);
  return (['face', 'back'] as const).flatMap((face) => {
    const rows = frames.map(({ pieces }) => of(face, pieces));
    const mates = rows.flatMap(([a, b]) =>
      a === undefined || b === undefined ? [] : [driftOf('mates', a, b, stack)],
    );
    const between = rows.slice(1).flatMap((row) =>
      (rows[0] ?? []).flatMap((a) => {
        const b = row.find(({ shows }) => shows === a.shows);
        return b === undefined ? [] : [driftOf('frames', a, b, stack)];
      }),
    );
    if (match.arrangement !== 'radial') return [...mates, ...between];
    const round = places.filter((each) => each.face === face);
    return round.slice(1).map((b, at) => driftOf('neighbours', round[at]!, b, stack));
  });
}

function driftOf(kind: MatchDrift['kind'], a: LeafPlace, b: LeafPlace, stack: ResawStack): MatchDrift {
  const isKnown = a.board !== undefined && a.board === b.board;
  const inBoard = ({ leaf }: LeafPlace): boolean => leaf >= 1 && leaf <= stack.leaves.length;
  if (!isKnown || !inBoard(a) || !inBoard(b)) return { kind, a, b };
  const apart = (drift: number): number =>
    Math.abs(depthOfShow(a, stack, drift) - depthOfShow(b, stack, drift));
  return { kind, a, b, apart: apart(0), mostApart: Math.max(apart(0), apart(stack.plan.drift)) };
}
