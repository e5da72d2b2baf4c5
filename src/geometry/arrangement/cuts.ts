import type { Pieces } from './pieces.ts';
import { newVertexUnion, type VertexUnion } from './vertex-union.ts';

/** Where pieces are to be cut: piece, place along it (any measure that grows from its start), vertex. */
export interface Cuts {
  count: number;
  piece: Int32Array;
  place: Float64Array;
  vertex: Int32Array;
  readonly union: VertexUnion;
}

export function newCuts(pieces: Pieces): Cuts {
  const room = 64;
  return {
    count: 0,
    piece: new Int32Array(room),
    place: new Float64Array(room),
    vertex: new Int32Array(room),
    union: newVertexUnion(pieces),
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
