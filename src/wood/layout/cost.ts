import { areaOfOutline } from '../../geometry/index.ts';
import type { Board, ToLay } from '../boards/api.ts';
import { priceOf } from '../boards/price-of.ts';
import { volumeOf } from '../boards/volume.ts';
import type { LayCost } from './api.ts';
import type { Bench, LaidPlan } from './lay-in-order.ts';
import type { Shape } from './shape.ts';

/** Costs that differ by less than this share are alike: rounding. */
const ALIKE = 1e-9;

/** What each board costs: its price, or its volume where not all have one. */
export function costsOfBoards(boards: readonly Board[]): readonly number[] {
  const prices = boards.map(priceOf);
  return boards.map((board, i) => (prices.includes(undefined) ? volumeOf(board) : prices[i]!));
}

export function areaOf({ blank }: ToLay): number {
  return areaOfOutline(blank.outer);
}

export function costOf(
  { unlaid, used }: Pick<LaidPlan, 'unlaid' | 'used'>,
  toLay: readonly ToLay[],
  boards: readonly Board[],
  costs: readonly number[],
): LayCost {
  return {
    unlaid: unlaid.reduce((sum, item) => sum + areaOf(toLay[item]!), 0),
    boards: used.reduce((sum, long, at) => sum + (long > 0 ? costs[at]! : 0), 0),
    used: used.reduce((sum, long, at) => sum + long * boards[at]!.width, 0),
  };
}

/** Negative when a is the better one. */
export function compareCosts(a: LayCost, b: LayCost): number {
  for (const key of ['unlaid', 'boards', 'used'] as const) {
    const apart = a[key] - b[key];
    if (Math.abs(apart) > ALIKE * Math.max(1, Math.abs(a[key]), Math.abs(b[key]))) return apart;
  }
  return 0;
}

/**
 * What no layout can be better than, by area: everything laid that fits a board at all, on the boards that give most area for their
 * cost, the last of them charged in part only, and used no farther than what lies on them covers.
 */
export function leastCost(
  { toLay, shapes, boards }: Pick<Bench, 'toLay' | 'shapes' | 'boards'>,
  pinned: readonly ToLay[],
  costs: readonly number[],
): LayCost {
  const hopeless = toLay.filter((_, item) => !shapes[item]!.some((ways, at) => fits(ways, boards[at]!)));
  const hopeful = [...toLay.filter((each) => !hopeless.includes(each)), ...pinned];
  const needed = hopeful.reduce((sum, each) => sum + areaOf(each), 0);
  const order = boards.map((board, at) => ({ area: board.length * board.width, cost: costs[at]! }));
  order.sort((a, b) => a.cost / a.area - b.cost / b.area);
  let left = needed;
  let cost = 0;
  for (const board of order) {
    const taken = Math.min(left, board.area);
    cost += (board.cost * taken) / board.area;
    left -= taken;
  }
  const never = hopeless.reduce((sum, each) => sum + areaOf(each), 0);
  return { unlaid: never + Math.max(0, left), boards: cost, used: needed - Math.max(0, left) };
}

/** Is the board as long and as wide as one of the ways? */
function fits(ways: readonly Shape[], { length, width }: Board): boolean {
  return ways.some(
    ({ blank }) => blank.maxX - blank.minX <= length + FITS && blank.maxY - blank.minY <= width + FITS,
  );
}

/** mm. */
const FITS = 1e-6;
