import {
  boundsOfEdges,
  type Edge,
  type Outline,
  type Region,
  regionsFromLoops,
  subtractRegions,
} from '../../geometry/index.ts';
import type { Gap } from '../api.ts';
import { findRuns } from './find-runs.ts';
import { passGap } from './pass-gap.ts';
import type { Passage } from './passage.ts';

/** An outer outline with its routed edges run on past the unrouted ones. */
export interface ExtendedOutline {
  /** As drawn. */
  readonly drawn: readonly Region[];
  /** Run on by the length asked for. */
  readonly short: readonly Region[];
  /** Run on with all room beyond, so that an offset touches routed edges only. */
  readonly long: readonly Region[];
  readonly gaps: readonly Gap[];
  /** Unrouted edges that have neither a run-on beyond them nor a routed neighbour whose offset carries on along them. */
  readonly passedOver: readonly Edge[];
  /** Is any edge routed? */
  readonly isRouted: boolean;
  /** Strips on the waste's side of the run-ons, see Passage. */
  readonly pastCorner: readonly Outline[];
  readonly pastRunOn: readonly Outline[];
}

/** Room (mm) that everything beyond the run-ons has more than the offset asked for. */
const ROOM = 10;

/**
 * The outline run on past every run of unrouted edges by `runOn` (mm, straight), ready for an offset of at most `reach`
 * (mm) either way.
 */
export function extendOutline(outer: Outline, runOn: number, reach: number): ExtendedOutline {
  const stretches = findRuns(outer);
  const drawn = [solid(outer)];
  const beyond = reach + ROOM;
  const bounds = boundsOfEdges(outer.edges);
  const margin = runOn + 2 * beyond + (bounds.maxX - bounds.minX + bounds.maxY - bounds.minY);
  const box = {
    minX: bounds.minX - margin,
    minY: bounds.minY - margin,
    maxX: bounds.maxX + margin,
    maxY: bounds.maxY + margin,
  };
  const passages: Passage[] = [];
  const short: Edge[] = [];
  const long: Edge[] = [];
  for (const { edges, gap } of stretches) {
    short.push(...edges);
    long.push(...edges);
    if (gap === undefined) continue;
    const passage = passGap(gap, { runOn, beyond, loop: outer.edges, box });
    passages.push(passage);
    short.push(...passage.short);
    long.push(...passage.long);
  }
  const isPlain = passages.length === 0;
  return {
    drawn,
    short: isPlain ? drawn : regionsFromLoops([{ edges: short }], 'positive'),
    long: isPlain ? drawn : regionsFromLoops([{ edges: long }], 'positive'),
    gaps: passages.map(({ gap }) => gap),
    passedOver: passages.flatMap(({ passedOver }) => passedOver),
    isRouted: stretches.length > 0,
    pastCorner: passages.flatMap(({ pastCorner }) => pastCorner),
    pastRunOn: passages.flatMap(({ pastRunOn }) => pastRunOn),
  };
}

/** What lies beyond the part at its unrouted edges: there the wood ends as drawn, whatever the cutter would leave. */
export function beyondGaps({ drawn, long, pastCorner, gaps }: ExtendedOutline): Region[] {
  if (gaps.length === 0) return [];
  return subtractRegions([...pastCorner.map(solid), ...long], drawn);
}

/** What a simple anticlockwise loop encloses. */
export function solid(outer: Outline): Region {
  return { outer, holes: [] };
}
