import { CARRIER_TOLERANCE, VERTEX_SNAP } from '../tolerance.ts';
import type { Pieces } from './pieces.ts';
import { newVertexUnion, type VertexUnion } from './vertex-union.ts';

/** Where pieces are to be cut: piece, place along it (any measure that grows from its start), vertex. */
export interface Cuts {
  count: number;
  piece: Int32Array;
  place: Float64Array;
  vertex: Int32Array;
  readonly union: VertexUnion;
  /** Ends nearer to each other than this are one vertex, mm. */
  readonly snap: number;
  /** An end nearer to a piece than this lies on it, mm. */
  readonly touch: number;
}

/** `grain` multiplies the tolerances: 1, or more where rounding has left a loop open. */
export function newCuts(pieces: Pieces, grain: number): Cuts {
  const room = 64;
  return {
    count: 0,
    piece: new Int32Array(room),
    place: new Float64Array(room),
    vertex: new Int32Array(room),
    union: newVertexUnion(pieces),
    snap: grain * VERTEX_SNAP,
    touch: grain * CARRIER_TOLERANCE,
  };
}

export function addCut(cuts: Cuts, piece: number, place: number, vertex: number): void {
  const i = cuts.count++;
  if (i >= cuts.piece.length) {
    const room = 2 * cuts.piece.length;
    const { piece: oldPiece, place: oldPlace, vertex: oldVertex } = cuts;
    cuts.piece = new Int32Array(room);
    cuts.place = new Float64Array(room);
    cuts.vertex = new Int32Array(room);
    cuts.piece.set(oldPiece);
    cuts.place.set(oldPlace);
    cuts.vertex.set(oldVertex);
  }
  cuts.piece[i] = piece;
  cuts.place[i] = place;
  cuts.vertex[i] = vertex;
}
