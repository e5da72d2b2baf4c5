import { reals, unfilled } from '../memory/lists.ts';
import { CARRIER_TOLERANCE, VERTEX_SNAP } from '../tolerance.ts';
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

/**
 * `grain` multiplies the tolerances: 1, or more where rounding has left a loop open; less only tells vertices apart that lie nearer to each other. There is room for
 * about so many.
 */
export function newCuts(grain: number, room: number): Cuts {
  return {
    count: 0,
    piece: unfilled(room),
    place: reals(room),
    vertex: unfilled(room),
    union: newVertexUnion(),
    snap: grain * VERTEX_SNAP,
    touch: Math.max(1, grain) * CARRIER_TOLERANCE,
  };
}

export function addCut(cuts: Cuts, piece: number, place: number, vertex: number): void {
  const k = cuts.count++;
  if (k === cuts.piece.length) grow(cuts, 2 * k);
  cuts.piece[k] = piece;
  cuts.place[k] = place;
  cuts.vertex[k] = vertex;
}

function grow(cuts: Cuts, room: number): void {
  const { piece, place, vertex } = cuts;
  cuts.piece = unfilled(room);
  cuts.place = reals(room);
  cuts.vertex = unfilled(room);
  cuts.piece.set(piece);
  cuts.place.set(place);
  cuts.vertex.set(vertex);
}
