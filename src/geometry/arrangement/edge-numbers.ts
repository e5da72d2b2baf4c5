import type { EdgeTag, Vec } from '../api.ts';
import { type Pieces, SHAPE } from './pieces.ts';

/** Makes pieces with the edges of others: what numbers of those mean they mean here too. */
export function shareEdges(pieces: Pieces, from: Pieces): void {
  pieces.edges = from.edges;
  pieces.edgeCount = from.edgeCount;
}

export function tagOf({ edges, edgeCount }: Pieces, source: number): EdgeTag {
  return edges[source < edgeCount ? source : source - edgeCount]!.tag;
}

/** The centre of an arc that was made of edge number `source`: the edge's own, or its end, where it is there. */
export function centreOf({ edges, edgeCount, shape }: Pieces, piece: number, source: number): Vec {
  const x = shape[SHAPE * piece + 4]!;
  const y = shape[SHAPE * piece + 5]!;
  const edge = edges[source < edgeCount ? source : source - edgeCount]!;
  const known = edge.kind === 'arc' && source < edgeCount ? edge.centre : edge.to;
  return known.x === x && known.y === y ? known : { x, y };
}
