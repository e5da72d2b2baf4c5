import { type Projection, project, projectTwice, type Vec } from '../../geometry/index.ts';
import type { Board } from '../boards/api.ts';
import type { TruePhotograph } from './api.ts';

/** How a photograph becomes a picture of its board, true and to scale, seen from above: x along it, its far edge at the top. */
export interface BoardPicturePlan {
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** Pixels to a mm of board. */
  readonly perMm: number;
  /** mm on the board to pixels of this picture, and those to pixels of the photograph. */
  readonly fromBoard: Projection;
  readonly toPhotograph: Projection;
}

/** Most pixels of such a picture, and the most along its length: what graphics hardware takes as one texture. */
const MOST = 6_000_000;
const LONGEST = 8192;

/** How much finer than the coarsest pixel of the photograph: those near the camera show more. */
const FINER = 1.2;

/** The plan of a picture that is as fine as the photograph, but for what is beyond `most` pixels. */
export function boardPicturePlan(
  { toPixels, coarsest }: TruePhotograph,
  { length, width }: Pick<Board, 'length' | 'width'>,
  most: number = MOST,
): BoardPicturePlan {
  const perMm = Math.min(FINER / coarsest, Math.sqrt(most / (length * width)), LONGEST / length);
  const fromBoard: Projection = [perMm, 0, 0, 0, -perMm, perMm * width, 0, 0, 1];
  const toBoard: Projection = [1 / perMm, 0, 0, 0, -1 / perMm, width, 0, 0, 1];
  return {
    width: Math.max(1, Math.round(perMm * length)),
    height: Math.max(1, Math.round(perMm * width)),
    perMm,
    fromBoard,
    toPhotograph: projectTwice(toBoard, toPixels),
  };
}

/** A rectangle of whole pixels. */
export interface PixelBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Pixels read round what is wanted, so that its edge is weighed as the rest is. */
const ROUND = 2;

/** What of a photograph of this size such a picture is made from; undefined where the board is not on it. */
export function photographedBox(
  { width, height, toPhotograph }: BoardPicturePlan,
  size: { readonly width: number; readonly height: number },
): PixelBox | undefined {
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ].map((corner) => project(corner, toPhotograph));
  // A corner beyond the horizon bounds nothing.
  const seen = corners.every((corner) => corner !== undefined) ? (corners as readonly Vec[]) : undefined;
  const [xs, ys] = [seen?.map(({ x }) => x) ?? [0, size.width], seen?.map(({ y }) => y) ?? [0, size.height]];
  const left = Math.max(0, Math.floor(Math.min(...xs)) - ROUND);
  const top = Math.max(0, Math.floor(Math.min(...ys)) - ROUND);
  const right = Math.min(size.width, Math.ceil(Math.max(...xs)) + ROUND);
  const bottom = Math.min(size.height, Math.ceil(Math.max(...ys)) + ROUND);
  return right <= left || bottom <= top
    ? undefined
    : { x: left, y: top, width: right - left, height: bottom - top };
}
