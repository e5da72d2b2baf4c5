import {
  addArc,
  addLine,
  addVertex,
  newPieces,
  type Pieces,
  releasePieces,
  SHAPE,
} from '../arrangement/pieces.ts';
import { type TouchingPairs, touchingPairs } from '../arrangement/touching-pairs.ts';
import { CARRIER_TOLERANCE, VERTEX_SNAP } from '../tolerance.ts';
import type { Nearness } from './nearness.ts';

/** Fewer pieces are cut faster than they are culled. */
const CULL_FROM = 256;
/** A piece whose boxes touch more others than this is crowded: cutting it would cost more than asking where it lies too near. */
const CROWD = 14;
/** Crowded pieces are looked at in parts down to these shares of the offset, finer as long as many are crowded. */
const SHARES = [1 / 32, 1 / 512, 1 / 8192];
/** A part up to this share of the offset whose middle is far enough is kept without looking closer. */
const COARSE = 1 / 4;

/** Pieces to be cut, and the pairs of them that lie no further apart than VERTEX_SNAP, where those are known. */
export interface Culled {
  readonly pieces: Pieces;
  readonly touching: TouchingPairs | undefined;
}

/**
 * The pieces, without what of crowded ones lies wholly nearer to the source than `reach`: where edges are much shorter than the
 * offset, or limbs lie much closer together, each parallel would be cut by very many others only to be thrown out slice by slice.
 */
export function cullCrowded(raw: Pieces, reach: number, nearness: Nearness): Culled {
  let pieces = raw;
  for (const share of SHARES) {
    if (pieces.count < CULL_FROM) break;
    const touching = touchingPairs(pieces, VERTEX_SNAP, CROWD);
    if (touching.crowded === 0) return { pieces, touching };
    if (touching.crowded * 16 <= pieces.count) break;
    const fewer = cull(pieces, touching.others, { reach, nearness, finest: share * reach });
    if (pieces !== raw) releasePieces(pieces);
    pieces = fewer;
  }
  return { pieces, touching: undefined };
}

interface Cull {
  readonly reach: number;
  readonly nearness: Nearness;
  /** Parts shorter than this (mm) are kept or dropped whole. */
  readonly finest: number;
}

function cull(pieces: Pieces, others: Int32Array, how: Cull): Pieces {
  const result = newPieces(pieces.count);
  const { ends, turn, shape, source, side, vertices } = pieces;
  for (let v = 0; v < 2 * pieces.vertexCount; v += 2) addVertex(result, vertices[v]!, vertices[v + 1]!);
  for (const tag of pieces.tags) result.tags.push(tag);
  for (let i = 0; i < pieces.count; i++) {
    const at = SHAPE * i;
    const piece: Carrier = {
      cx: shape[at + 4]!,
      cy: shape[at + 5]!,
      radius: shape[at + 6]!,
      turn: turn[i]!,
      source: source[i]!,
      side: side[i]!,
    };
    const v0 = ends[2 * i]!;
    const v1 = ends[2 * i + 1]!;
    if (others[i]! <= CROWD) addRun(result, piece, v0, v1);
    else {
      const run = keepFar(result, piece, how, v0, v1, NONE);
      if (run !== NONE) addRun(result, piece, run, v1);
    }
  }
  return result;
}

interface Carrier {
  readonly cx: number;
  readonly cy: number;
  readonly radius: number;
  readonly turn: number;
  readonly source: number;
  readonly side: number;
}

const NONE = -1;

/**
 * Goes along a part from v0 to v1 and adds the runs in it that are not wholly too near. `open` is the vertex at which a run up to v0 began, or
 * NONE; given back is the same for v1.
 */
function keepFar(result: Pieces, piece: Carrier, how: Cull, v0: number, v1: number, open: number): number {
  const { vertices } = result;
  const x0 = vertices[2 * v0]!;
  const y0 = vertices[2 * v0 + 1]!;
  const x1 = vertices[2 * v1]!;
  const y1 = vertices[2 * v1 + 1]!;
  let mx = (x0 + x1) / 2;
  let my = (y0 + y1) / 2;
  let rise = 0;
  if (piece.turn !== 0) {
    const off = Math.hypot(mx - piece.cx, my - piece.cy);
    const size = piece.radius / off;
    rise = piece.radius - off;
    mx = piece.cx + (mx - piece.cx) * size;
    my = piece.cy + (my - piece.cy) * size;
  }
  const { reach, nearness, finest } = how;
  const half = Math.hypot(x0 - mx, y0 - my);
  if (
    nearness.areBothCloser(x0, y0, x1, y1, reach - rise - CARRIER_TOLERANCE) ||
    nearness.isCloser(mx, my, reach - half - CARRIER_TOLERANCE)
  ) {
    if (open !== NONE) addRun(result, piece, open, v0);
    return NONE;
  }
  if (
    2 * half <= finest ||
    (2 * half <= COARSE * reach && !nearness.isCloser(mx, my, reach - CARRIER_TOLERANCE))
  )
    return open === NONE ? v0 : open;
  const middle = addVertex(result, mx, my);
  return keepFar(result, piece, how, middle, v1, keepFar(result, piece, how, v0, middle, open));
}

function addRun(result: Pieces, piece: Carrier, v0: number, v1: number): void {
  const { cx, cy, radius, turn, source, side } = piece;
  if (turn === 0) addLine(result, v0, v1, source, side);
  else addArc(result, v0, v1, cx, cy, radius, turn, source, side);
}
