import type { Region, Similarity } from '../../geometry/index.ts';
import {
  type CarriedFigure,
  carriedFigure,
  type LeafFace,
  layAt,
  type PhotographFault,
  photographFor,
  pieceOnBoard,
  piecesOfBase,
  type TruePhotograph,
  truePhotograph,
} from '../../wood/index.ts';
import type { Computed } from '../computed.ts';
import type { DesignLayout } from './lay-design.ts';

/** The figure on one face of one piece of the base. */
export interface FigureOnPiece {
  /** Of the placed part, as in the base. */
  readonly piece: string;
  readonly face: LeafFace;
  readonly board: string;
  /** What lies on the board for it, by its identity in the layout; absent where nothing is placed yet. */
  readonly lying?: string;
  /** From the piece's own plane to the board's. */
  readonly toBoard: Similarity;
  /** Its region is the whole face, in the piece's own plane. */
  readonly figure: CarriedFigure;
}

export interface DesignFigures {
  readonly figures: readonly FigureOnPiece[];
  /** Photographs that cannot be laid on their board, by board and file. */
  readonly faults: readonly {
    readonly board: string;
    readonly file: string;
    readonly fault: PhotographFault;
  }[];
}

/**
 * The figure that every piece will carry, wherever its board has a photograph: leaves as the bookmatch turns them, pieces of solid wood
 * with the face that they show. Moving a placement moves the figure.
 */
export function figuresOfDesign(computed: Computed, layout: DesignLayout): DesignFigures {
  const photographs = layout.boards.flatMap(({ board, photographs: own }) =>
    own.map((photograph) => ({ board: board.name, file: photograph.file, laid: truePhotograph(photograph) })),
  );
  const ofBoard = (name: string): readonly TruePhotograph[] =>
    photographs.flatMap(({ board, laid }) => (board === name && !('kind' in laid) ? [laid] : []));
  return {
    figures: [...leafFigures(computed, layout, ofBoard), ...solidFigures(computed, layout, ofBoard)],
    faults: photographs.flatMap(({ board, file, laid }) =>
      'kind' in laid ? [{ board, file, fault: laid }] : [],
    ),
  };
}

type ByBoard = (name: string) => readonly TruePhotograph[];

function leafFigures({ wood }: Computed, layout: DesignLayout, ofBoard: ByBoard): readonly FigureOnPiece[] {
  return (wood?.matches ?? []).flatMap(({ map, stack }) =>
    map.places.flatMap(({ board, leaf, piece, face, shows, toBoard }) => {
      if (board === undefined) return [];
      const photograph = photographFor(ofBoard(board), shows, { at: leaf, of: stack.plan.leaves });
      const own = map.pieces.find(({ id }) => id === piece)!;
      const lying = layout.lying.find(
        ({ id, board: on }) =>
          on === board && layout.toLay.some((each) => each.id === id && each.part === own.part),
      );
      const named = lying === undefined ? {} : { lying: lying.id };
      return figuresOn(photograph, own.region, { piece, face, board, toBoard, ...named });
    }),
  );
}

function solidFigures(computed: Computed, layout: DesignLayout, ofBoard: ByBoard): readonly FigureOnPiece[] {
  const { base } = computed;
  if (base === undefined) return [];
  const leafy = new Set(
    (computed.wood?.matches ?? []).flatMap(({ map }) => map.pieces.map(({ part }) => part)),
  );
  return layout.lying.flatMap((lying) => {
    const toLay = layout.toLay.find(({ id }) => id === lying.id);
    if (toLay === undefined || toLay.grain === undefined || leafy.has(toLay.part)) return [];
    const piece = piecesOfBase(base, [toLay.part]).find(
      ({ id, name }) => toLay.pieces.includes(name) || toLay.pieces.includes(id),
    );
    if (piece === undefined) return [];
    const toBoard = pieceOnBoard(piece, layAt(toLay, lying));
    return (['face', 'back'] as const).flatMap((face) => {
      // What is drawn with its face side down shows the board's lower face there, and its upper one on its back.
      const shows = toBoard.mirrored === (face === 'back') ? 'upper' : 'lower';
      const photograph = photographFor(ofBoard(lying.board), shows);
      const on = { piece: piece.id, face, board: lying.board, lying: lying.id, toBoard };
      return figuresOn(photograph, piece.region, on);
    });
  });
}

function figuresOn(
  photograph: TruePhotograph | undefined,
  regions: readonly Region[],
  on: Omit<FigureOnPiece, 'figure'>,
): readonly FigureOnPiece[] {
  if (photograph === undefined) return [];
  return regions.map((region) => ({ ...on, figure: carriedFigure(photograph, region, on.toBoard) }));
}
