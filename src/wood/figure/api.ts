import type { PointPair, Projection, Region } from '../../geometry/index.ts';

/**
 * A photograph of one face of a board, or of one leaf of it. Pixels are counted from its upper left corner, x to the right and y down;
 * the middle of the first pixel is (0.5, 0.5).
 */
export interface Photograph {
  /** Name of its file. */
  readonly file: string;
  /** The lower face is seen with the board turned over about its length. */
  readonly face: 'upper' | 'lower';
  /** From the board's upper face down; absent: the board as it came. */
  readonly leaf?: number;
  /** Two or four places known both in the picture (`from`, pixels) and on the board (`to`, mm). */
  readonly points: readonly PointPair[];
}

/** A photograph that lies true and to scale on its board. */
export interface TruePhotograph {
  readonly photograph: Photograph;
  /** Pixels to mm on the board. */
  readonly toBoard: Projection;
  /** mm on the board to pixels. */
  readonly toPixels: Projection;
  /** mm of board to a pixel, the coarsest at the known points: how finely the figure can be laid. */
  readonly coarsest: number;
}

/**
 * Why a photograph cannot be laid: as for the known points of any projection, or `turned-over`: by its points the picture is seen from the
 * other side, as when the other face was named or two points were exchanged.
 */
export interface PhotographFault {
  readonly kind: 'together' | 'in-line' | 'crossed' | 'turned-over' | 'count';
  /** Which of the known points. */
  readonly points: readonly number[];
}

/** The figure that one face of a part will carry. */
export interface CarriedFigure {
  readonly photograph: Photograph;
  /** What is covered by it, in the part's own plane. */
  readonly region: Region;
  /** Pixels to the part's own plane, mm, and back. */
  readonly toPart: Projection;
  readonly toPixels: Projection;
  /** The leaf is turned over: the figure is the mirror image of what the photograph shows. */
  readonly mirrored: boolean;
}

/** Eight bits each of red, green, blue and opacity, row by row from the top. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}
