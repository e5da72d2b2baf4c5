import { filled, reals, unfilled } from '../memory/lists.ts';
import type { Cuts } from './cuts.ts';
import { joinNearVertices } from './join-near-vertices.ts';
import { type Pieces, SHAPE } from './pieces.ts';
import { findVertex } from './vertex-union.ts';

/**
 * Pieces cut at every meeting: parts of a piece from vertex to vertex, with nothing of another piece inside them.
 * `middles` holds a point of each, exactly on its carrier, half way along.
 */
export interface Slices {
  count: number;
  readonly piece: Int32Array;
  readonly start: Int32Array;
  readonly end: Int32Array;
  readonly middles: Float64Array;
}

export function cutPieces(pieces: Pieces, cuts: Cuts): Slices {
  const most = pieces.count + cuts.count;
  const slices: Slices = {
    count: 0,
    piece: unfilled(most),
    start: unfilled(most),
    end: unfilled(most),
    middles: reals(2 * most),
  };
  const { order, offsets } = sortCuts(pieces, cuts);
  joinNearVertices(pieces, cuts, offsets);
  const { union, vertex } = cuts;
  const { ends } = pieces;
  const { joined } = union;
  for (let i = 0; i < pieces.count; i++) {
    let from = joined ? findVertex(union, ends[2 * i]!) : ends[2 * i]!;
    for (let k = offsets[i]!; k < offsets[i + 1]!; k++) {
      const v = vertex[order[k]!]!;
      const to = joined ? findVertex(union, v) : v;
      addSlice(pieces, slices, i, from, to);
      from = to;
    }
    const last = ends[2 * i + 1]!;
    addSlice(pieces, slices, i, from, joined ? findVertex(union, last) : last);
  }
  return slices;
}

/** Cuts piece by piece, each in order along it: `offsets[i]` is where those of piece i begin. */
function sortCuts(pieces: Pieces, cuts: Cuts): { order: Int32Array; offsets: Int32Array } {
  const { count, piece, place } = cuts;
  const offsets = filled(pieces.count + 1);
  for (let k = 0; k < count; k++) offsets[piece[k]! + 1]!++;
  for (let i = 0; i < pieces.count; i++) offsets[i + 1]! += offsets[i]!;
  const order = unfilled(count);
  const next = unfilled(pieces.count + 1);
  next.set(offsets);
  for (let k = 0; k < count; k++) order[next[piece[k]!]!++] = k;
  for (let i = 0; i < pieces.count; i++) {
    const from = offsets[i]!;
    const to = offsets[i + 1]!;
    if (to - from < 2) continue;
    if (to - from > 24) {
      const sorted = order.slice(from, to).sort((p, q) => place[p]! - place[q]!);
      for (let k = from; k < to; k++) order[k] = sorted[k - from]!;
      continue;
    }
    for (let k = from + 1; k < to; k++) {
      const item = order[k]!;
      const at = place[item]!;
      let m = k - 1;
      for (; m >= from && place[order[m]!]! > at; m--) order[m + 1] = order[m]!;
      order[m + 1] = item;
    }
  }
  return { order, offsets };
}

/** A slice whose ends have become one vertex is shorter than the snap, since no piece closes on itself: left out. */
function addSlice(pieces: Pieces, slices: Slices, piece: number, from: number, to: number): void {
  if (from === to) return;
  const s = slices.count++;
  slices.piece[s] = piece;
  slices.start[s] = from;
  slices.end[s] = to;
  const { vertices, shape } = pieces;
  let x = (vertices[2 * from]! + vertices[2 * to]!) / 2;
  let y = (vertices[2 * from + 1]! + vertices[2 * to + 1]!) / 2;
  if (pieces.turn[piece] !== 0) {
    const at = SHAPE * piece;
    const dx = x - shape[at + 4]!;
    const dy = y - shape[at + 5]!;
    const f = shape[at + 6]! / Math.sqrt(dx * dx + dy * dy);
    x = shape[at + 4]! + f * dx;
    y = shape[at + 5]! + f * dy;
  }
  slices.middles[2 * s] = x;
  slices.middles[2 * s + 1] = y;
}
