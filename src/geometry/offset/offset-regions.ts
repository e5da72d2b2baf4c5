import type { Outline, Region } from '../api.ts';
import { addLoop } from '../arrangement/add-loop.ts';
import { type Arrangement, arrange } from '../arrangement/arrangement.ts';
import { nestLoops } from '../arrangement/nest.ts';
import { newPieces, type Pieces, releasePieces } from '../arrangement/pieces.ts';
import { type Stitched, stitch } from '../arrangement/stitch.ts';
import { regionsFromLoops } from '../boolean/booleans.ts';
import { loopsOf } from '../boolean/combine.ts';
import { filled, markLists, releaseLists } from '../memory/lists.ts';
import { CARRIER_TOLERANCE, VERTEX_SNAP } from '../tolerance.ts';
import { cullCrowded } from './cull-crowded.ts';
import { mitreRegions } from './mitre-regions.ts';
import { type Nearness, NOBODY, nearnessOf } from './nearness.ts';
import { type LoopRange, rawOffset } from './raw-offset.ts';

export interface OffsetOptions {
  /** How outside corners are filled: by an arc about the corner (the default), or by running the edges on to a point. */
  readonly joins?: 'round' | 'mitred';
  /**
   * A mitre that would reach further from its corner than this many times the offset is left round. Default 4: corners
   * down to 29° stay pointed.
   */
  readonly mitreLimit?: number;
}

const DEFAULT_MITRE_LIMIT = 4;

/**
 * All points within `by` mm of the regions when it is positive; when negative, all points of the regions that lie
 * at least −by from everything outside. Lines and arcs stay lines and arcs. Empty when nothing is left. Each edge keeps the tag of
 * the edge that it runs parallel to; a join takes that of the edge before its corner.
 *
 * Stages: parallels of all edges, with round joins where they part; those wholly too near the source are thrown out at
 * once; the rest are cut wherever they meet; chains of what was cut are kept when their longest slice is no nearer to
 * the source than the offset; what is kept closes into loops. Distance decides, so that holes, islands, splits and merges
 * come out by themselves. Shrinking is the same with parallels on the other side.
 *
 * No tolerance decides what is kept except where a chain lies within rounding (`Nearness.slack`) of the offset from a second edge: there it
 * coincides with that edge's own parallel, and the two cancel. Should rounding leave a loop open, the offset is tried again
 * with coarser tolerances or a few nanometres off.
 */
export function offsetRegions(regions: readonly Region[], by: number, options: OffsetOptions = {}): Region[] {
  if (Number.isNaN(by)) throw new RangeError('an offset needs a number');
  if (Math.abs(by) <= VERTEX_SNAP) return [...regions];
  const round = roundOffset(loopsOf(regions), by);
  if (options.joins !== 'mitred') return round;
  return mitreRegions(regions, round, by, options.mitreLimit ?? DEFAULT_MITRE_LIMIT);
}

/** What to try in turn until every loop closes: how far (mm) off the offset asked for, and coarser tolerances. */
const TRIES = [
  { nudge: 0, grain: 1 },
  { nudge: 0, grain: 7 },
  { nudge: 2 * CARRIER_TOLERANCE, grain: 1 },
  { nudge: -2 * CARRIER_TOLERANCE, grain: 1 },
  { nudge: 0, grain: 50 },
  { nudge: VERTEX_SNAP, grain: 7 },
  { nudge: -VERTEX_SNAP, grain: 7 },
] as const;

/** Beyond so many edges a loop that stays open more likely crosses itself than suffers from rounding. */
const LARGE = 400;

function roundOffset(loops: readonly Outline[], by: number): Region[] {
  const isLarge = roomFor(loops) > LARGE;
  const found = offsetLoops(loops, by, isLarge ? 2 : TRIES.length);
  if (found.closed) return nestLoops(found.loops);
  // Loops that cross themselves, if only by a nanometre, are made sound first.
  const sound = offsetLoops(loopsOf(regionsFromLoops(loops, 'positive')), by);
  return nestLoops((sound.closed ? sound : found).loops);
}

function offsetLoops(loops: readonly Outline[], by: number, tries: number = TRIES.length): Stitched {
  const mark = markLists();
  const source = newPieces(roomFor(loops));
  try {
    return tryInTurn(source, loops, by, tries);
  } finally {
    releasePieces(source);
    releaseLists(mark);
  }
}

function tryInTurn(source: Pieces, loops: readonly Outline[], by: number, tries: number): Stitched {
  const ranges: LoopRange[] = [];
  for (const loop of loops) {
    const from = source.count;
    addLoop(source, loop.edges, 0);
    ranges.push({ from, to: source.count });
  }
  if (source.count === 0) return { loops: [], closed: true };
  const nearness = nearnessOf(source);
  let best: Stitched = { loops: [], closed: false };
  for (const { nudge, grain } of TRIES.slice(0, tries)) {
    const mark = markLists();
    const { loops: found, closed } = tryOffset(source, ranges, by + nudge, grain, nearness);
    releaseLists(mark);
    // What grows cannot vanish.
    const isSound = closed && (by < 0 || found.length > 0);
    if (isSound || found.length > best.loops.length) best = { loops: found, closed: isSound };
    if (isSound) break;
  }
  return best;
}

/** Edges, and some more for arcs that are split. */
function roomFor(loops: readonly Outline[]): number {
  let edges = 0;
  for (const loop of loops) edges += loop.edges.length;
  return edges + (edges >> 2);
}

function tryOffset(
  source: Pieces,
  ranges: readonly LoopRange[],
  by: number,
  grain: number,
  nearness: Nearness,
): Stitched {
  const reach = Math.abs(by);
  const parallels = rawOffset(source, ranges, by, nearness);
  const { pieces: raw, touching } = cullCrowded(parallels, source, reach, nearness);
  const arrangement = arrange(raw, grain, grain === 1 ? touching : undefined);
  const stitched = stitch(arrangement, farChains(arrangement, reach, nearness));
  releasePieces(parallels);
  if (raw !== parallels) releasePieces(raw);
  return stitched;
}

/** Chains no nearer to the source than the offset, in the sense in which the source runs. */
function farChains({ slices, counts, chains }: Arrangement, reach: number, nearness: Nearness): Int32Array {
  const keep = filled(chains.count);
  for (let c = 0; c < chains.count; c++) {
    const step = chains.longest[c]!;
    const s = step >= 0 ? step : -1 - step;
    const near = nearness.nearerPiece(
      slices.middles[2 * s]!,
      slices.middles[2 * s + 1]!,
      reach - nearness.slack,
    );
    if (near === NOBODY) keep[c] = counts[0][s]! > 0 === step >= 0 ? 1 : -1;
  }
  return keep;
}
