import type { Edge } from '../api.ts';
import { markLists, releaseLists, unfilled } from '../memory/lists.ts';
import { addArc, addLine, addVertex, type Pieces } from './pieces.ts';

/**
 * Adds a closed chain of edges. Each edge ends where the next begins, whatever its own end says; an edge with a number
 * that is not finite, an arc of no radius and a line of no length are left out, so that broken input can do no more
 * than give a wrong answer.
 */
export function addLoop(pieces: Pieces, edges: readonly Edge[], side: number): void {
  const { count, vertexCount, edgeCount } = pieces;
  if (addSound(pieces, edges, side)) return;
  pieces.count = count;
  pieces.vertexCount = vertexCount;
  pieces.edgeCount = edgeCount;
  addSound(pieces, edges.filter(isSound), side);
}

/** The same for edges that are all sound; false, and anything added, when one is not. */
function addSound(pieces: Pieces, edges: readonly Edge[], side: number): boolean {
  const count = edges.length;
  const mark = markLists();
  const starts = unfilled(count);
  // Anything not finite makes the sum not finite.
  let sum = 0;
  for (let i = 0, beforeX = Number.NaN, beforeY = Number.NaN; i < count; i++) {
    const { x, y } = edges[i]!.from;
    sum += x + y;
    starts[i] = x === beforeX && y === beforeY ? starts[i - 1]! : addVertex(pieces, x, y);
    beforeX = x;
    beforeY = y;
  }
  for (let i = 0; i < count; i++) {
    const edge = edges[i]!;
    const { from, to } = edge;
    sum += to.x + to.y;
    const v0 = starts[i]!;
    const v1 = starts[i + 1 < count ? i + 1 : 0]!;
    const source = pieces.edgeCount++;
    pieces.own[source] = edge;
    if (edge.kind === 'line') {
      addLine(pieces, v0, v1, source, side);
      continue;
    }
    const { centre, radius, turn } = edge;
    sum += centre.x + centre.y + radius;
    if (!(radius > 0) || (from.x === centre.x && from.y === centre.y)) sum = Number.NaN;
    const whole = from.x === to.x && from.y === to.y;
    if (whole) addArc(pieces, v0, v0, centre.x, centre.y, radius, turn, source, side);
    else if (v0 !== v1) addArc(pieces, v0, v1, centre.x, centre.y, radius, turn, source, side);
  }
  releaseLists(mark);
  return Number.isFinite(sum);
}

function isSound(edge: Edge): boolean {
  const { from, to } = edge;
  if (!Number.isFinite(from.x + from.y + to.x + to.y)) return false;
  if (edge.kind === 'line') return true;
  const { centre, radius } = edge;
  return (
    Number.isFinite(centre.x + centre.y + radius) &&
    radius > 0 &&
    (from.x !== centre.x || from.y !== centre.y)
  );
}
