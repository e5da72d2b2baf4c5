/**
 * Numbers of one plain boolean side by side, as in Pieces but in memory that is kept from call to call: making it anew would
 * cost as much as the boolean. Nothing in it outlives a call, and no call begins inside another.
 */
export interface Workspace {
  pieceCount: number;
  /** PLAIN_SHAPE numbers a piece: x0 y0 x1 y1, centre x and y and radius of an arc, turn (0 for a line). */
  readonly shape: Float64Array;
  /** minX, minY, maxX, maxY of each piece. */
  readonly boxes: Float64Array;
  /** Number of the edge and of the loop that each piece belongs to. */
  readonly edgeOf: Int32Array;
  readonly loopOf: Int32Array;

  loopCount: number;
  /** Pieces of loop k: from pieceStart[k] up to pieceStart[k + 1]; edges likewise; the operand it belongs to. */
  readonly pieceStart: Int32Array;
  readonly edgeStart: Int32Array;
  readonly sideOf: Int32Array;

  /** Every crossing is two entries, 2k on its one piece and 2k + 1 on its other. */
  entryCount: number;
  readonly places: Float64Array;
  readonly entryPiece: Int32Array;
  /** Square of the distance from the start of its piece, by which entries of one piece are ordered. */
  readonly entryPlace: Float64Array;
  /** What the winding of the other operand changes by for who passes the entry along its piece. */
  readonly entryStep: Int32Array;

  /** Entries in order along the loops, and the place of each in that order. */
  readonly order: Int32Array;
  readonly rank: Int32Array;
  /** Entries of loop k in that order: from entryStart[k] up to entryStart[k + 1]. */
  readonly entryStart: Int32Array;
  /** For the stretch that begins at each entry in order: 1 kept as it runs, −1 kept the other way, 0 dropped; 2 once walked. */
  readonly keep: Int32Array;
  /** The same for loops without entries. */
  readonly keepLoop: Int32Array;
  /** Number of the edge that each edge of the loop being written is part of. */
  readonly numbers: Int32Array;
}

export const PLAIN_SHAPE = 8;
/** Up to this many pieces every box is compared with every other; more go the general way, through a tree. */
export const MOST_PIECES = 128;
export const MOST_ENTRIES = 256;
export const MOST_LOOPS = 64;

/** The one workspace. */
export const WORKSPACE: Workspace = {
  pieceCount: 0,
  shape: new Float64Array(PLAIN_SHAPE * MOST_PIECES),
  boxes: new Float64Array(4 * MOST_PIECES),
  edgeOf: new Int32Array(MOST_PIECES),
  loopOf: new Int32Array(MOST_PIECES),
  loopCount: 0,
  pieceStart: new Int32Array(MOST_LOOPS + 1),
  edgeStart: new Int32Array(MOST_LOOPS + 1),
  sideOf: new Int32Array(MOST_LOOPS),
  entryCount: 0,
  places: new Float64Array(MOST_ENTRIES),
  entryPiece: new Int32Array(MOST_ENTRIES),
  entryPlace: new Float64Array(MOST_ENTRIES),
  entryStep: new Int32Array(MOST_ENTRIES),
  order: new Int32Array(MOST_ENTRIES),
  rank: new Int32Array(MOST_ENTRIES),
  entryStart: new Int32Array(MOST_LOOPS + 1),
  keep: new Int32Array(MOST_ENTRIES),
  keepLoop: new Int32Array(MOST_LOOPS),
  numbers: new Int32Array(MOST_PIECES + 2 * MOST_ENTRIES),
};
