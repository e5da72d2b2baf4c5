import type { Finding } from '../../core/index.ts';
import type { LeafMap, LeafPiece, LeafPlace } from './api.ts';

export const pieceOf = ({ pieces }: LeafMap, id: string): LeafPiece => pieces.find((each) => each.id === id)!;

export const leafWords = ({ board, leaf }: LeafPlace): string => `leaf ${leaf} of board ${board}`;

/** A finding that must be cured before the board is cut. */
export const stop = (code: string, message: string, cure: string): Finding => ({
  code,
  severity: 'stop',
  edges: [],
  message,
  cure,
});
