import type { Edge, EdgeTag } from '../api.ts';
import { VERTEX_SNAP } from '../tolerance.ts';
import { doubles } from './lists.ts';

/**
 * Lines and arcs as numbers side by side, for the inner loops of booleans and offsets. A piece is a line or an arc of
 * less than half a turn (longer arcs are split on loading, and joined again where the result is stitched), so that
 * "within the sweep" is two cross products. Vertices are numbered: pieces that share a number share the place exactly.
 */
export interface Pieces {
  count: number;
  vertexCount: number;
  /** x and y of each vertex. */
  readonly vertices: number[];
  /** SHAPE numbers a piece: x0 y0 x1 y1, then centre x, y and radius of an arc. */
  readonly shape: number[];
  /** minX, minY, maxX, maxY of each piece. */
  readonly boxes: number[];
  /** 0 for a line, else the turn of the arc. */
  readonly turn: number[];
  /** Which operand the piece belongs to: 0 or 1. */
  readonly side: number[];
  /** First and last vertex of each piece. */
  readonly ends: number[];
  /** Number of the edge that the piece was cut from; pieces of one number are joined again. */
  readonly source: number[];
  /** Tag for each source number. */
  readonly tags: EdgeTag[];
}

export const SHAPE = 7;

export function newPieces(): Pieces {
  return {
    count: 0,
    vertexCount: 0,
    vertices: doubles(),
    shape: doubles(),
    boxes: doubles(),
    turn: [],
    side: [],
    ends: [],
    source: [],
    tags: [],
  };
}

export function addVertex(pieces: Pieces, x: number, y: number): number {
  pieces.vertices.push(x, y);
  return pieces.vertexCount++;
}

/** Adds a line between two vertices; one whose ends are the same vertex is left out. */
export function addLine(pieces: Pieces, v0: number, v1: number, source: number, side: number): void {
  if (v0 !== v1) addPiece(pieces, v0, v1, 0, 0, 0, 0, source, side);
}

/**
 * Adds an arc, as one piece or (from just under half a turn) several: quarters from its start, then what remains.
 * Equal vertices make a whole circle.
 */
export function addArc(
  pieces: Pieces,
  v0: number,
  v1: number,
  cx: number,
  cy: number,
  radius: number,
  turn: number,
  source: number,
  side: number,
): void {
  const bx = pieces.vertices[2 * v1]! - cx;
  const by = pieces.vertices[2 * v1 + 1]! - cy;
  let from = v0;
  for (let quarter = 0; quarter < 4; quarter++) {
    const ax = pieces.vertices[2 * from]! - cx;
    const ay = pieces.vertices[2 * from + 1]! - cy;
    const cross = turn * (ax * by - ay * bx);
    const dot = ax * bx + ay * by;
    // Less than about 170 degrees remain: the middle and the sweep of that are well founded.
    if ((v0 !== v1 || quarter > 0) && cross > 0 && cross > -0.18 * dot) break;
    if (v0 !== v1 && quarter === 0 && cross >= 0 && dot > 0) break;
    if (quarter === 3) break;
    const size = radius / Math.hypot(ax, ay);
    const next = addVertex(pieces, cx - turn * ay * size, cy + turn * ax * size);
    addPiece(pieces, from, next, cx, cy, radius, turn, source, side);
    from = next;
  }
  addPiece(pieces, from, v1, cx, cy, radius, turn, source, side);
}

/**
 * Adds a closed chain of edges. Each edge ends where the next begins, whatever its own end says; an edge with a number
 * that is not finite, an arc of no radius and a line of no length are left out, so that broken input can do no more
 * than give a wrong answer.
 */
export function addLoop(pieces: Pieces, edges: readonly Edge[], side: number): void {
  const starts: number[] = [];
  const sound = edges.every(isSound) ? edges : edges.filter(isSound);
  for (let i = 0; i < sound.length; i++) {
    const { x, y } = sound[i]!.from;
    const before = i === 0 ? undefined : sound[i - 1]!.from;
    const known = before !== undefined && before.x === x && before.y === y;
    starts.push(known ? starts[i - 1]! : addVertex(pieces, x, y));
  }
  for (let i = 0; i < sound.length; i++) {
    const edge = sound[i]!;
    const v0 = starts[i]!;
    const v1 = starts[i + 1 < sound.length ? i + 1 : 0]!;
    const source = pieces.tags.push(edge.tag) - 1;
    if (edge.kind === 'line') {
      addLine(pieces, v0, v1, source, side);
      continue;
    }
    const { centre, radius, turn } = edge;
    const whole = edge.from.x === edge.to.x && edge.from.y === edge.to.y;
    if (whole) addArc(pieces, v0, v0, centre.x, centre.y, radius, turn, source, side);
    else if (v0 !== v1) addArc(pieces, v0, v1, centre.x, centre.y, radius, turn, source, side);
  }
}

function isSound(edge: Edge): boolean {
  const { from, to } = edge;
  // One sum tells: anything not finite makes it not finite.
  if (!Number.isFinite(from.x + from.y + to.x + to.y)) return false;
  if (edge.kind === 'line') return true;
  const { centre, radius } = edge;
  return (
    Number.isFinite(centre.x + centre.y + radius) &&
    radius > 0 &&
    (from.x !== centre.x || from.y !== centre.y)
  );
}

function addPiece(
  pieces: Pieces,
  v0: number,
  v1: number,
  cx: number,
  cy: number,
  radius: number,
  turn: number,
  source: number,
  side: number,
): void {
  pieces.count++;
  const { vertices, shape, boxes } = pieces;
  const x0 = vertices[2 * v0]!;
  const y0 = vertices[2 * v0 + 1]!;
  const x1 = vertices[2 * v1]!;
  const y1 = vertices[2 * v1 + 1]!;
  shape.push(x0, y0, x1, y1, cx, cy, radius);
  pieces.turn.push(turn);
  pieces.side.push(side);
  pieces.ends.push(v0, v1);
  pieces.source.push(source);
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
  boxes.push(minX - VERTEX_SNAP, minY - VERTEX_SNAP, maxX + VERTEX_SNAP, maxY + VERTEX_SNAP);
}
