import { type DesignLayout, layFaultWords, unlaidGroups, woodOfBook } from '../../../design/index.ts';
import { boardDrawing, type ScreenScene, sceneForScreen } from '../../../drawing/index.ts';
import { formatLength, type LengthStyle } from '../../../measure/index.ts';
import { accountOfBoard } from '../../../wood/index.ts';
import { type Answering, madeOf } from './answering.ts';
import { blockForScreen, type ScreenBlock } from './book.ts';
import { layoutInHand } from './layout.ts';

export interface WoodChapter {
  readonly title: string;
  readonly blocks: readonly ScreenBlock[];
}

/** What the shop book says of the wood: movement, resawing, leaves, drilling. */
export function woodChapters({ computed }: Answering, _: undefined): readonly WoodChapter[] | undefined {
  if (computed === undefined) return undefined;
  const own = computed.wood;
  if (own === undefined) return [];
  return madeOf(own, 'chapters', () =>
    woodOfBook(computed).map(({ title, blocks }) => ({ title, blocks: blocks.map(blockForScreen) })),
  );
}

/** A board with what lies on it. */
export interface ScreenBoard {
  readonly name: string;
  /** Of the scene, per mm of board; the board's near left corner lies at its origin. */
  readonly factor: number;
  readonly length: number;
  readonly width: number;
  readonly scene: ScreenScene;
  readonly pieces: readonly string[];
  readonly yield: number;
  readonly boardFeet: number;
  readonly cubicMetres: number;
  readonly price?: string;
  /** The largest rectangles left, as said. */
  readonly offcuts: readonly string[];
}

export interface BoardsInHand {
  readonly boards: readonly ScreenBoard[];
  /** Boards that nothing lies on yet. */
  readonly untouched: readonly string[];
  /** What has no place, those of one part that may come from the same boards together. */
  readonly unlaid: ReturnType<typeof unlaidGroups>;
  /** What is wrong with where things lie, in words. */
  readonly faults: readonly string[];
  readonly yield: number;
  readonly prices: readonly string[];
}

/** mm that a board takes: less than on paper, so that what is lettered in it is larger beside it. */
const ROOM = 150;

/** The boards of the design as they are laid now; nothing while they cannot be read. */
export function boards({ computed }: Answering, _: undefined): BoardsInHand | undefined {
  const layout = computed === undefined ? undefined : layoutInHand(computed);
  if (computed === undefined || layout === undefined) return undefined;
  return madeOf(layout, 'boards', () => boardsOf(layout, computed.lengths));
}

function boardsOf(layout: DesignLayout, lengths: LengthStyle): BoardsInHand {
  const { account, faults, search } = layout;
  const accounts = layout.boards.map(
    ({ board }) =>
      account.boards.find((each) => each.board === board) ?? accountOfBoard(board, [], search.rules),
  );
  return {
    boards: accounts.map((each) => {
      const { scene, factor } = boardDrawing(each, {
        lengths,
        allowed: search.rules.allowed,
        room: ROOM,
      });
      const { price, currency = '' } = each;
      return {
        name: each.board.name,
        length: each.board.length,
        width: each.board.width,
        factor,
        scene: sceneForScreen(scene),
        pieces: each.laid.flatMap(({ toLay: own }) => own.pieces),
        yield: each.yield,
        boardFeet: each.boardFeet,
        cubicMetres: each.cubicMetres,
        ...(price === undefined ? {} : { price: `${price.toFixed(2)} ${currency}`.trim() }),
        offcuts: each.offcuts.flatMap(({ rectangle }) =>
          rectangle === undefined
            ? []
            : [
                `${formatLength(rectangle.maxX - rectangle.minX, lengths)} × ${formatLength(rectangle.maxY - rectangle.minY, lengths)}`,
              ],
        ),
      };
    }),
    untouched: account.untouched,
    unlaid: unlaidGroups(layout),
    faults: faults.map(layFaultWords),
    yield: account.yield,
    prices: account.prices.map(({ currency, amount }) => `${amount.toFixed(2)} ${currency}`.trim()),
  };
}
