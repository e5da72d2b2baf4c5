import { type Box, norm, type Vec } from '../../../geometry/index.ts';
import type { Chain } from './chain.ts';
import { createSegmentGrid, type SegmentGrid } from './segment-grid.ts';
import type { Run } from './split-chains.ts';

export interface SeenRun extends Run {
  readonly visible: boolean;
}

/** Directions that differ by more than this (rad) are two lines that cross, however near they are. */
const ALIKE = 0.1;
/** mm: lines that lie on one another no farther than this only touch at their ends. */
const TOUCH = 1e-6;

interface Kept {
  readonly from: Vec;
  readonly to: Vec;
}

/**
 * Of lines that lie on one another in the picture (within the nearness, mm, of their kind) one: the visible before the hidden, the nearer to the viewer
 * before the farther. What is left of each run comes back in stretches.
 */
export function mergeRuns(
  runs: readonly SeenRun[],
  box: Box,
  nearness: { readonly visible: number; readonly hidden: number },
): readonly SeenRun[] {
  const kept = createSegmentGrid<Kept>(box);
  const depths = new Map(runs.map((run) => [run, depthOf(run)]));
  const order = runs.toSorted(
    (a, b) => Number(b.visible) - Number(a.visible) || depths.get(b)! - depths.get(a)!,
  );
  return order.flatMap((run) => {
    const left = piecesOf(run).flatMap((piece) =>
      uncovered(run.chain, piece, kept, run.visible ? nearness.visible : nearness.hidden),
    );
    for (const [start, end] of left) {
      for (const [from, to] of piecesOf({ chain: run.chain, from: start, to: end })) {
        const [a, b] = [placeOn(run.chain, from), placeOn(run.chain, to)];
        kept.add(a, b, { from: a, to: b });
      }
    }
    return joined(left).map(([from, to]) => ({ ...run, from, to }));
  });
}

/** The point of a chain at a place, in the picture. */
export function placeOn(chain: Chain, place: number): Vec {
  const piece = Math.min(Math.floor(place), chain.pieces.length - 1);
  const share = place - piece;
  const [a, b] = [chain.points[piece]!, chain.points[piece + 1]!];
  if (share === 0) return { x: a.x, y: a.y };
  if (share === 1) return { x: b.x, y: b.y };
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
}

type Span = readonly [number, number];

/** The run, cut at the ends of the chain's pieces. */
function piecesOf({ from, to }: Run): readonly Span[] {
  const spans: Span[] = [];
  for (let i = Math.floor(from); i < to; i++) {
    const [a, b] = [Math.max(from, i), Math.min(to, i + 1)];
    if (a < b) spans.push([a, b]);
  }
  return spans;
}

/** Lines as deep as one another, but for rounding, keep the order in which they came. */
function depthOf({ chain, from, to }: Run): number {
  const middle = Math.min(chain.points.length - 1, Math.round((from + to) / 2));
  return Math.round(chain.points[middle]!.z / TOUCH);
}

/** What of one straight piece no kept line lies on. */
function uncovered(
  chain: Chain,
  [start, end]: Span,
  kept: SegmentGrid<Kept>,
  nearness: number,
): readonly Span[] {
  const [p, q] = [placeOn(chain, start), placeOn(chain, end)];
  const length = norm(q.x - p.x, q.y - p.y);
  if (length < TOUCH) return [];
  const e = { x: (q.x - p.x) / length, y: (q.y - p.y) / length };
  const covers: Span[] = [];
  kept.near(p, q, nearness, ({ from, to }) => {
    const cover = coverOf(p, e, from, to, nearness);
    if (cover !== undefined && cover[1] > TOUCH && cover[0] < length - TOUCH) covers.push(cover);
  });
  const place = (u: number): number => {
    if (u <= TOUCH) return start;
    return u >= length - TOUCH ? end : start + ((end - start) * u) / length;
  };
  const left: Span[] = [];
  let reached = 0;
  for (const [from, to] of covers.sort((a, b) => a[0] - b[0])) {
    // A gap no longer than the nearness is none.
    if (from - reached > nearness) left.push([place(reached), place(from)]);
    reached = Math.max(reached, to);
  }
  const rest = length - reached;
  if (reached <= 0 || rest > nearness) left.push([place(Math.max(0, reached)), end]);
  return left;
}

/** Which stretch along the line from p in direction e a straight piece lies on. */
function coverOf(p: Vec, e: Vec, from: Vec, to: Vec, nearness: number): Span | undefined {
  const u0 = (from.x - p.x) * e.x + (from.y - p.y) * e.y;
  const u1 = (to.x - p.x) * e.x + (to.y - p.y) * e.y;
  const w0 = e.x * (from.y - p.y) - e.y * (from.x - p.x);
  const w1 = e.x * (to.y - p.y) - e.y * (to.x - p.x);
  const rise = w1 - w0;
  if (Math.abs(rise) > ALIKE * Math.abs(u1 - u0)) return undefined;
  let t0 = 0;
  let t1 = 1;
  if (Math.abs(rise) < 1e-12) {
    if (Math.abs(w0) > nearness) return undefined;
  } else {
    const a = (-nearness - w0) / rise;
    const b = (nearness - w0) / rise;
    t0 = Math.max(0, Math.min(a, b));
    t1 = Math.min(1, Math.max(a, b));
    if (t0 > t1) return undefined;
  }
  const a = u0 + t0 * (u1 - u0);
  const b = u0 + t1 * (u1 - u0);
  return [Math.min(a, b), Math.max(a, b)];
}

function joined(spans: readonly Span[]): readonly Span[] {
  const result: Span[] = [];
  for (const [from, to] of spans) {
    const last = result.at(-1);
    if (last !== undefined && last[1] === from) result[result.length - 1] = [last[0], to];
    else result.push([from, to]);
  }
  return result;
}
