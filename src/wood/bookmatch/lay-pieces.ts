import {
  boundsOfRegions,
  dot,
  leftOf,
  norm,
  polar,
  type Similarity,
  STAY,
  scale,
  transformPoint,
  transformRegion,
  type Vec,
} from '../../geometry/index.ts';
import type { BoardEdge, LeafPiece, MatchedFrame } from './api.ts';
import { mirrorBetween } from './mirror-between.ts';
import { compose, inverse, linearOf } from './similarity.ts';

/**
 * Where each piece lies on the board, from its own plane to the board's. The first of them lies as its pattern is placed; where it is not
 * placed, its head towards the board's marked end and the wanted edge of the board inwards. Every other piece that is a mirror image of one
 * already laid lies at the same place of the board, as its mirror image; whatever is left starts anew from the pattern.
 */
export function layPieces(
  pieces: readonly LeafPiece[],
  frames: readonly MatchedFrame[],
  centre: BoardEdge,
  /** From the plane of a part's pattern to the board's, where it is placed. */
  placed: ReadonlyMap<string, Similarity>,
): ReadonlyMap<string, Similarity> {
  const laid = new Map<string, Similarity>();
  const order = frames.flatMap((frame) => frame.pieces.map((id) => pieces.find((each) => each.id === id)!));
  for (const start of order) {
    if (laid.has(start.id)) continue;
    laid.set(start.id, ownPlace(start, frames, centre, placed));
    const waiting = [start];
    while (waiting.length > 0) {
      const from = waiting.shift()!;
      for (const to of order) {
        const mirror = laid.has(to.id) ? undefined : mirrorBetween(from, to);
        if (mirror === undefined) continue;
        laid.set(to.id, compose(laid.get(from.id)!, inverse(mirror)));
        waiting.push(to);
      }
    }
  }
  return laid;
}

function ownPlace(
  piece: LeafPiece,
  frames: readonly MatchedFrame[],
  centre: BoardEdge,
  placed: ReadonlyMap<string, Similarity>,
): Similarity {
  const pattern = placed.get(piece.part);
  if (pattern !== undefined) return compose(pattern, inverse(piece.fromPattern));
  const { towards } = innerOf(piece.id, frames);
  // The head goes to −x; the inner edge to −y where the near edge is wanted. Whether that turns the piece over follows.
  const isLeft = dot(towards, leftOf(piece.head)) > 0;
  const mirrored = isLeft !== (centre === 'near');
  const head = mirrored ? { x: -piece.head.x, y: piece.head.y } : piece.head;
  const turned: Similarity = { ...STAY, mirrored, turn: Math.PI - Math.atan2(head.y, head.x) };
  const box = boundsOfRegions(piece.region.map((region) => transformRegion(region, turned)));
  return { ...turned, shift: { x: -box.minX, y: -box.minY } };
}

export function innerOf(piece: string, frames: readonly MatchedFrame[]): MatchedFrame['inner'][number] {
  return frames.flatMap(({ inner }) => inner).find((each) => each.piece === piece)!;
}

/** The leaf at the same place of the board turned over about the board's length. */
export function turnedOver(piece: LeafPiece, toBoard: Similarity): Similarity {
  const { minY, maxY } = boxOn(piece, toBoard);
  return compose({ ...STAY, mirrored: true, turn: Math.PI, shift: { x: 0, y: minY + maxY } }, toBoard);
}

/** The leaf at the same place of the board turned end for end. */
export function turnedRound(piece: LeafPiece, toBoard: Similarity): Similarity {
  const { minX, maxX, minY, maxY } = boxOn(piece, toBoard);
  return compose({ ...STAY, turn: Math.PI, shift: { x: minX + maxX, y: minY + maxY } }, toBoard);
}

const boxOn = (piece: LeafPiece, toBoard: Similarity) =>
  boundsOfRegions(piece.region.map((region) => transformRegion(region, toBoard)));

/** Where a direction of the piece's plane points on the board. */
export const onBoard = (direction: Vec, toBoard: Similarity): Vec =>
  transformPoint(direction, linearOf(toBoard));

/** Do two places turn a piece over and round alike? Turns to within a milliradian, far below what a leaf can be laid by. */
export function laidAlike(a: Similarity, b: Similarity): boolean {
  const [one, other] = [polar(a.turn), scale(polar(b.turn), -1)];
  return a.mirrored === b.mirrored && norm(one.x + other.x, one.y + other.y) < 1e-3;
}
