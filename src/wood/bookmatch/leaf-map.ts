import type { Similarity } from '../../geometry/index.ts';
import type {
  BoardEdge,
  Bookmatch,
  LeafFace,
  LeafMap,
  LeafPiece,
  LeafPlace,
  MatchedFrame,
  PointsTo,
} from './api.ts';
import { framesOf, middleOf } from './frames-of.ts';
import { innerOf, layPieces, onBoard, turnedOver } from './lay-pieces.ts';
import { compose } from './similarity.ts';

/** A leaf that is wanted: on which face of which piece, and where that lies on the board. */
interface Slot {
  readonly piece: LeafPiece;
  readonly face: LeafFace;
  readonly toBoard: Similarity;
}

/**
 * Which leaf goes to which piece, on which face, and how it is turned.
 *
 * A piece and its mirror image take their leaves from the same place of the board, one as it lies and one turned over: so the faces that show
 * met in the board, and are mirror images but for what kerf and planing took. `book` gives the two pieces of a frame two leaves that were
 * neighbours, the upper one showing its lower face and the lower one its upper face. `radial` gives leaves in turn to the pieces as they
 * follow one another round the base. `slip` turns no leaf over: the figure repeats. Faces come first, then backs.
 *
 * `leaves` is how many each board gives. `placed`: where the patterns lie on the board, by part; `moved`: what takes that place to the one on another
 * board, where the pattern lies elsewhere. What finds no leaf has no board.
 */
export function leafMap(
  match: Bookmatch,
  pieces: readonly LeafPiece[],
  leaves: number,
  placed: ReadonlyMap<string, Similarity> = new Map(),
  moved: MovedOnBoard = () => undefined,
): LeafMap {
  const own = pieces.filter(({ part }) => match.parts.some((each) => each.part === part));
  const frames = framesOf(own);
  const laid = layPieces(own, frames, match.centre, placed);
  const slotsOf = (ids: readonly string[], face: LeafFace): readonly Slot[] =>
    ids.flatMap((id) => {
      const piece = own.find((each) => each.id === id)!;
      const faces = match.parts.find(({ part }) => part === piece.part)!.faces;
      return faces.includes(face) ? [{ piece, face, toBoard: laid.get(id)! }] : [];
    });
  const order = match.arrangement === 'radial' ? [roundTheBase(own)] : frames.map((each) => each.pieces);
  const groups = (['face', 'back'] as const).flatMap((face) => order.map((ids) => slotsOf(ids, face)));
  const deal: Deal = (slot, board, leaf) => {
    const by = board === undefined ? undefined : moved(slot.piece.part, board);
    const there = by === undefined ? slot : { ...slot, toBoard: compose(by, slot.toBoard) };
    return placeOf(there, board, leaf, frames);
  };
  const places =
    match.arrangement === 'book'
      ? inPairs(match, groups, leaves, deal)
      : inTurn(match, groups.flat(), leaves, deal);
  return { match, pieces: own, frames, places };
}

/** From where the pattern of a part lies on its first board to where it lies on another, in the plane of both. */
export type MovedOnBoard = (part: string, board: string) => Similarity | undefined;

type Deal = (slot: Slot, board: string | undefined, leaf: number) => LeafPlace;

/** The leaves of each group are neighbours in one board: what would be parted goes to the next one. */
function inPairs(
  match: Bookmatch,
  groups: readonly (readonly Slot[])[],
  leaves: number,
  deal: Deal,
): readonly LeafPlace[] {
  let [board, next] = [0, 1];
  return groups.flatMap((group) => {
    if (next + group.length - 1 > leaves) [board, next] = [board + 1, 1];
    // Their faces meet in the board: the upper leaf shows its lower face.
    const ordered = group.toSorted((a, b) => Number(shownBy(a) === 'upper') - Number(shownBy(b) === 'upper'));
    return ordered.map((slot) => deal(slot, boardNamed(match, board), next++));
  });
}

function inTurn(match: Bookmatch, slots: readonly Slot[], leaves: number, deal: Deal): readonly LeafPlace[] {
  const [first] = slots;
  return slots.map((slot, at) => {
    const isOver = match.arrangement === 'slip' && shownBy(slot) !== shownBy(first!);
    const toBoard = isOver ? turnedOver(slot.piece, slot.toBoard) : slot.toBoard;
    return deal({ ...slot, toBoard }, boardNamed(match, Math.floor(at / leaves)), (at % leaves) + 1);
  });
}

const boardNamed = ({ boards }: Bookmatch, at: number): string | undefined =>
  boards.length === 0 ? `${at + 1}` : boards[at];

/** Seen from above, anticlockwise from the front left. */
function roundTheBase(pieces: readonly LeafPiece[]): readonly string[] {
  const angles = pieces.map((piece) => {
    const { x, y } = middleOf([piece]);
    const from = Math.atan2(y, x) + Math.PI;
    return { id: piece.id, angle: from };
  });
  return angles.toSorted((a, b) => a.angle - b.angle).map(({ id }) => id);
}

/** A face laid as it is shows what lay up in the board; turned over, or on the back, it is the other way about. */
const shownBy = ({ face, toBoard }: Pick<Slot, 'face' | 'toBoard'>): LeafPlace['shows'] =>
  toBoard.mirrored === (face === 'back') ? 'upper' : 'lower';

/** What a place of a piece on the board says of the leaf there. */
export function placeOf(
  slot: Slot,
  board: string | undefined,
  leaf: number,
  frames: readonly MatchedFrame[],
): LeafPlace {
  const { piece, face, toBoard } = slot;
  const head = onBoard(piece.head, toBoard);
  const inner = onBoard(innerOf(piece.id, frames).towards, toBoard);
  return {
    ...(board === undefined ? {} : { board }),
    leaf,
    piece: piece.id,
    face,
    shows: shownBy(slot),
    markedEnd: pointsTo(piece, face, head.x < 0),
    inner: edgeTowards(inner),
    toBoard,
  };
}

/** The head of a level piece points to the left of who faces its face side, and to the right of who faces its back. */
function pointsTo({ level }: LeafPiece, face: LeafFace, isHead: boolean): PointsTo {
  if (!level) return isHead ? 'up' : 'down';
  return isHead === (face === 'face') ? 'left' : 'right';
}

const edgeTowards = (direction: { readonly y: number }): BoardEdge => (direction.y < 0 ? 'near' : 'far');
