import { layoutOfDesign, woodOfBook } from '../../../design/index.ts';
import { boardDrawing, type ScreenScene, sceneForScreen } from '../../../drawing/index.ts';
import { formatLength } from '../../../measure/index.ts';
import { type Answering, madeOf } from './answering.ts';
import { blockForScreen, type ScreenBlock } from './book.ts';

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
  /** As lettered: `1:10`. */
  readonly scale: string;
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
  readonly unlaid: readonly {
    readonly part: string;
    readonly pieces: readonly string[];
    readonly boards: number;
  }[];
  readonly faults: readonly { readonly kind: string; readonly id: string; readonly board: string }[];
  readonly yield: number;
  readonly prices: readonly string[];
}

/** The boards of the design as they are laid now; nothing while they cannot be read. */
export function boards({ computed }: Answering, _: undefined): BoardsInHand | undefined {
  if (computed?.base === undefined) return undefined;
  const laid = layoutOfDesign(computed);
  if (!laid.ok) return undefined;
  const { account, unlaid, faults, toLay, search } = laid.value;
  const { lengths } = computed;
  return {
    boards: account.boards.map((each) => {
      const { scene, scale } = boardDrawing(each, { lengths, allowed: search.rules.allowed });
      const { price, currency = '' } = each;
      return {
        name: each.board.name,
        scale,
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
    unlaid: unlaid.map((id) => {
      const { part, pieces, boards: may } = toLay.find((each) => each.id === id)!;
      return { part, pieces, boards: may.length };
    }),
    faults: faults.map(({ kind, id, board }) => ({ kind, id, board })),
    yield: account.yield,
    prices: account.prices.map(({ currency, amount }) => `${amount.toFixed(2)} ${currency}`.trim()),
  };
}
