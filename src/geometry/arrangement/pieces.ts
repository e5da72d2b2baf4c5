import type { Edge } from '../api.ts';
import { VERTEX_SNAP } from '../tolerance.ts';
import { norm } from '../vec.ts';

/**
 * Lines and arcs as numbers side by side, for the inner loops of booleans and offsets. A piece is a line or an arc of
 * less than half a turn (longer arcs are split on loading, and joined again where the result is stitched), so that
 * "within the sweep" is two cross products. Vertices are numbered: pieces that share a number share the place exactly.
 */
export interface Pieces {
  count: number;
  vertexCount: number;
  /** x and y of each vertex. */
  vertices: Float64Array;
  /** SHAPE numbers a piece: x0 y0 x1 y1, then centre x, y and radius of an arc. */
  shape: Float64Array;
  /** minX, minY, maxX, maxY of each piece. */
  boxes: Float64Array;
  /** 0 for a line, else the turn of the arc. */
  turn: Int8Array;
  /** Which operand the piece belongs to: 0 or 1. */
  side: Int8Array;
  /** First and last vertex of each piece. */
  ends: Int32Array;
  /** Number of the edge that the piece was cut from; pieces of one number are joined again. */
  source: Int32Array;
  /** Edges that pieces were cut from: number n is edges[n % edges.length], so that the join after an edge can have a number of its own. */
  edges: readonly Edge[];
  edgeCount: number;
  /** A list for edges of its own. */
  readonly own: Edge[];
}

export const SHAPE = 7;

/** Pieces done with, whose memory the next take over: for a small outline making it anew costs as much as the rest. */
const SPARE: Pieces[] = [];
/** The same with more memory, which the engine may take back at any time. */
const LARGE: WeakRef<Pieces>[] = [];
const MOST_SPARE = 4;
const FEWEST = 64;
/** Memory for more pieces than this is large. */
const LARGEST_SPARE = 4096;

/** No pieces yet, with room for about so many. */
export function newPieces(room = FEWEST): Pieces {
  const spare = room <= LARGEST_SPARE ? SPARE.pop() : LARGE.pop()?.deref();
  if (spare !== undefined) return spare;
  const size = Math.max(FEWEST, room);
  const own: Edge[] = [];
  return {
    count: 0,
    vertexCount: 0,
    vertices: new Float64Array(4 * size),
    shape: new Float64Array(SHAPE * size),
    boxes: new Float64Array(4 * size),
    turn: new Int8Array(size),
    side: new Int8Array(size),
    ends: new Int32Array(2 * size),
    source: new Int32Array(size),
    edges: own,
    edgeCount: 0,
    own,
  };
}

/** Gives up pieces to which nothing refers any more. */
export function releasePieces(pieces: Pieces): void {
  const isLarge = pieces.turn.length > LARGEST_SPARE;
  if ((isLarge ? LARGE : SPARE).length >= MOST_SPARE) return;
  pieces.count = 0;
  pieces.vertexCount = 0;
  pieces.edgeCount = 0;
  // A large list is written over by the next.
  if (!isLarge) pieces.own.length = 0;
  pieces.edges = pieces.own;
  if (isLarge) LARGE.push(new WeakRef(pieces));
  else SPARE.push(pieces);
}

export function addVertex(pieces: Pieces, x: number, y: number): number {
  const v = pieces.vertexCount++;
  if (2 * v + 2 > pieces.vertices.length) pieces.vertices = grown(pieces.vertices, new Float64Array(4 * v));
  pieces.vertices[2 * v] = x;
  pieces.vertices[2 * v + 1] = y;
  return v;
}

function growPieces(pieces: Pieces): void {
  const size = 2 * pieces.turn.length;
  pieces.shape = grown(pieces.shape, new Float64Array(SHAPE * size));
  pieces.boxes = grown(pieces.boxes, new Float64Array(4 * size));
  pieces.turn = grown(pieces.turn, new Int8Array(size));
  pieces.side = grown(pieces.side, new Int8Array(size));
  pieces.ends = grown(pieces.ends, new Int32Array(2 * size));
  pieces.source = grown(pieces.source, new Int32Array(size));
}

function grown<T extends Float64Array | Int32Array | Int8Array>(old: T, larger: T): T {
  larger.set(old);
  return larger;
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
    const size = radius / norm(ax, ay);
    const next = addVertex(pieces, cx - turn * ay * size, cy + turn * ax * size);
    addPiece(pieces, from, next, cx, cy, radius, turn, source, side);
    from = next;
  }
  addPiece(pieces, from, v1, cx, cy, radius, turn, source, side);
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
  const i = pieces.count++;
  if (i === pieces.turn.length) growPieces(pieces);
  const { vertices, shape, boxes, ends } = pieces;
  const x0 = vertices[2 * v0]!;
  const y0 = vertices[2 * v0 + 1]!;
  const x1 = vertices[2 * v1]!;
  const y1 = vertices[2 * v1 + 1]!;
  const at = SHAPE * i;
  shape[at] = x0;
  shape[at + 1] = y0;
  shape[at + 2] = x1;
  shape[at + 3] = y1;
  shape[at + 4] = cx;
  shape[at + 5] = cy;
  shape[at + 6] = radius;
  pieces.turn[i] = turn;
  pieces.side[i] = side;
  ends[2 * i] = v0;
  ends[2 * i + 1] = v1;
  pieces.source[i] = source;
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
  boxes[4 * i] = minX - VERTEX_SNAP;
  boxes[4 * i + 1] = minY - VERTEX_SNAP;
  boxes[4 * i + 2] = maxX + VERTEX_SNAP;
  boxes[4 * i + 3] = maxY + VERTEX_SNAP;
}
