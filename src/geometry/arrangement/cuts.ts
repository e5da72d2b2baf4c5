import { CARRIER_TOLERANCE, VERTEX_SNAP } from '../tolerance.ts';
import { doubles } from './lists.ts';
import { newVertexUnion, type VertexUnion } from './vertex-union.ts';

/** Where pieces are to be cut: piece, place along it (any measure that grows from its start), vertex. */
export interface Cuts {
  count: number;
  readonly piece: number[];
  readonly place: number[];
  readonly vertex: number[];
  readonly union: VertexUnion;
  /** Ends nearer to each other than this are one vertex, mm. */
  readonly snap: number;
  /** An end nearer to a piece than this lies on it, mm. */
  readonly touch: number;
}

/** `grain` multiplies the tolerances: 1, or more where rounding has left a loop open. */
export function newCuts(grain: number): Cuts {
  return {
    count: 0,
    piece: [],
    place: doubles(),
    vertex: [],
    union: newVertexUnion(),
    snap: grain * VERTEX_SNAP,
    touch: grain * CARRIER_TOLERANCE,
  };
}

export function addCut(cuts: Cuts, piece: number, place: number, vertex: number): void {
  cuts.count++;
  cuts.piece.push(piece);
  cuts.place.push(place);
  cuts.vertex.push(vertex);
}
