import {
  type Region,
  reverseEdge,
  type Similarity,
  STAY,
  transformEdge,
  transformPoint,
  transformRegion,
  type Vec,
} from '../../geometry/index.ts';
import type { FeedRun, Routing } from '../../routing/index.ts';
import type { SketchedPart } from '../../sketch/index.ts';

const TURN_OVER: Similarity = { ...STAY, mirrored: true };

const flip = (p: Vec): Vec => transformPoint(p, TURN_OVER);
const flipAngle = (angle: number): number => Math.PI - angle;
const flipRegions = (regions: readonly Region[]): readonly Region[] =>
  regions.map((region) => transformRegion(region, TURN_OVER));

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

/**
 * The routing of the part turned over. The bit still turns the same way, so the tool is fed the other way round the
 * mirrored part, and an edge that was cut with the grain is then cut against it.
 */
export function mirrorRouting(routing: Routing): Routing {
  return {
    ...routing,
    template: flipRegions(routing.template),
    asRouted: flipRegions(routing.asRouted),
    blank: flipRegions(routing.blank),
    differences: routing.differences.map((difference) => ({
      ...difference,
      region: transformRegion(difference.region, TURN_OVER),
      at: flip(difference.at),
    })),
    feed: [...routing.feed].reverse().map(mirrorRun),
    fixings: routing.fixings.map((fixing) => ({
      ...fixing,
      at: flip(fixing.at),
      turn: -fixing.turn,
    })),
    gaps: routing.gaps.map((gap) => ({ ...gap, at: flip(gap.at) })),
    openings: routing.openings.map((opening) => ({
      ...opening,
      template: flipRegions(opening.template),
      cut: flipRegions(opening.cut),
      at: flip(opening.at),
    })),
    ...(routing.tightest === undefined
      ? {}
      : { tightest: { ...routing.tightest, at: flip(routing.tightest.at) } }),
    ...(routing.tightestCurve === undefined
      ? {}
      : { tightestCurve: { ...routing.tightestCurve, at: flip(routing.tightestCurve.at) } }),
  };
}

const OTHER_WAY: Readonly<Record<FeedRun['grain'], FeedRun['grain']>> = {
  with: 'against',
  against: 'with',
  neutral: 'neutral',
  end: 'end',
};

function mirrorRun(run: FeedRun): FeedRun {
  return { ...run, path: reverseEdge(transformEdge(run.path, TURN_OVER)), grain: OTHER_WAY[run.grain] };
}
