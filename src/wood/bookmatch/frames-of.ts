import {
  centroidOfRegions,
  directionToFrame,
  dot,
  dot3,
  leftOf,
  norm,
  pointToWorld,
  scale,
  subtract,
  subtract3,
  unit,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import type { LeafPiece, MatchedFrame } from './api.ts';
import { mirrorBetween } from './mirror-between.ts';

/** Face sides that look the same way to within this cosine are seen together. */
const SAME_WAY = 0.5;

/** The middle of a frame nearer than this, mm, is no direction. */
const NEAR = 1;

/**
 * Pieces that are seen together, such as the two legs of an end frame: mirror images of each other whose face sides look about the same way.
 * What has no such partner stands alone. Frames go from the left end to the right, then from the front to the back; the pieces of a frame
 * from left to right as one faces them.
 */
export function framesOf(pieces: readonly LeafPiece[]): readonly MatchedFrame[] {
  const left = [...pieces];
  const frames: LeafPiece[][] = [];
  while (left.length > 0) {
    const first = left.shift()!;
    const partners = left
      .filter(
        (other) => dot3(first.frame.z, other.frame.z) > SAME_WAY && mirrorBetween(first, other) !== undefined,
      )
      .toSorted((a, b) => dot3(first.frame.z, b.frame.z) - dot3(first.frame.z, a.frame.z));
    const [partner] = partners;
    if (partner !== undefined) left.splice(left.indexOf(partner), 1);
    frames.push(partner === undefined ? [first] : inSight([first, partner]));
  }
  const middles = new Map(frames.map((frame) => [frame, middleOf(frame)]));
  return frames
    .toSorted((a, b) => middles.get(a)!.x - middles.get(b)!.x || middles.get(a)!.y - middles.get(b)!.y)
    .map((frame) => ({
      pieces: frame.map(({ id }) => id),
      name: wayOf(frame),
      inner: frame.map((piece) => innerOf(piece, frame)),
    }));
}

export function middleOf(pieces: readonly LeafPiece[]): Vec3 {
  const points = pieces.map(({ frame, region }) => {
    const { x, y } = centroidOfRegions(region);
    return pointToWorld(frame, { x, y, z: 0 });
  });
  const sum = points.reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z }));
  return { x: sum.x / points.length, y: sum.y / points.length, z: sum.z / points.length };
}

/** Who faces a face that looks towards n has (−n.y, n.x) at the right hand. */
function inSight(frame: LeafPiece[]): LeafPiece[] {
  const way = frame.map((piece) => piece.frame.z).reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y, z: 0 }));
  const rightward = (piece: LeafPiece): number => {
    const { x, y } = middleOf([piece]);
    return -way.y * x + way.x * y;
  };
  return frame.toSorted((a, b) => rightward(a) - rightward(b));
}

/** From where the frame is seen, in the sitter's words. */
function wayOf(frame: readonly LeafPiece[]): string {
  const { x, y } = frame
    .map((piece) => piece.frame.z)
    .reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y, z: 0 }));
  if (norm(x, y) < 1e-6) return 'above';
  if (Math.abs(x) >= Math.abs(y)) return x < 0 ? 'left end' : 'right end';
  return y < 0 ? 'front' : 'back';
}

function innerOf(piece: LeafPiece, frame: readonly LeafPiece[]): MatchedFrame['inner'][number] {
  const to = subtract3(middleOf(frame), middleOf([piece]));
  const inPlane = directionToFrame(piece.frame, to);
  const { head } = piece;
  const across = subtract(inPlane, scale(head, dot(inPlane, head)));
  if (norm(across.x, across.y) > NEAR)
    return { piece: piece.id, towards: unit(across), words: 'towards the middle' };
  const side: Vec = leftOf(head);
  // The head of a level piece points left: on its right hand is the top.
  return piece.level
    ? { piece: piece.id, towards: scale(side, -1), words: 'at the top' }
    : { piece: piece.id, towards: side, words: 'at the left' };
}
