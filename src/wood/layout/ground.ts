import type { Board, LayRules } from '../boards/api.ts';
import { barredShifts, TOUCH } from './barred.ts';
import { type Room, roomOf, type Shape } from './shape.ts';

/** Something in the way on a board: a blank that lies there, or a defect. */
interface Standing {
  readonly room: Room;
  readonly x: number;
  readonly y: number;
  /** Parts keep off a defect, blanks off each other. */
  readonly isDefect: boolean;
}

/** A board with what lies on it already. */
export interface Ground {
  readonly board: Board;
  readonly standing: Standing[];
  /** How far along the board it is used, mm. */
  used: number;
}

/** Shifts that one room bars another from, kept for the whole search: few shapes meet at few heights. */
export type Bars = Map<number, Map<number, readonly number[]>>;

/** Heights are told apart down to this, mm. */
const HEIGHT_STEP = 1e-6;
const MOST_ROOMS = 1 << 20;
/** Kept for one pair of rooms before its table begins anew. */
const MOST_KEPT = 20_000;

export function groundOf(board: Board, { allowed }: LayRules, nextKey: () => number): Ground {
  const standing = board.defects
    .filter(({ kind }) => !allowed.includes(kind))
    .map(({ region }) => ({ room: roomOf([region], nextKey()), x: 0, y: 0, isDefect: true }));
  return { board, standing, used: 0 };
}

export function standOn(ground: Ground, shape: Shape, x: number, y: number): void {
  ground.standing.push({ room: shape.room, x, y, isDefect: false });
  ground.used = Math.max(ground.used, x + shape.blank.maxX);
}

/** The least x at which a shape is free at a height y, mm; undefined when there is none up to `most`. */
export function leastAlong(
  { board, standing }: Ground,
  shape: Shape,
  y: number,
  most: number,
  bars: Bars,
): number | undefined {
  const near: Near[] = [];
  for (const each of standing) {
    const own = each.isDefect ? shape.part : shape.room;
    const off = y - each.y;
    if (own.box.minY + off >= each.room.box.maxY || own.box.maxY + off <= each.room.box.minY) continue;
    const from = each.room.box.minX - own.box.maxX + each.x;
    const to = each.room.box.maxX - own.box.minX + each.x;
    near.push({ standing: each.room, moving: own, off, shift: each.x, from, to });
  }
  const low = -shape.blank.minX;
  return leastFree(low, Math.min(most, board.length - shape.blank.maxX), near, 'along', bars);
}

/** The least y at which a shape is free at a place x along the board, mm. */
export function leastAcross(
  { board, standing }: Ground,
  shape: Shape,
  x: number,
  bars: Bars,
): number | undefined {
  const near: Near[] = [];
  for (const each of standing) {
    const own = each.isDefect ? shape.part : shape.room;
    const off = x - each.x;
    if (own.box.minX + off >= each.room.box.maxX || own.box.maxX + off <= each.room.box.minX) continue;
    const from = each.room.box.minY - own.box.maxY + each.y;
    const to = each.room.box.maxY - own.box.minY + each.y;
    near.push({ standing: each.room, moving: own, off, shift: each.y, from, to });
  }
  return leastFree(-shape.blank.minY, board.width - shape.blank.maxY, near, 'across', bars);
}

/** A neighbour that may bar something: where their boxes overlap, and what it bars exactly once that is asked. */
interface Near {
  readonly standing: Room;
  readonly moving: Room;
  readonly off: number;
  readonly shift: number;
  readonly from: number;
  readonly to: number;
  barred?: readonly number[];
}

/** Skips from interval to interval until none of the neighbours bars it. */
function leastFree(
  low: number,
  high: number,
  near: readonly Near[],
  way: 'along' | 'across',
  bars: Bars,
): number | undefined {
  let at = low;
  for (let still = 0, i = 0; still < near.length; i = (i + 1) % near.length) {
    const each = near[i]!;
    still++;
    if (at <= each.from + TOUCH || at >= each.to - TOUCH) continue;
    each.barred ??= barsBetween(each.standing, each.moving, each.off, way, bars);
    const next = past(at, each.barred, each.shift);
    if (next > high + FITS) return undefined;
    if (next > at) still = 1;
    at = next;
  }
  // A board that fits to the last digit fits.
  return at <= high + FITS ? Math.min(at, Math.max(high, low)) : undefined;
}

/** The least place from `at` on that is not barred. */
function past(at: number, barred: readonly number[], shift: number): number {
  let free = at;
  for (let i = 0; i < barred.length; i += 2) {
    if (barred[i]! + shift >= free - TOUCH) break;
    if (barred[i + 1]! + shift > free + TOUCH) free = barred[i + 1]! + shift;
  }
  return free;
}

function barsBetween(
  standing: Room,
  moving: Room,
  off: number,
  way: 'along' | 'across',
  bars: Bars,
): readonly number[] {
  const pair = (standing.key * MOST_ROOMS + moving.key) * 2 + (way === 'along' ? 0 : 1);
  let kept = bars.get(pair);
  if (kept === undefined || kept.size > MOST_KEPT) {
    kept = new Map();
    bars.set(pair, kept);
  }
  const step = Math.round(off / HEIGHT_STEP);
  const known = kept.get(step);
  if (known !== undefined) return known;
  const barred = barredShifts(standing[way], moving[way], off);
  kept.set(step, barred);
  return barred;
}

/** mm. */
const FITS = 1e-6;
