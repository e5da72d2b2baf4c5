import {
  type Similarity,
  STAY,
  transformEdge,
  transformPoint,
  transformRegion,
  type Vec,
} from '../geometry/index.ts';
import type { SketchedPart } from './api.ts';

const TURN_OVER: Similarity = { ...STAY, mirrored: true };

const flip = (p: Vec): Vec => transformPoint(p, TURN_OVER);
const flipAngle = (angle: number): number => Math.PI - angle;

/** The part turned over about its y axis: the other hand. */
export function mirrorPart(part: SketchedPart): SketchedPart {
  return {
    ...part,
    region: transformRegion(part.region, TURN_OVER),
    grain: flipAngle(part.grain),
    // Turning over changes sides: what lay left of a line lies left of it walked the other way.
    pieces: (part.pieces ?? []).map((piece) => ({
      ...piece,
      leftOf: { from: flip(piece.leftOf.to), to: flip(piece.leftOf.from) },
      grain: flipAngle(piece.grain),
    })),
    up: flipAngle(part.up),
    corners: part.corners.map((corner) => ({ ...corner, at: flip(corner.at) })),
    openings: part.openings.map((opening) => ({ ...opening, plunge: flip(opening.plunge) })),
    joints: part.joints.map((joint) => ({ ...joint, from: flip(joint.from), to: flip(joint.to) })),
    ...(part.layouts === undefined
      ? {}
      : {
          layouts: part.layouts.map((mark) => ({
            ...mark,
            edges: mark.edges.map((edge) => transformEdge(edge, TURN_OVER)),
          })),
        }),
    dimensions: part.dimensions.map((dimension) => {
      switch (dimension.kind) {
        case 'length': {
          const moved = { ...dimension, from: flip(dimension.from), to: flip(dimension.to) };
          return dimension.along === undefined ? moved : { ...moved, along: flipAngle(dimension.along) };
        }
        case 'angle':
        case 'radius':
          return { ...dimension, at: flip(dimension.at) };
        default:
          return dimension satisfies never;
      }
    }),
    centreLine: { from: flip(part.centreLine.from), to: flip(part.centreLine.to) },
  };
}
