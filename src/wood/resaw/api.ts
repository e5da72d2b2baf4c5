/** From a rough board to leaves, and from leaves to a piece at its finished thickness. All mm. */
export interface ResawPlan {
  readonly name: string;
  /** The board as it comes. */
  readonly rough: number;
  /** Off the board as a whole until it is flat, half of it off either face. */
  readonly flattening: number;
  readonly kerf: number;
  readonly leaves: number;
  /** Off a face that the resaw left, and off one that was an outer face of the flattened board. */
  readonly planing: { readonly sawn: number; readonly outer: number };
  /** Off each leaf as a whole, half of it off either face: it dries out of true once it is sawn and is made flat again. */
  readonly drying: number;
  /** What leaves are glued to; 0 where they are glued to each other or stay alone. */
  readonly backing: number;
  /** Leaves in one piece. */
  readonly glued: 1 | 2;
  /** Off the glued piece: off the face that shows, and off the other. With a leaf on both, both show. */
  readonly lastPlaning: { readonly show: number; readonly back: number };
  /** How far the saw may wander off its line to either side. */
  readonly drift: number;
  /** What the piece must come to. */
  readonly finished: number;
}

/** A stretch of the rough board's thickness, mm from its upper face down. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** One leaf, counted from the board's upper face down. */
export interface Leaf {
  readonly number: number;
  /** As sawn. */
  readonly sawn: Stretch;
  /** How many of its faces the resaw left: 0 of a board that is not resawn, 1 of an outer leaf, 2 of a middle one. */
  readonly sawnFaces: number;
  /** As it is glued: planed, dried and flat again. */
  readonly ready: Stretch;
  /** Thickness as it is glued, mm, and the least it may be where the saw drifted into it. */
  readonly thickness: number;
  readonly leastThickness: number;
}

/** What becomes of one stretch of the rough board. */
export type LayerKind = 'flattening' | 'kerf' | 'planing' | 'drying' | 'leaf';

export interface Layer extends Stretch {
  readonly kind: LayerKind;
  /** The leaf it was part of; absent for flattening and kerfs. */
  readonly leaf?: number;
}

/** The whole way from rough board to finished piece, in mm. */
export interface ResawStack {
  readonly plan: ResawPlan;
  /** The flattened board. */
  readonly flat: number;
  /** Each leaf as sawn; not positive where the board is too thin for so many. */
  readonly asSawn: number;
  readonly leaves: readonly Leaf[];
  /** All of the rough board from its upper face down, without gaps. */
  readonly layers: readonly Layer[];
  /** The thinnest leaf as it is glued, as planned and where the saw drifted. */
  readonly thinnest: number;
  readonly leastThinnest: number;
  /** Backing and leaves together, each as thin as the thinnest. */
  readonly glued: number;
  /** After the last planing: what the piece comes to at least, as planned and where the saw drifted. */
  readonly reaches: number;
  readonly leastReaches: number;
  /** What the last planing leaves of the thinnest leaf. */
  readonly showLeaf: number;
}
