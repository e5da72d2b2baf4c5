import { areaOfRegions } from '../../geometry/index.ts';
import type { Board, Laid, LayRules } from './api.ts';
import { type Offcut, offcutsOf } from './offcuts.ts';
import { priceOf } from './price-of.ts';
import { boardFeet, cubicMetres, volumeOf } from './volume.ts';

/** What one board gives, and what is left of it. */
export interface BoardAccount {
  readonly board: Board;
  readonly laid: readonly Laid[];
  /** Share of its face that ends up in parts, in [0, 1]: true outlines, openings left out. */
  readonly yield: number;
  readonly boardFeet: number;
  readonly cubicMetres: number;
  /** Absent where no price is given. */
  readonly price?: number;
  readonly currency?: string;
  readonly offcuts: readonly Offcut[];
}

export interface LayAccount {
  /** Boards that something is laid on, in the order given. */
  readonly boards: readonly BoardAccount[];
  /** Of all of them: by area. */
  readonly yield: number;
  readonly boardFeet: number;
  readonly cubicMetres: number;
  /** Sums by currency, of the boards that have a price; and how many have none. */
  readonly prices: readonly { readonly currency: string; readonly amount: number }[];
  readonly unpriced: number;
  /** Boards that nothing is laid on. */
  readonly untouched: readonly string[];
}

/** The account of a layout: yield, volume, price and offcuts. A board cut into is counted whole. Sheets have no board feet. */
export function accountOf(
  boards: readonly Board[],
  laid: readonly Laid[],
  rules: Pick<LayRules, 'between' | 'allowed'>,
): LayAccount {
  const accounts = boards.flatMap((board) => {
    const here = laid.filter(({ lying }) => lying.board === board.name);
    return here.length === 0 ? [] : [accountOfBoard(board, here, rules)];
  });
  const face = (board: Board) => board.length * board.width;
  const used = accounts.reduce((sum, { board }) => sum + face(board), 0);
  const inParts = accounts.reduce((sum, each) => sum + each.yield * face(each.board), 0);
  return {
    boards: accounts,
    yield: used === 0 ? 0 : inParts / used,
    boardFeet: accounts.reduce((sum, each) => sum + each.boardFeet, 0),
    cubicMetres: accounts.reduce((sum, each) => sum + each.cubicMetres, 0),
    prices: sumsOf(accounts),
    unpriced: accounts.filter(({ price }) => price === undefined).length,
    untouched: boards
      .filter((board) => !accounts.some((each) => each.board === board))
      .map(({ name }) => name),
  };
}

/** The account of one board, whether anything lies on it or not. */
export function accountOfBoard(
  board: Board,
  laid: readonly Laid[],
  rules: Pick<LayRules, 'between' | 'allowed'>,
): BoardAccount {
  const volume = volumeOf(board);
  const price = priceOf(board);
  const currency = board.price?.currency;
  return {
    board,
    laid,
    yield: areaOfRegions(laid.map(({ region }) => region)) / (board.length * board.width),
    boardFeet: board.kind === 'sheet' ? 0 : boardFeet(volume),
    cubicMetres: cubicMetres(volume),
    ...(price === undefined ? {} : { price }),
    ...(currency === undefined ? {} : { currency }),
    offcuts: offcutsOf(board, laid, rules),
  };
}

function sumsOf(accounts: readonly BoardAccount[]): LayAccount['prices'] {
  const sums = new Map<string, number>();
  for (const { price, currency = '' } of accounts) {
    if (price !== undefined) sums.set(currency, (sums.get(currency) ?? 0) + price);
  }
  return [...sums].map(([currency, amount]) => ({ currency, amount }));
}
