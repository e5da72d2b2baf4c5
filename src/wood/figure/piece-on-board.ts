import type { Similarity } from '../../geometry/index.ts';
import type { Laid } from '../boards/api.ts';
import type { LeafPiece } from '../bookmatch/api.ts';
import { compose, inverse } from '../bookmatch/similarity.ts';

/** From the own plane of a piece as it stands in the base to the board that its pattern is laid on. */
export function pieceOnBoard({ fromPattern }: LeafPiece, { toBoard }: Laid): Similarity {
  return compose(toBoard, inverse(fromPattern));
}
