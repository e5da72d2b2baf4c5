import { boundsOfEdges, type Edge } from '../../geometry/index.ts';
import type { Piece } from './broken.ts';
import type { Picture } from './picture.ts';

/** An edge that runs along the part leans less than this across it; one that tapers more looks wrong once it is broken. */
const ALONG = 0.06;
/** Kept on paper beside what must be seen, and least that is worth leaving out, mm. */
const BESIDE = 11;
const WORTH = 18;
/** The gap on paper between pieces, mm. */
const GAP = 6;

/**
 * Where pictures of one part (the same up) may be broken at a scale: along stretches of straight edges with nothing on them. Nothing where
 * there is no such stretch long enough.
 */
export function breaksOf(pictures: readonly Picture[], scale: number): readonly Piece[] | undefined {
  const seen = pictures.flatMap(({ view, dimensions }) => [
    ...view.lines.flatMap(({ edges }) => edges.flatMap(placesOf)),
    ...dimensions.flatMap((each) =>
      each.kind === 'length' ? [at(each.from.y), at(each.to.y)] : [at(each.at.y)],
    ),
  ]);
  const sorted = seen.toSorted((a, b) => a.from - b.from);
  const pieces: Piece[] = [];
  let from = -Infinity;
  let reached = sorted[0]?.to ?? 0;
  for (const next of sorted) {
    const [low, high] = [reached + BESIDE / scale, next.from - BESIDE / scale];
    if (high - low > (GAP + WORTH) / scale) {
      pieces.push({ from, to: low });
      from = high;
    }
    reached = Math.max(reached, next.to);
  }
  return pieces.length === 0 ? undefined : [...pieces, { from, to: Infinity }];
}

const at = (y: number): Piece => ({ from: y, to: y });

/** What of an edge must be seen: the ends of one that runs along the part, all of any other. */
function placesOf(edge: Edge): readonly Piece[] {
  const { from, to } = edge;
  const isAlong = edge.kind === 'line' && Math.abs(to.x - from.x) <= ALONG * Math.abs(to.y - from.y);
  if (isAlong) return [at(from.y), at(to.y)];
  const { minY, maxY } = boundsOfEdges([edge]);
  return [{ from: minY, to: maxY }];
}
