import { type Computed, type FigureOnPiece, figureSets, figuresOfDesign } from '../../../design/index.ts';
import {
  CAMERAS,
  facesInView,
  figureSheet,
  loopsOf,
  type ScreenScene,
  sceneForScreen,
} from '../../../drawing/index.ts';
import {
  boundsOfRegions,
  type Projection,
  projectionOfSimilarity,
  projectTwice,
  type Region,
  type Similarity,
  type Vec,
} from '../../../geometry/index.ts';
import {
  inverse,
  type LeafFace,
  type Lying,
  layAt,
  type PhotographFault,
  piecesOfBase,
  type ToLay,
  type TruePhotograph,
  truePhotograph,
} from '../../../wood/index.ts';
import { type Answering, madeOf } from './answering.ts';
import { layoutInHand } from './layout.ts';

/** A photograph of the design as it lies on its board. */
export interface LaidPhotograph {
  /** Of its board, and of the photograph among those of the board. */
  readonly board: string;
  readonly boardAt: number;
  readonly at: number;
  readonly size: { readonly length: number; readonly width: number };
  readonly file: string;
  readonly laid?: TruePhotograph;
  readonly fault?: PhotographFault['kind'];
}

/** Something that lies on a board, to be moved by hand. */
export interface LaidThing {
  /** Where it stands among the placements of the design. */
  readonly at: number;
  readonly lying: Lying;
  readonly toLay: ToLay;
  readonly pinned: boolean;
  /** Its outline as it lies on the board, path data, mm, y down; and the middle of its box, y up. */
  readonly data: string;
  readonly middle: Vec;
  /** From there to the end of its head, about, mm. */
  readonly reach: number;
}

/** The figure that a face of a piece carries: of which photograph, and how the piece lies on the board. */
export interface CarriedByPiece {
  readonly piece: string;
  readonly face: LeafFace;
  readonly file: string;
  readonly board: string;
  readonly lying?: string;
  readonly toBoard: Projection;
}

export interface FiguresInHand {
  readonly photographs: readonly LaidPhotograph[];
  readonly things: readonly LaidThing[];
  readonly figures: readonly CarriedByPiece[];
}

/** Photographs on their boards, what lies on them, and the figure that comes of it; nothing while the boards cannot be read. */
export function figures({ computed }: Answering, _: undefined): FiguresInHand | undefined {
  if (computed === undefined) return undefined;
  const layout = layoutInHand(computed);
  if (layout === undefined) return undefined;
  return madeOf(computed, 'figures', () => ({
    photographs: layout.boards.flatMap(({ board, photographs }, boardAt) =>
      photographs.map((photograph, at) => {
        const laid = truePhotograph(photograph);
        const { length, width } = board;
        const own = { board: board.name, boardAt, at, size: { length, width }, file: photograph.file };
        return 'kind' in laid ? { ...own, fault: laid.kind } : { ...own, laid };
      }),
    ),
    things: layout.lying.flatMap((lying, at) => {
      const toLay = layout.toLay.find(({ id }) => id === lying.id);
      if (toLay === undefined) return [];
      const { region } = layAt(toLay, lying);
      const { minX, maxX, minY, maxY } = boundsOfRegions([region]);
      return [
        {
          at,
          lying,
          toLay,
          pinned: computed.design.wood?.placements?.[at]?.pinned === true,
          data: dataOf(loopsOf([region])),
          middle: { x: (minX + maxX) / 2, y: (minY + maxY) / 2 },
          reach: Math.hypot(maxX - minX, maxY - minY) / 2,
        },
      ];
    }),
    figures: carried(computed).map(({ piece, face, board, lying, toBoard, figure }) => ({
      piece,
      face,
      board,
      file: figure.photograph.file,
      ...(lying === undefined ? {} : { lying }),
      toBoard: projectionOfSimilarity(toBoard),
    })),
  }));
}

function carried(computed: Computed): readonly FigureOnPiece[] {
  const layout = layoutInHand(computed);
  return layout === undefined
    ? []
    : madeOf(computed, 'carried', () => figuresOfDesign(computed, layout).figures);
}

/** What is looked at: the base from a side, one piece as its part is drawn, or the pieces set by set. */
export interface FigureViewOptions {
  readonly of:
    | { readonly side: 'front' | 'left' | 'plan' }
    | { readonly part: string; readonly piece?: string };
}

/** A face that carries a figure, or only hides others; path data and places in mm of wood, y down. */
export interface FigureFace {
  readonly piece: string;
  readonly face?: LeafFace;
  readonly data: string;
  readonly covers: string;
  /** From the piece's own plane. */
  readonly toScene: Projection;
}

export interface FigureView {
  /** The farthest first. */
  readonly faces: readonly FigureFace[];
  /** Of one part: the pieces that are made of it, by identity and mark. */
  readonly pieces: readonly { readonly id: string; readonly name: string }[];
}

const DOWN: Projection = [1, 0, 0, 0, -1, 0, 0, 0, 1];

/** Where the faces of a view lie; which of them carry a figure tells `figures`. */
export function figureView({ computed }: Answering, { of }: FigureViewOptions): FigureView | undefined {
  const built = computed?.base;
  if (built === undefined) return undefined;
  return madeOf(built, `figure view ${JSON.stringify(of)}`, () => {
    if ('side' in of) {
      const faces = facesInView(built.base.parts, CAMERAS[of.side]).map((each) => ({
        piece: each.piece,
        ...(each.face === undefined ? {} : { face: each.face }),
        data: dataOf(each.loops),
        covers: dataOf(each.covers),
        toScene: projectTwice(each.toPicture, DOWN),
      }));
      return { faces, pieces: [] };
    }
    const pieces = piecesOfBase(built, [of.part]);
    const piece = pieces.find(({ id }) => id === of.piece) ?? pieces[0];
    const made = built.made.find(({ name }) => name === of.part);
    if (piece === undefined || made === undefined) return { faces: [], pieces: [] };
    return {
      faces: [asDrawn(piece.id, made.face, inverse(piece.fromPattern))],
      pieces: pieces.map(({ id, name }) => ({ id, name })),
    };
  });
}

function asDrawn(piece: string, regions: readonly Region[], toPattern: Similarity): FigureFace {
  const data = dataOf(loopsOf(regions));
  const toScene = projectTwice(projectionOfSimilarity(toPattern), DOWN);
  return { piece, face: 'face', data, covers: data, toScene };
}

export interface FigureSheetInHand {
  readonly scene: ScreenScene;
  readonly faces: readonly FigureFace[];
}

/** The pieces that carry a figure side by side as one faces them, set by set. */
export function figureSheetInHand({ computed }: Answering, _: undefined): FigureSheetInHand | undefined {
  if (computed === undefined) return undefined;
  const own = carried(computed);
  const sets = figureSets(computed, own);
  if (sets.length === 0) return undefined;
  const { scene, pieces } = figureSheet(sets);
  return {
    scene: sceneForScreen(scene),
    faces: pieces.map(({ piece, face, loop, toSheet }) => ({
      piece,
      face,
      data: dataOf([loop]),
      covers: '',
      toScene: projectTwice(toSheet, DOWN),
    })),
  };
}

function dataOf(loops: readonly (readonly Vec[])[]): string {
  return loops
    .map((loop) => `M${loop.map(({ x, y }) => `${x.toFixed(3)} ${(-y).toFixed(3)}`).join('L')}Z`)
    .join('');
}
