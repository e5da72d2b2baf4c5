import {
  cross,
  directionAt,
  distance,
  type Edge,
  leftOf,
  type Outline,
  reverseEdge,
  scale,
  type Vec,
} from '../geometry/index.ts';
import type { SketchedPart } from '../sketch/index.ts';
import type { FeedRun, Tooling } from './api.ts';
import { isRouted } from './outline/find-runs.ts';

/** Sine of the turn from which two edges make a corner that fibres stand out at. */
const SHARP = Math.sin((20 * Math.PI) / 180);
/** Ends of runs no farther from a corner than this, mm, end there. */
const THERE = 0.01;

/** A corner where the cutter leaves the wood across the grain, so that fibres with nothing behind them break out. */
export interface BlowOut {
  /** The edge cut across the grain, and the one that it leaves at. */
  readonly edge: string;
  readonly next: string;
  readonly at: Vec;
  /** Direction of feed there, unit: the wood breaks out that way. */
  readonly out: Vec;
  /** Along the next edge from there, and away from the wood beside it, unit: where a block stands. */
  readonly along: Vec;
  readonly away: Vec;
  /**
   * `first`: the next edge is routed as well, so this one is cut before it and the later cut takes off what broke out. `block`: nothing is cut
   * there afterwards, and a block must stand behind the corner.
   */
  readonly cure: 'first' | 'block';
}

/**
 * Corners that blow out: where a run of end grain leaves the wood at a corner that stands out. Rounded ends run out gently and have none.
 * Openings have none either: their corners stand in the waste.
 */
export function blowOuts(
  { region }: Pick<SketchedPart, 'region'>,
  feed: readonly FeedRun[],
  machine: Tooling['machine'],
): readonly BlowOut[] {
  const edges = inOrderOfFeed(region.outer, machine);
  const wood = machine === 'hand-held' ? 1 : -1;
  return feed
    .filter(({ grain }) => grain === 'end')
    .flatMap(({ path, edge }): readonly BlowOut[] => {
      const at = edges.findIndex(({ tag, to }) => tag.id === edge && distance(to, path.to) < THERE);
      const next = edges[(at + 1) % edges.length];
      if (at < 0 || next === undefined) return [];
      const out = directionAt(path, 1);
      const along = directionAt(next, 0);
      if (wood * cross(out, along) < SHARP) return [];
      const cure = isRouted(next) ? 'first' : 'block';
      return [{ edge, next: next.tag.id, at: path.to, out, along, away: scale(leftOf(along), -wood), cure }];
    });
}

function inOrderOfFeed({ edges }: Outline, machine: Tooling['machine']): readonly Edge[] {
  return machine === 'hand-held' ? edges : [...edges].reverse().map(reverseEdge);
}
