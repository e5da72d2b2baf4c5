import { keptFor, once } from '../../core/index.ts';
import { boundsOfRegions, distance, type Line, POSITION_TOLERANCE, type Vec } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';

/** The edge that a part is marked out from: a long straight edge of its face, or of its blank where it has none. */
export interface FaceEdge {
  /** Identity of the edge; nothing for the edge of the blank. */
  readonly edge?: string;
  readonly from: Vec;
  readonly to: Vec;
}

/** An edge counts as long from half of the part's length, and lies along it within 30°. */
const LONG = 0.5;
const ALONG = Math.cos(Math.PI / 6);

/**
 * The longest straight edge along a face of a part as cut, of equally long ones the first by name; otherwise the long side of its blank at its left,
 * for a right hand at its right.
 */
export function faceEdgeOf(part: Outlined, side: 'face' | 'back'): FaceEdge {
  const edges = faceEdges(part);
  return side === 'face' ? edges.face() : edges.back();
}

type Outlined = Pick<PlacedPart, 'face' | 'back' | 'silhouette' | 'hand'>;

const faceEdges = keptFor((part: Outlined) => ({
  face: once(() => findFaceEdge(part, 'face')),
  back: once(() => findFaceEdge(part, 'back')),
}));

function findFaceEdge({ face, back, silhouette, hand }: Outlined, side: 'face' | 'back'): FaceEdge {
  const box = boundsOfRegions(silhouette);
  const length = box.maxY - box.minY;
  const straight = (side === 'face' ? face : back)
    .flatMap(({ outer }) => outer.edges)
    .filter((edge): edge is Line => edge.kind === 'line')
    .map((edge) => ({ edge, long: distance(edge.from, edge.to) }))
    .filter(({ edge, long }) => Math.abs(edge.to.y - edge.from.y) >= ALONG * long && long >= LONG * length);
  const longest = Math.max(...straight.map(({ long }) => long));
  const [best] = straight
    .filter(({ long }) => long > longest - POSITION_TOLERANCE)
    .map(({ edge }) => edge)
    .toSorted((a, b) => (a.tag.id < b.tag.id ? -1 : 1));
  if (best !== undefined) return { edge: best.tag.id, from: best.from, to: best.to };
  const x = hand === 'right' ? box.maxX : box.minX;
  return { from: { x, y: box.minY }, to: { x, y: box.maxY } };
}
