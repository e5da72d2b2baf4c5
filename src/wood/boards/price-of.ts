import { MM_PER } from '../../measure/index.ts';
import type { Board } from './api.ts';
import { boardFeet, cubicMetres, volumeOf } from './volume.ts';

/** What the whole board costs; undefined where no price is given. Not rounded. */
export function priceOf(board: Board): number | undefined {
  return board.price === undefined ? undefined : board.price.amount * unitsIn(board, board.price.per);
}

function unitsIn(board: Board, per: NonNullable<Board['price']>['per']): number {
  const { length, width } = board;
  switch (per) {
    case 'piece':
      return 1;
    case 'board foot':
      return boardFeet(volumeOf(board));
    case 'cubic metre':
      return cubicMetres(volumeOf(board));
    case 'square metre':
      return (length * width) / 1e6;
    case 'square foot':
      return (length * width) / (12 * MM_PER.in) ** 2;
    case 'running metre':
      return length / 1000;
    case 'running foot':
      return length / (12 * MM_PER.in);
  }
}
