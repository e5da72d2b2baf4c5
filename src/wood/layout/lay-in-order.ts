import type { Board, Lying, ToLay } from '../boards/api.ts';
import { bestSpot } from './best-spot.ts';
import { type Bars, type Ground, standOn } from './ground.ts';
import type { Shape } from './shape.ts';

/** What the search changes: the order in which things are laid, the order of the boards, and ways that are decided. */
export interface Plan {
  readonly order: readonly number[];
  readonly boards: readonly number[];
  /** Which of its ways each is laid; −1: whichever is best where it comes. */
  readonly ways: readonly number[];
}

/** Everything that stays the same in a search. */
export interface Bench {
  readonly toLay: readonly ToLay[];
  readonly boards: readonly Board[];
  /** The ways of each, on each board that it may come from; empty elsewhere. */
  readonly shapes: readonly (readonly (readonly Shape[])[])[];
  /** Boards with what was laid by hand. */
  readonly grounds: readonly Ground[];
  readonly bars: Bars;
}

export interface LaidPlan {
  readonly lying: readonly Lying[];
  readonly unlaid: readonly number[];
  /** How far each board is used, mm; 0: not at all. */
  readonly used: readonly number[];
  readonly steps: number;
}

/** Lays one after the other, each on the first board with room for it, where it reaches least far. Ends early when told to. */
export function layInOrder(bench: Bench, plan: Plan, shouldStop: () => boolean): LaidPlan | undefined {
  const grounds = bench.grounds.map((ground) => ({ ...ground, standing: [...ground.standing] }));
  const lying: Lying[] = [];
  const unlaid: number[] = [];
  let steps = 0;
  for (const item of plan.order) {
    let isLaid = false;
    for (const at of plan.boards) {
      const shapes = bench.shapes[item]![at]!;
      if (shapes.length === 0) continue;
      if (shouldStop()) return undefined;
      const way = plan.ways[item]!;
      const spot = bestSpot(grounds[at]!, way < 0 ? shapes : [shapes[way % shapes.length]!], bench.bars);
      steps++;
      if (spot === undefined) continue;
      const { shape, x, y } = spot;
      standOn(grounds[at]!, shape, x, y);
      lying.push({
        id: bench.toLay[item]!.id,
        board: bench.boards[at]!.name,
        at: { x, y },
        turned: shape.turned,
        mirrored: shape.mirrored,
      });
      isLaid = true;
      break;
    }
    if (!isLaid) unlaid.push(item);
  }
  return { lying, unlaid, used: grounds.map(({ used }) => used), steps };
}
