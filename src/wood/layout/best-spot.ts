import { type Bars, type Ground, leastAcross, leastAlong } from './ground.ts';
import type { Shape } from './shape.ts';

export interface Spot {
  readonly shape: Shape;
  readonly x: number;
  readonly y: number;
  /** How far along the board its blank reaches, mm. */
  readonly reach: number;
}

/** Heights tried across a board beside those at which something is touched. */
const HEIGHTS = 24;
/** How often it is pushed back along and then across the board until it stays where it is. */
const PUSHES = 4;
/** A push of less than this, mm, is none; nor is a reach shorter by less a better one. */
const LEAST_PUSH = 1e-6;

/**
 * The spot at which something reaches least far along a board, and of those the nearest to its near edge, over the ways given. At every
 * height tried the least place along the board is exact, and so is each push after it; heights are those at which the shape touches
 * an edge of the board or something that lies there, and some evenly between.
 */
export function bestSpot(ground: Ground, shapes: readonly Shape[], bars: Bars): Spot | undefined {
  let best: Spot | undefined;
  for (const shape of shapes) {
    for (const height of heightsFor(ground, shape)) {
      const most = best === undefined ? Infinity : best.reach - shape.blank.maxX;
      const x = leastAlong(ground, shape, height, most, bars);
      if (x === undefined) continue;
      const spot = pushed(ground, { shape, x, y: height, reach: x + shape.blank.maxX }, bars);
      if (best === undefined || isBetter(spot, best)) best = spot;
    }
  }
  return best;
}

function isBetter(a: Spot, b: Spot): boolean {
  if (Math.abs(a.reach - b.reach) > LEAST_PUSH) return a.reach < b.reach;
  const lowA = a.y + a.shape.blank.minY;
  const lowB = b.y + b.shape.blank.minY;
  return lowA < lowB - LEAST_PUSH;
}

function pushed(ground: Ground, spot: Spot, bars: Bars): Spot {
  let { x, y } = spot;
  for (let push = 0; push < PUSHES; push++) {
    const down = leastAcross(ground, spot.shape, x, bars) ?? y;
    const back = leastAlong(ground, spot.shape, down, x, bars) ?? x;
    const isStill = y - down < LEAST_PUSH && x - back < LEAST_PUSH;
    x = back;
    y = down;
    if (isStill) break;
  }
  return { ...spot, x, y, reach: x + spot.shape.blank.maxX };
}

function heightsFor({ board, standing }: Ground, { blank, room, part }: Shape): readonly number[] {
  const low = -blank.minY;
  const high = board.width - blank.maxY;
  if (high < low - LEAST_PUSH) return [];
  const heights = [low, Math.max(low, high)];
  for (const each of standing) {
    const own = each.isDefect ? part : room;
    heights.push(each.y + each.room.box.maxY - own.box.minY, each.y + each.room.box.minY - own.box.maxY);
  }
  for (let i = 1; i < HEIGHTS; i++) heights.push(low + ((high - low) * i) / HEIGHTS);
  const within = heights.filter((y) => y >= low && y <= Math.max(low, high)).sort((a, b) => a - b);
  return within.filter((y, i) => i === 0 || y - within[i - 1]! > LEAST_PUSH);
}
