import { pointToWorld, transformPoint, type Vec3 } from '../../geometry/index.ts';
import type { LeafPiece, LeafPlace } from './api.ts';
import { inverse } from './similarity.ts';

/**
 * Where a point of the board comes to in the base, once its leaf is glued: x and y on the board, and `below`, mm that it lay below (towards
 * the board's lower face) the face of the leaf that shows.
 */
export function boardInBase(
  { face, toBoard }: LeafPlace,
  piece: LeafPiece,
  { x, y, below }: { readonly x: number; readonly y: number; readonly below: number },
): Vec3 {
  const own = transformPoint({ x, y }, inverse(toBoard));
  const show = face === 'face' ? 0 : -piece.thickness;
  // Laid as it is, what was down in the board is down in the piece.
  return pointToWorld(piece.frame, { ...own, z: show + (toBoard.mirrored ? below : -below) });
}
