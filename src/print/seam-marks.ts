import type { Pattern } from '../drawing/index.ts';
import { type Box, between, distance, type Vec } from '../geometry/index.ts';
import type { SheetPlan } from './api.ts';
import { linesThrough, type Occupied, occupiedBy, occupiedNear } from './page/occupied.ts';
import { type Seam, seamsOf } from './seams.ts';

/** A matching mark: drawn on both sheets of a seam at the same point of the pattern. */
export interface SeamMark {
  /** `1a.1`: its seam and which mark on it, from the left or the top. */
  readonly name: string;
  /** On the seam line, in the plan's frame, mm. */
  readonly at: Vec;
}

export interface MarkedSeam extends Seam {
  readonly marks: readonly SeamMark[];
  /** Where along the seam its neighbours are named, in the plan's frame. */
  readonly captionAt: Vec;
}

/** Shares of a seam's length at which marks are wanted; a long seam has a third. */
const SHORT_SEAM = [0.16, 0.84];
const LONG_SEAM = [0.1, 0.5, 0.9];
const LONG = 330;
/** Steps in which a free place is looked for, mm, and how far from the wanted one, as a share of the seam. */
const STEP = 2.5;
const STRAY = 0.14;
const CAPTION_STRAY = 0.16;
/** Half the room a mark takes along the seam, and a caption, mm. */
const MARK_ROOM = 7.5;
const CAPTION_ROOM = 26;

/**
 * The seams of a plan with at least two marks on each, where the pattern leaves room near the wanted places. Where a mark
 * stands depends only on what both its sheets show, so that a sheet that did not change keeps its marks.
 */
export function markSeams(plan: SheetPlan, pattern: Pattern): MarkedSeam[] {
  const { turn, shift } = plan.grid;
  const occupied = occupiedBy(pattern, { turn, shift, scale: 1, mirrored: false });
  const half = plan.paper.overlap / 2;
  return seamsOf(plan).map((seam) => {
    const near = occupiedNear(occupied, around(seam.from, seam.to, half, 0));
    const length = distance(seam.from, seam.to);
    const shares = length > LONG ? LONG_SEAM : SHORT_SEAM;
    const found = shares.map((share) => freePlace(seam, share, STRAY, MARK_ROOM, half, near));
    // Counted from the left or from the top.
    const places = seam.kind === 'side' ? [...found].reverse() : found;
    const marks = places.map((at, i) => ({ name: `${seam.name}.${i + 1}`, at }));
    const middle = shares.length > 2 ? 0.3 : 0.5;
    return { ...seam, marks, captionAt: freePlace(seam, middle, CAPTION_STRAY, CAPTION_ROOM, half, near) };
  });
}

/** The place nearest to a share of the seam with free room about it, else the least disturbed. */
function freePlace(
  seam: Seam,
  share: number,
  stray: number,
  room: number,
  half: number,
  near: Occupied,
): Vec {
  const length = distance(seam.from, seam.to);
  const most = Math.floor((stray * length) / STEP);
  let best = between(seam.from, seam.to, share);
  let least = Infinity;
  for (let k = 0; k <= 2 * most && least > 0; k++) {
    const away = (k % 2 === 0 ? 1 : -1) * Math.ceil(k / 2) * STEP;
    const at = between(seam.from, seam.to, share + away / length);
    const lines = linesThrough(near, around(at, at, half, seam.kind === 'side' ? -room : room));
    if (lines < least) {
      best = at;
      least = lines;
    }
  }
  return best;
}

/** A box about a stretch of a seam: `half` to all sides, or `room` along x (along y where it is negative). */
function around(from: Vec, to: Vec, half: number, room: number): Box {
  const x = room > 0 ? room : half;
  const y = room < 0 ? -room : half;
  return { minX: from.x - x, minY: from.y - y, maxX: to.x + x, maxY: to.y + y };
}
