import { type Projection, projectTwice, type Vec, vec } from '../../geometry/index.ts';
import type { LeafFace, LeafMap, LeafPiece, LeafPlace, MatchedFrame } from '../../wood/index.ts';
import type { Mark, Scene } from '../api.ts';
import { pathMark, textMark } from '../layout/drawing.ts';
import { polygon } from '../layout/strokes.ts';
import { widthOfText } from '../lettering/metrics.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';
import { boxOf, outlinesOf, type SeenPiece } from './seen-pieces.ts';

/** A piece as it lies on the sheet of figures. */
export interface SheetPiece {
  readonly piece: string;
  readonly face: LeafFace;
  readonly loop: readonly Vec[];
  /** From the piece's own plane to the sheet, mm of paper, y up. */
  readonly toSheet: Projection;
}

export interface FigureSheet {
  readonly scene: Scene;
  readonly pieces: readonly SheetPiece[];
}

/** A set of pieces that are seen together, face sides or backs. */
export interface FigureSet {
  readonly title: string;
  readonly map: Pick<LeafMap, 'pieces'>;
  readonly frame: Pick<MatchedFrame, 'pieces'>;
  readonly face: LeafFace;
  readonly places: readonly Pick<LeafPlace, 'piece' | 'board' | 'leaf'>[];
}

/** The longest piece on paper, mm; a row of sets takes this width. */
const LONG = 130;
const WIDE = 270;
/** Between the pieces of a set, and between sets, mm. */
const JOINT = 2;
const GAP = 14;
const LETTERS = 2.8;
const SMALL = 2.1;
const BELOW = 11;
const ABOVE = 8;

/**
 * The figure that the pieces will carry, set by set as one faces them: the pieces of a set stand side by side as in the base, their inner
 * edges together, so that the eye can judge the match.
 */
export function figureSheet(sets: readonly FigureSet[]): FigureSheet {
  const seen = sets.map((set) => ({ set, seen: outlinesOf(set.map, set.frame, set.face) }));
  const longest = Math.max(1, ...seen.flatMap((each) => each.seen.map(({ outline }) => heightOf(outline))));
  const widest = Math.max(1, ...seen.map((each) => each.seen.reduce((sum, one) => sum + widthOf(one), 0)));
  const scale = Math.min(LONG / longest, (WIDE - 4 * JOINT) / widest);
  const marks: Mark[] = [];
  const pieces: SheetPiece[] = [];
  let [left, top, lowest] = [0, 0, 0];
  for (const each of seen) {
    const cell = cellOf(each.set, each.seen, scale);
    if (left > 0 && left + cell.width > WIDE) [left, top] = [0, lowest - GAP];
    const shift = vec(left + cell.shift, top - cell.height - ABOVE);
    marks.push(...cell.marks(shift));
    pieces.push(...cell.pieces(shift));
    left += cell.width + GAP;
    lowest = Math.min(lowest, shift.y - BELOW);
  }
  return { scene: { marks, box: boundsOfMarks(marks) }, pieces };
}

const widthOf = ({ outline }: SeenPiece): number => {
  const { minX, maxX } = boxOf(outline);
  return maxX - minX;
};
const heightOf = (outline: readonly Vec[]): number => {
  const { minY, maxY } = boxOf(outline);
  return maxY - minY;
};

function cellOf({ title, places, face }: FigureSet, seen: readonly SeenPiece[], scale: number) {
  const inOrder = seen.toSorted((a, b) => middleX(a.outline) - middleX(b.outline));
  let at = 0;
  const laid = inOrder.map((each) => {
    const { minX, minY } = boxOf(each.outline);
    const by: Projection = [scale, 0, at - scale * minX, 0, scale, -scale * minY, 0, 0, 1];
    const width = scale * widthOf(each);
    const middle = at + width / 2;
    at += width + JOINT;
    return { each, by, middle, names: namesOf(each.piece, places), height: scale * heightOf(each.outline) };
  });
  const drawn = at - JOINT;
  const height = Math.max(...laid.map((one) => one.height));
  const lettered = Math.max(
    widthOfText(title, LETTERS, 'semibold'),
    laid.reduce(
      (sum, { names }) => sum + Math.max(...names.map((text) => widthOfText(text, SMALL, 'regular'))) + 3,
      0,
    ),
  );
  const width = Math.max(drawn, lettered);
  return {
    width,
    height,
    shift: (width - drawn) / 2,
    pieces: (shift: Vec): readonly SheetPiece[] =>
      laid.map(({ each, by }) => ({
        piece: each.piece.id,
        face,
        loop: each.outline.map((p) => placed(p, by, shift)),
        toSheet: moved(projectTwice(each.toSeen, by), shift),
      })),
    marks: (shift: Vec): readonly Mark[] => [
      textMark(title, vec(shift.x + drawn / 2, shift.y + height + 3), {
        height: LETTERS,
        align: 'middle',
        weight: 'semibold',
        role: 'dimension',
      }),
      ...laid.flatMap(({ each, by, names }, k) => {
        // Names stand apart evenly where pieces are narrower than their names.
        const x = shift.x + drawn / 2 + ((k + 0.5) / laid.length - 0.5) * Math.max(drawn, lettered);
        return [
          pathMark('visible', polygon(each.outline.map((p) => placed(p, by, shift))), true),
          ...names.map((text, line) =>
            textMark(text, vec(x, shift.y - 4.5 - 3.4 * line), {
              height: line === 0 ? LETTERS : SMALL,
              align: 'middle',
              weight: line === 0 ? 'semibold' : 'regular',
              role: 'dimension',
            }),
          ),
        ];
      }),
    ],
  };
}

const middleX = (outline: readonly Vec[]): number => {
  const { minX, maxX } = boxOf(outline);
  return (minX + maxX) / 2;
};

function namesOf({ id, name }: LeafPiece, places: FigureSet['places']): readonly string[] {
  const place = places.find(({ piece }) => piece === id);
  if (place?.board === undefined) return [name];
  const board = /^board\b/i.test(place.board) ? place.board : `board ${place.board}`;
  return [name, place.leaf === 0 ? board : `${board}, leaf ${place.leaf}`];
}

function placed(p: Vec, [a, b, c, d, e, f]: Projection, shift: Vec): Vec {
  return vec(a * p.x + b * p.y + c + shift.x, d * p.x + e * p.y + f + shift.y);
}

function moved(by: Projection, shift: Vec): Projection {
  return projectTwice(by, [1, 0, shift.x, 0, 1, shift.y, 0, 0, 1]);
}
