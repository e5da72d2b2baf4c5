import {
  distance,
  type Edge,
  type EdgeRole,
  lengthOf,
  POSITION_TOLERANCE,
  pointAt,
  type Vec,
} from '../../geometry/index.ts';

/** One side of a closed outline: a drawn edge, or the round or chamfer that took the place of a corner. */
export interface Side {
  readonly name: string;
  readonly role: EdgeRole;
  /** None when rounds at both ends have taken all of it. */
  readonly pieces: readonly Edge[];
  /** The corner at its end; nothing where it runs on smoothly as the two halves of one edge. */
  readonly corner: string | undefined;
}

/** The part of a run of edges up to a place on one of them, which becomes its end exactly. */
export function keepBefore(pieces: readonly Edge[], index: number, end: Vec): readonly Edge[] {
  const last = pieces[index]!;
  const kept = pieces.slice(0, index);
  return distance(last.from, end) <= POSITION_TOLERANCE ? kept : [...kept, { ...last, to: end }];
}

/** The part of a run of edges from a place on one of them, which becomes its start exactly. */
export function keepAfter(pieces: readonly Edge[], index: number, start: Vec): readonly Edge[] {
  const first = pieces[index]!;
  const kept = pieces.slice(index + 1);
  return distance(start, first.to) <= POSITION_TOLERANCE ? kept : [{ ...first, from: start }, ...kept];
}

export function lengthOfPieces(pieces: readonly Edge[]): number {
  return pieces.reduce((sum, piece) => sum + lengthOf(piece), 0);
}

/** The place a distance (mm) along a run of edges; at its end when that is nearer than a position can be told. */
export function placeOn(
  pieces: readonly Edge[],
  by: number,
): { readonly index: number; readonly point: Vec } {
  let left = by;
  for (const [index, piece] of pieces.entries()) {
    const length = lengthOf(piece);
    if (left <= length + POSITION_TOLERANCE || index === pieces.length - 1) {
      return { index, point: pointAt(piece, Math.min(1, Math.max(0, left / length))) };
    }
    left -= length;
  }
  throw new RangeError('a run of edges has at least one');
}
