import { invertProjection, matrix2d, type Projection, projectTwice } from '../../geometry/index.ts';
import type { CarriedByPiece, FigureFace } from '../engine/answers/figures.ts';
import type { BoardPicture } from '../photographs/photo-protocol.ts';

/** Something to paint from a board's picture. */
export interface FigurePatch {
  /** Cleared first: what it hides. */
  readonly covers?: string;
  /** Absent: it only hides. */
  readonly figure?: {
    readonly picture: BoardPicture;
    /** What of the scene is covered with it; path data. */
    readonly data: string;
    /** From the board, mm, to the scene. */
    readonly toScene: Projection;
  };
}

/** Where the scene lies on the canvas: px of the canvas per unit, and where its origin is. */
export interface OnCanvas {
  readonly zoom: number;
  readonly x: number;
  readonly y: number;
}

const paths = new Map<string, Path2D>();
/** Path data kept ready; more than any one screen has. */
const KEPT = 400;

function pathOf(data: string): Path2D {
  const known = paths.get(data);
  if (known !== undefined) return known;
  if (paths.size >= KEPT) paths.clear();
  const path = new Path2D(data);
  paths.set(data, path);
  return path;
}

/** Paints figures one over the other, the farthest first. Of each picture the half, quarter … that is as fine as the canvas. */
export function paintFigures(
  context: CanvasRenderingContext2D,
  patches: readonly FigurePatch[],
  at: OnCanvas,
): void {
  const { canvas } = context;
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.clearRect(0, 0, canvas.width, canvas.height);
  const toCanvas: Projection = [at.zoom, 0, at.x, 0, at.zoom, at.y, 0, 0, 1];
  for (const { covers, figure } of patches) {
    context.setTransform(at.zoom, 0, 0, at.zoom, at.x, at.y);
    if (covers !== undefined) {
      context.globalCompositeOperation = 'destination-out';
      context.fill(pathOf(covers));
      context.globalCompositeOperation = 'source-over';
    }
    if (figure === undefined) continue;
    const { picture, data, toScene } = figure;
    context.save();
    context.clip(pathOf(data), 'evenodd');
    const fromPicture = projectTwice(
      projectTwice(invertProjection(picture.plan.fromBoard), toScene),
      toCanvas,
    );
    const [a, b, c, d, e, f] = matrix2d(fromPicture);
    const scale = Math.sqrt(Math.abs(a * d - b * c));
    const level = Math.min(picture.levels.length - 1, Math.max(0, Math.floor(Math.log2(1 / scale))));
    const bitmap = picture.levels[level]!;
    const [sx, sy] = [picture.plan.width / bitmap.width, picture.plan.height / bitmap.height];
    context.setTransform(a * sx, b * sx, c * sy, d * sy, e, f);
    context.imageSmoothingQuality = 'high';
    context.drawImage(bitmap, 0, 0);
    context.restore();
  }
}

/** The faces of a view with the figure that each carries; those that carry none only hide. `moved`: by what lies on the board. */
export function patchesOf(
  faces: readonly FigureFace[],
  figures: readonly CarriedByPiece[],
  pictures: ReadonlyMap<string, BoardPicture>,
  moved?: Moved,
): readonly FigurePatch[] {
  return faces.map(({ piece, face, data, covers, toScene }) => {
    const own = figures.find((each) => each.piece === piece && each.face === face);
    const picture = own === undefined ? undefined : pictures.get(own.file);
    const hides = covers === '' ? {} : { covers };
    if (own === undefined || picture === undefined) return hides;
    const there = own.lying !== undefined && moved?.lying === own.lying ? moved.by : undefined;
    const toBoard = there === undefined ? own.toBoard : projectTwice(own.toBoard, there);
    return {
      ...hides,
      figure: { picture, data, toScene: projectTwice(invertProjection(toBoard), toScene) },
    };
  });
}

/** What is being moved by hand on its board. */
export interface Moved {
  readonly lying: string;
  readonly by: Projection;
}
