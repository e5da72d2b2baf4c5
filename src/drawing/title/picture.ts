import { type Box, type Edge, norm, type Similarity, transformEdge, type Vec } from '../../geometry/index.ts';
import type { LengthStyle } from '../../measure/index.ts';
import type { LineRole, Mark, PathMark, Scene } from '../api.ts';
import type { Dimension, LaidDimensions } from '../dimension/api.ts';
import { layDimensions } from '../dimension/lay-dimensions.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';
import type { View } from '../view/api.ts';
import { marksOfView } from '../view/marks-of-view.ts';
import { breakDimensions, breakMarks, type Piece } from './broken.ts';

/** Lines in one plane with all that is said beside them, in mm of the world. */
export interface LineDrawing {
  /** Centre lines, the outline of the top and the like, in the picture's plane. */
  readonly lines: readonly PictureLine[];
  readonly dimensions: readonly Dimension[];
}

/** A view with all that is said beside it. */
export interface Picture extends LineDrawing {
  /** `Front`, as lettered under it. */
  readonly name: string;
  readonly view: View;
  /** Laid on its right side: what is up comes to lie at the right. */
  readonly lying?: boolean;
  /** What of it is shown, from below; all when absent. Not of a picture that lies. */
  readonly pieces?: readonly Piece[];
}

export interface PictureLine {
  readonly role: Extract<LineRole, 'axis' | 'phantom' | 'part' | 'hidden' | 'reference'>;
  readonly edges: readonly Edge[];
  /** Drawn past both ends by this much on paper, mm. */
  readonly past?: number;
}

/** A picture laid out on paper, its view's own origin at the origin of the paper. */
export interface LaidPicture {
  readonly marks: readonly Mark[];
  /** Round view and lines, without dimensions. */
  readonly core: Box;
  /** Round everything. */
  readonly box: Box;
  readonly left: LaidDimensions['left'];
  readonly laid: LaidDimensions['laid'];
}

/** Lengths of the figures are written in the style; `height`: of figures, mm, 2.5 when absent. */
export function layPicture(
  picture: LineDrawing & Partial<Pick<Picture, 'view' | 'lying' | 'pieces'>>,
  scale: number,
  lengths: LengthStyle,
  height?: number,
): LaidPicture {
  const { lying = false, pieces } = picture;
  const toPaper: Similarity = {
    turn: lying ? -Math.PI / 2 : 0,
    shift: { x: 0, y: 0 },
    scale,
    mirrored: false,
  };
  const whole: readonly PathMark[] = [
    ...picture.lines.map((line) => lineOnPaper(line, toPaper)),
    ...(picture.view === undefined ? [] : marksOfView(picture.view, toPaper)),
  ];
  const own = pieces === undefined ? whole : breakMarks(whole, pieces, scale);
  const said = pieces === undefined ? picture.dimensions : breakDimensions(picture.dimensions, pieces, scale);
  const { laid, left } = layDimensions(lying ? said.map(laidOver) : said, own, {
    toPaper,
    lengths,
    ...(height === undefined ? {} : { height }),
  });
  const marks = [...own, ...laid.flatMap((each) => each.marks)];
  return { marks, core: boundsOfMarks(own), box: boundsOfMarks(marks), left, laid };
}

const LAID_OVER = { left: 'above', above: 'right', right: 'below', below: 'left' } as const;

/** The side of the paper on which a dimension of a picture that lies comes to stand. */
function laidOver(dimension: Dimension): Dimension {
  if (dimension.kind !== 'length' || dimension.side === undefined) return dimension;
  return { ...dimension, side: LAID_OVER[dimension.side] };
}

/** A picture alone at full size, its dimensions lettered large enough for a drawing of a base. */
export function viewScene(picture: Picture, lengths: LengthStyle): Scene {
  const { marks, box } = layPicture(picture, 1, lengths, 14);
  return { marks, box };
}

function lineOnPaper({ role, edges, past = 0 }: PictureLine, toPaper: Similarity): PathMark {
  const placed = edges.map((edge) => transformEdge(edge, toPaper));
  const last = placed.length - 1;
  const [start, end] = [placed[0]?.from, placed.at(-1)?.to];
  return {
    kind: 'path',
    role,
    closed: start !== undefined && end !== undefined && start.x === end.x && start.y === end.y,
    edges: placed.map((edge, at) => {
      if (past === 0 || edge.kind !== 'line') return edge;
      return {
        ...edge,
        from: at === 0 ? beyond(edge.to, edge.from, past) : edge.from,
        to: at === last ? beyond(edge.from, edge.to, past) : edge.to,
      };
    }),
  };
}

function beyond(from: Vec, to: Vec, by: number): Vec {
  const length = norm(to.x - from.x, to.y - from.y);
  if (length === 0) return to;
  return { x: to.x + ((to.x - from.x) * by) / length, y: to.y + ((to.y - from.y) * by) / length };
}
