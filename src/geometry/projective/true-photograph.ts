import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import type { Vec } from '../api.ts';
import { distance } from '../vec.ts';
import type { Projection } from './api.ts';
import { invertProjection } from './matrix.ts';
import { project } from './project.ts';
import { projectionFromPoints } from './projection-from-points.ts';

/** Corners of a rectangle in a picture (pixels, y down): upper left, upper right, lower right, lower left, as it is to lie. */
export type FourCorners = readonly [Vec, Vec, Vec, Vec];

/** A photograph made true: a flat thing in it measured in mm, y up, the rectangle's lower left corner at the origin. */
export interface TruePhotograph {
  /** Pixels to mm, and back. */
  readonly toPlane: Projection;
  readonly toPicture: Projection;
  /**
   * How far off a place of the plane (mm) may be, mm, when each corner was marked within `marked` pixels of where it is: the root of the sum of the squares of
   * what each of them shifts it by. Grows away from the rectangle; Infinity beyond the horizon.
   */
  readonly errorAt: (place: Vec) => number;
}

/** Pixels within which a corner is marked by hand on a picture that is shown large (common practice). */
const MARKED = 1;

/**
 * A photograph of flat work made true from the four corners of a rectangle of known size (mm) that lies in the same plane, such as a sheet of paper. Problems:
 * `photograph.corners` where the four cannot be the corners of a rectangle seen by a camera.
 */
export function truePhotograph(
  corners: FourCorners,
  { width, height }: { readonly width: number; readonly height: number },
  marked: number = MARKED,
): Result<TruePhotograph> {
  const places: FourCorners = [
    { x: 0, y: height },
    { x: width, y: height },
    { x: width, y: 0 },
    { x: 0, y: 0 },
  ];
  const found = projectionOf(corners, places);
  if (typeof found === 'string') return fail(notCorners(found));
  const toPicture = invertProjection(found);
  const shifted = corners.flatMap((corner, at) =>
    (['x', 'y'] as const).map((axis) =>
      projectionOf(
        corners.with(at, { ...corner, [axis]: corner[axis] + marked }) as unknown as FourCorners,
        places,
      ),
    ),
  );
  return ok({
    toPlane: found,
    toPicture,
    errorAt: (place) => {
      const pixel = project(place, toPicture);
      if (pixel === undefined) return Number.POSITIVE_INFINITY;
      const squares = shifted.map((projection) => {
        const there = typeof projection === 'string' ? undefined : project(pixel, projection);
        return there === undefined ? Number.POSITIVE_INFINITY : distance(there, place) ** 2;
      });
      return Math.sqrt(squares.reduce((sum, each) => sum + each, 0));
    },
  });
}

function projectionOf(from: FourCorners, to: FourCorners): Projection | 'together' | 'in-line' | 'crossed' {
  const found = projectionFromPoints(from.map((each, at) => ({ from: each, to: to[at]! })));
  return found.kind === 'found' ? found.projection : found.kind;
}

function notCorners(kind: 'together' | 'in-line' | 'crossed'): Problem {
  const what = {
    together: 'Two of the four points lie in one place',
    'in-line': 'Three of the four points lie in one line',
    crossed: 'The four points do not follow each other round the sheet',
  }[kind];
  const message = `${what}: mark its corners one after the other, clockwise from the upper left one.`;
  return { code: 'photograph.corners', message, expected: 'the four corners of one sheet' };
}

/** Whether a sheet lies on its long side in the picture, told by its sides in pixels. */
export function liesOnLongSide([a, b, c, d]: FourCorners): boolean {
  return distance(a, b) + distance(d, c) > distance(b, c) + distance(a, d);
}
