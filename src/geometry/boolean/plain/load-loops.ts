import type { Arc, Outline } from '../../api.ts';
import { LARGEST_PLAIN_RADIUS } from '../../tolerance.ts';
import { MOST_LOOPS, MOST_PIECES, PLAIN_SHAPE, type Workspace } from './workspace.ts';

/** Forgets what the call before has left. */
export function clearWorkspace(w: Workspace): void {
  w.pieceCount = 0;
  w.loopCount = 0;
  w.entryCount = 0;
}

/**
 * Adds loops of one operand, those with edges to `known` as well, numbered in that order. False when they are not plain: too many, not closed exactly, with edges of no length, numbers that
 * are not finite, or arcs so large that rounding shows.
 */
export function loadLoops(w: Workspace, known: Outline[], loops: readonly Outline[], side: number): boolean {
  for (const loop of loops) {
    if (loop.edges.length === 0) continue;
    if (w.loopCount === MOST_LOOPS) return false;
    const k = w.loopCount++;
    w.pieceStart[k] = w.pieceCount;
    const number = k === 0 ? 0 : w.edgeStart[k]!;
    w.edgeStart[k] = number;
    w.sideOf[k] = side;
    known.push(loop);
    if (!loadLoop(w, loop, k, number)) return false;
    w.pieceStart[k + 1] = w.pieceCount;
    w.edgeStart[k + 1] = number + loop.edges.length;
  }
  return true;
}

function loadLoop(w: Workspace, { edges }: Outline, loop: number, firstNumber: number): boolean {
  const count = edges.length;
  const last = edges[count - 1]!.to;
  let x = last.x;
  let y = last.y;
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const edge = edges[i]!;
    const { from, to } = edge;
    // Also false for what is not a number.
    if (from.x !== x || from.y !== y) return false;
    x = to.x;
    y = to.y;
    sum += x + y;
    // An arc may need three pieces more than one.
    if (w.pieceCount + 4 > MOST_PIECES) return false;
    const number = firstNumber + i;
    if (edge.kind === 'line') {
      if (from.x === x && from.y === y) return false;
      addPiece(w, from.x, from.y, x, y, 0, 0, 0, 0, number, loop);
      continue;
    }
    sum += edge.centre.x + edge.centre.y;
    if (!(edge.radius > 0 && edge.radius < LARGEST_PLAIN_RADIUS)) return false;
    addArc(w, edge, number, loop);
  }
  return Number.isFinite(sum);
}

/** An arc as one piece, or quarters from its start and a rest of less than 170 degrees. */
function addArc(w: Workspace, { from, to, centre, radius, turn }: Arc, number: number, loop: number): void {
  const cx = centre.x;
  const cy = centre.y;
  let x = from.x;
  let y = from.y;
  const bx = to.x - cx;
  const by = to.y - cy;
  const whole = x === to.x && y === to.y;
  for (let quarter = 0; quarter < 3; quarter++) {
    const ax = x - cx;
    const ay = y - cy;
    const cross = turn * (ax * by - ay * bx);
    const dot = ax * bx + ay * by;
    if ((!whole || quarter > 0) && cross > 0 && cross > -0.18 * dot) break;
    if (!whole && quarter === 0 && cross >= 0 && dot > 0) break;
    const size = radius / Math.sqrt(ax * ax + ay * ay);
    const nextX = cx - turn * ay * size;
    const nextY = cy + turn * ax * size;
    addPiece(w, x, y, nextX, nextY, cx, cy, radius, turn, number, loop);
    x = nextX;
    y = nextY;
  }
  addPiece(w, x, y, to.x, to.y, cx, cy, radius, turn, number, loop);
}

function addPiece(
  w: Workspace,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  cx: number,
  cy: number,
  radius: number,
  turn: number,
  edge: number,
  loop: number,
): void {
  const { shape, boxes } = w;
  const i = w.pieceCount++;
  const at = PLAIN_SHAPE * i;
  shape[at] = x0;
  shape[at + 1] = y0;
  shape[at + 2] = x1;
  shape[at + 3] = y1;
  shape[at + 4] = cx;
  shape[at + 5] = cy;
  shape[at + 6] = radius;
  shape[at + 7] = turn;
  w.edgeOf[i] = edge;
  w.loopOf[i] = loop;
  let minX = Math.min(x0, x1);
  let minY = Math.min(y0, y1);
  let maxX = Math.max(x0, x1);
  let maxY = Math.max(y0, y1);
  if (turn !== 0) {
    // Under half a turn, an anticlockwise arc that goes from below its centre to above passes its rightmost point.
    const ax = turn > 0 ? x0 - cx : x1 - cx;
    const ay = turn > 0 ? y0 - cy : y1 - cy;
    const bx = turn > 0 ? x1 - cx : x0 - cx;
    const by = turn > 0 ? y1 - cy : y0 - cy;
    if (ay < 0 && by > 0 && cx + radius > maxX) maxX = cx + radius;
    if (ay > 0 && by < 0 && cx - radius < minX) minX = cx - radius;
    if (ax > 0 && bx < 0 && cy + radius > maxY) maxY = cy + radius;
    if (ax < 0 && bx > 0 && cy - radius < minY) minY = cy - radius;
  }
  boxes[4 * i] = minX;
  boxes[4 * i + 1] = minY;
  boxes[4 * i + 2] = maxX;
  boxes[4 * i + 3] = maxY;
}
