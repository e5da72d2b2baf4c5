import {
  add3,
  momentsOfRegions,
  norm,
  type Plane3,
  type Region,
  SQUARE_TURN,
  scale3,
  type Vec3,
} from '../../geometry/index.ts';
import { halfPlaneAt, keepHalfPlane } from '../stand/section.ts';
import type { Layer } from './layers-of-part.ts';

/** mm³, and ∫ p dV in mm⁴. */
export interface SolidMoments {
  readonly volume: number;
  readonly first: Vec3;
}

/** A plane over the part's plane: z = at + x·dx + y·dy. */
interface Slope {
  readonly at: number;
  readonly x: number;
  readonly y: number;
}

/** Slopes that differ by less than this are one: 1e-6 mm over a metre. */
const SAME_SLOPE = 1e-9;

const CUT = { name: 'cut', role: 'sawn' } as const;

/**
 * Volume and first moments of a layer cut by planes of the part's frame, exact to rounding, arcs included. Over each point of the outline the wood
 * reaches from the highest of the lower planes to the lowest of the upper ones: the outline is parted where another plane takes over, and
 * over each piece the height is linear, so that its integrals follow from the moments of the piece.
 */
export function momentsOfLayer({ regions, top, bottom }: Layer, planes: readonly Plane3[]): SolidMoments {
  const leaning = planes.filter(({ normal }) => Math.abs(normal.z) >= SQUARE_TURN);
  const square = planes.filter(({ normal }) => Math.abs(normal.z) < SQUARE_TURN);
  const outline = square.reduce(
    (left, plane) => keepHalfPlane(left, halfPlaneAt({ plane }, (top + bottom) / 2), CUT),
    regions,
  );
  const uppers = [flat(top), ...leaning.filter(({ normal }) => normal.z > 0).map(slopeOf)];
  const lowers = [flat(bottom), ...leaning.filter(({ normal }) => normal.z < 0).map(slopeOf)];
  return sumMoments(
    uppers.flatMap((upper, i) => {
      const under = keepUnder(outline, upper, uppers, i);
      return lowers.map((lower, j) => {
        const over = keepUnder(under, negative(lower), lowers.map(negative), j);
        return momentsBetween(keepBelow(over, lower, upper, true), upper, lower);
      });
    }),
  );
}

export const sumMoments = (all: readonly SolidMoments[]): SolidMoments => ({
  volume: all.reduce((sum, { volume }) => sum + volume, 0),
  first: all.reduce((sum, { first }) => add3(sum, first), { x: 0, y: 0, z: 0 }),
});

const flat = (at: number): Slope => ({ at, x: 0, y: 0 });

const slopeOf = ({ normal, offset }: Plane3): Slope => ({
  at: offset / normal.z,
  x: -normal.x / normal.z,
  y: -normal.y / normal.z,
});

const negative = ({ at, x, y }: Slope): Slope => ({ at: -at, x: -x, y: -y });

/** Where one slope is the lowest of all; of equal ones the first is. */
const keepUnder = (
  regions: readonly Region[],
  slope: Slope,
  all: readonly Slope[],
  own: number,
): readonly Region[] =>
  all.reduce((left, other, at) => (at === own ? left : keepBelow(left, slope, other, own < at)), regions);

/** Where one slope lies below another; all or nothing where they are parallel, and `whenEqual` says which where they are one. */
function keepBelow(
  regions: readonly Region[],
  low: Slope,
  high: Slope,
  whenEqual: boolean,
): readonly Region[] {
  const normal = { x: low.x - high.x, y: low.y - high.y };
  const offset = high.at - low.at;
  if (norm(normal.x, normal.y) >= SAME_SLOPE) return keepHalfPlane(regions, { normal, offset }, CUT);
  const keeps = Math.abs(offset) < SAME_SLOPE ? whenEqual : offset > 0;
  return keeps ? regions : [];
}

function momentsBetween(regions: readonly Region[], upper: Slope, lower: Slope): SolidMoments {
  if (regions.length === 0) return { volume: 0, first: { x: 0, y: 0, z: 0 } };
  const { area, centroid, xx, yy, xy } = momentsOfRegions(regions);
  const over = ({ at, x, y }: Slope): number => at + x * centroid.x + y * centroid.y;
  const [high, low] = [over(upper), over(lower)];
  const volume = area * (high - low);
  const [dx, dy] = [upper.x - lower.x, upper.y - lower.y];
  const aside = { x: dx * yy + dy * xy, y: dx * xy + dy * xx, z: 0 };
  const square = ({ x, y }: Slope): number => x * x * yy + 2 * x * y * xy + y * y * xx;
  const height = (area * (high * high - low * low) + square(upper) - square(lower)) / 2;
  return {
    volume,
    first: add3(add3(scale3({ ...centroid, z: 0 }, volume), aside), { x: 0, y: 0, z: height }),
  };
}
