import type { Edge, Vec } from '../api.ts';
import { POSITION_TOLERANCE } from '../tolerance.ts';
import { distance } from '../vec.ts';

/**
 * Where a piece between two cuts is asked for its side. More than one place: a piece outside may touch the border at one.
 */
export const SAMPLES = [0.5, 0.21, 0.83];

/**
 * Pieces of edges, in the order of those edges, as chains; a loop's last chain runs on into its first where the
 * loop closes within.
 */
export function joinPieces(pieces: readonly Edge[], edges: readonly Edge[]): Edge[][] {
  const chains: Edge[][] = [];
  for (const piece of pieces) {
    const chain = chains.at(-1);
    const end = chain?.at(-1)?.to;
    if (chain !== undefined && end !== undefined && meets(end, piece.from)) chain.push(piece);
    else chains.push([piece]);
  }
  const start = edges[0]?.from;
  const first = chains[0];
  const last = chains.at(-1);
  if (start === undefined || first === undefined || last === undefined || first === last) return chains;
  const closes =
    meets(edges.at(-1)!.to, start) && meets(first[0]!.from, start) && meets(last.at(-1)!.to, start);
  return closes ? [[...last, ...first], ...chains.slice(1, -1)] : chains;
}

function meets(a: Vec, b: Vec): boolean {
  return distance(a, b) <= POSITION_TOLERANCE;
}
