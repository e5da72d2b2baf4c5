import type { Frame, Region, Similarity, Vec } from '../../geometry/index.ts';

/** The two faces of a piece that may carry a leaf. */
export type LeafFace = 'face' | 'back';

/** A piece of the base, standing in its place, that carries leaves. Its own plane is that of the placed part. */
export interface LeafPiece {
  /** Of the placed part: `leg-2`. */
  readonly id: string;
  /** As it is marked on the wood: `FR`; the identity where it has no mark. */
  readonly name: string;
  /** The part as it is made, and as it is printed. */
  readonly part: string;
  readonly label: string;
  readonly frame: Frame;
  /** Outline of its face side, in its own plane. */
  readonly region: readonly Region[];
  readonly thickness: number;
  /** From the pattern's plane to its own. */
  readonly fromPattern: Similarity;
  /**
   * Along the grain, in its own plane: upwards, or on a level piece to the left of who faces the face side. Unit.
   */
  readonly head: Vec;
  readonly level: boolean;
}

export type Arrangement = 'book' | 'slip' | 'radial';

/** How leaves are opened and what carries them. */
export interface Bookmatch {
  readonly name: string;
  readonly arrangement: Arrangement;
  /** In the order in which they are opened; as many as are wanted, numbered, where none are named. */
  readonly boards: readonly string[];
  readonly parts: readonly { readonly part: string; readonly faces: readonly LeafFace[] }[];
  /** Edge of the board that lies towards the middle of the frame. */
  readonly centre: BoardEdge;
}

/** `near`: y = 0 on the board, `far`: y at its width. */
export type BoardEdge = 'near' | 'far';

export type PointsTo = 'up' | 'down' | 'left' | 'right';

/** One leaf, glued on one face of one piece. */
export interface LeafPlace {
  /** Absent where the boards give too few leaves. */
  readonly board?: string;
  /** From the board's upper face down. */
  readonly leaf: number;
  readonly piece: string;
  readonly face: LeafFace;
  /** The face of the leaf that shows. */
  readonly shows: 'upper' | 'lower';
  /** Where the board's marked end, x = 0, points. */
  readonly markedEnd: PointsTo;
  /** The edge of the board at the inner edge of the piece. */
  readonly inner: BoardEdge;
  /** From the piece's own plane to the board's. */
  readonly toBoard: Similarity;
}

/** Pieces that are seen together, left to right as one faces them: mirror images of each other, or one alone. */
export interface MatchedFrame {
  readonly pieces: readonly string[];
  /** Looking the way that its face sides do, in words: `left end`, `front`. */
  readonly name: string;
  /** Towards the middle of the frame, by piece, in its own plane, unit; what inner means: towards the middle, the top, or the left. */
  readonly inner: readonly { readonly piece: string; readonly towards: Vec; readonly words: string }[];
}

/** Which leaf goes where. */
export interface LeafMap {
  readonly match: Bookmatch;
  readonly pieces: readonly LeafPiece[];
  readonly frames: readonly MatchedFrame[];
  readonly places: readonly LeafPlace[];
}
