import {
  type Region,
  reverseEdge,
  type Similarity,
  STAY,
  transformEdge,
  transformPoint,
  transformRegion,
  type Vec,
} from '../geometry/index.ts';
import type { FeedRun, Routing } from './api.ts';

const TURN_OVER: Similarity = { ...STAY, mirrored: true };

/** A place in the part turned over, from that place in the part, or the other way round. */
export const flipPoint = (p: Vec): Vec => transformPoint(p, TURN_OVER);
const flipRegions = (regions: readonly Region[]): readonly Region[] =>
  regions.map((region) => transformRegion(region, TURN_OVER));

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
      at: flipPoint(difference.at),
    })),
    feed: [...routing.feed].reverse().map(mirrorRun),
    fixings: routing.fixings.map((fixing) => ({
      ...fixing,
      at: flipPoint(fixing.at),
      turn: -fixing.turn,
    })),
    gaps: routing.gaps.map((gap) => ({ ...gap, at: flipPoint(gap.at) })),
    openings: routing.openings.map((opening) => ({
      ...opening,
      template: flipRegions(opening.template),
      cut: flipRegions(opening.cut),
      at: flipPoint(opening.at),
    })),
    ...(routing.tightest === undefined
      ? {}
      : { tightest: { ...routing.tightest, at: flipPoint(routing.tightest.at) } }),
    ...(routing.tightestCurve === undefined
      ? {}
      : { tightestCurve: { ...routing.tightestCurve, at: flipPoint(routing.tightestCurve.at) } }),
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
