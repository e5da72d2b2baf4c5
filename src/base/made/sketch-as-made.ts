import {
  areaOfOutline,
  clipEdgesToRegions,
  type Edge,
  line,
  norm,
  type Outline,
  POSITION_TOLERANCE,
  type Region,
  type Vec,
} from '../../geometry/index.ts';
import type { KeyDimension, Opening, SketchedPart } from '../../sketch/index.ts';
import { halfPlaneAt } from '../stand/section.ts';
import type { Shape } from './shape.ts';

/**
 * The drawn part as its cuts leave it: the outline of its face side (the largest piece of it), with those corners, joint lines, dimensions and
 * openings that are left of what was drawn.
 */
export function sketchAsMade({ drawn, face, cuts }: Shape): SketchedPart {
  const region = largest(face);
  const isLeft = (p: Vec): boolean =>
    cuts.every((cut) => {
      const { normal, offset } = halfPlaneAt(cut, 0);
      const length = norm(normal.x, normal.y);
      return normal.x * p.x + normal.y * p.y - offset <= length * POSITION_TOLERANCE;
    });
  const ids = new Set([region.outer, ...region.holes].flatMap(({ edges }) => edges.map(({ tag }) => tag.id)));
  return {
    ...drawn,
    region,
    corners: drawn.corners.filter(({ at }) => isLeft(at)),
    openings: drawn.openings.flatMap((opening) => openingLeft(opening, drawn, region)),
    joints: drawn.joints.filter(({ from, to }) => isLeft(from) && isLeft(to)),
    dimensions: drawn.dimensions.filter((dimension) => isDimensionLeft(dimension, isLeft, ids)),
    centreLine: clipCentreLine(drawn.centreLine, region),
  };
}

const largest = (regions: readonly Region[]): Region =>
  regions.reduce((best, each) => (areaOfOutline(each.outer) > areaOfOutline(best.outer) ? each : best));

/** An opening keeps its place where its loop is whole. */
function openingLeft(opening: Opening, { region }: SketchedPart, made: Region): readonly Opening[] {
  const ids = idsOf(region.holes[opening.hole]!);
  const hole = made.holes.findIndex((loop) => idsOf(loop) === ids);
  return hole < 0 ? [] : [{ ...opening, hole }];
}

const idsOf = ({ edges }: Outline): string => [...new Set(edges.map(({ tag }) => tag.id))].sort().join(' ');

function isDimensionLeft(
  dimension: KeyDimension,
  isLeft: (p: Vec) => boolean,
  ids: ReadonlySet<string>,
): boolean {
  switch (dimension.kind) {
    case 'length':
      return isLeft(dimension.from) && isLeft(dimension.to);
    case 'angle':
      return isLeft(dimension.at);
    case 'radius':
      return isLeft(dimension.at) && ids.has(dimension.edge);
    default:
      return dimension satisfies never;
  }
}

/** From where the line first enters the part to where it last leaves it; as drawn where it misses the part. */
function clipCentreLine(
  { from, to }: SketchedPart['centreLine'],
  region: Region,
): SketchedPart['centreLine'] {
  const chains = clipEdgesToRegions([line(from, to, { id: 'centre', role: 'left' })], [region]);
  const edges: readonly Edge[] = chains.flat();
  const [first, last] = [edges[0], edges.at(-1)];
  return first === undefined || last === undefined ? { from, to } : { from: first.from, to: last.to };
}
