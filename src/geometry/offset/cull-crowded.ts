import { shareEdges } from '../arrangement/edge-numbers.ts';
import { addVertex, newPieces, type Pieces, releasePieces, SHAPE } from '../arrangement/pieces.ts';
import { type TouchingPairs, touchingPairs } from '../arrangement/touching-pairs.ts';
import { VERTEX_SNAP } from '../tolerance.ts';
import { norm } from '../vec.ts';
import type { Nearness } from './nearness.ts';
import { addRun, type Carrier, type Trimming, trimPiece } from './trim-piece.ts';

/** Fewer pieces are cut faster than they are culled. */
const CULL_FROM = 256;
/** A piece whose boxes touch more others than this is crowded: cutting it would cost more than asking where it lies too near. */
const CROWD = 14;
/**
 * Crowded pieces are looked at in parts down to this share of the offset, and of very many down to a share that so many would have; then
 * finer by a step as long as many are crowded.
 */
const SHARE = 1 / 32;
const MANY = 32;
const STEP = 1 / 16;
const ROUNDS = 3;
/** A part up to so many times the finest whose middle is far enough is kept without looking closer. */
const COARSE = 8;
/** And up to one of so many of its piece. */
const MOST_PARTS = 256;

/** Pieces to be cut, and the pairs of them that lie no further apart than VERTEX_SNAP, where those are known. */
export interface Culled {
  readonly pieces: Pieces;
  readonly touching: TouchingPairs | undefined;
}

/**
 * The pieces, without what of crowded ones lies wholly nearer to the source than `reach`: where edges are much shorter than the
 * offset, or limbs lie much closer together, each parallel would be cut by very many others only to be thrown out slice by slice.
 */
export function cullCrowded(raw: Pieces, source: Pieces, reach: number, nearness: Nearness): Culled {
  let pieces = raw;
  let finest = reach * Math.min(SHARE, MANY / raw.count);
  for (let round = 0; round < ROUNDS; round++) {
    if (pieces.count < CULL_FROM) break;
    const touching = touchingPairs(pieces, VERTEX_SNAP, CROWD);
    if (touching.crowded === 0) return { pieces, touching };
    if (touching.crowded * 16 <= pieces.count) break;
    const fewer = cull(pieces, touching.others, { source, reach, nearness, finest });
    if (pieces !== raw) releasePieces(pieces);
    pieces = fewer;
    finest *= STEP;
  }
  return { pieces, touching: undefined };
}

function cull(pieces: Pieces, others: Int32Array, how: Omit<Trimming, 'result' | 'coarse'>): Pieces {
  const result = newPieces(pieces.count);
  const { ends, turn, shape, source, side, vertices } = pieces;
  for (let v = 0; v < 2 * pieces.vertexCount; v += 2) addVertex(result, vertices[v]!, vertices[v + 1]!);
  shareEdges(result, pieces);
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
    if (others[i]! <= CROWD) {
      addRun(result, piece, v0, v1);
      continue;
    }
    const chord = norm(shape[at + 2]! - shape[at]!, shape[at + 3]! - shape[at + 1]!);
    trimPiece({ ...how, result, coarse: Math.max(COARSE * how.finest, chord / MOST_PARTS) }, piece, v0, v1);
  }
  return result;
}
