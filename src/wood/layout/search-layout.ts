import type { LayCost, Layout, LayTask, SearchOptions } from './api.ts';
import { compareCosts, costOf, costsOfBoards, leastCost } from './cost.ts';
import { type LaidPlan, layInOrder, type Plan } from './lay-in-order.ts';
import { changedPlan, firstPlans } from './plans.ts';
import { seeded } from './seeded.ts';
import { setUpBench } from './set-up-bench.ts';

/** Places sought where the caller does not say: some seconds for a table's parts. */
export const USUAL_STEPS = 4000;

/** A changed plan is kept when its layout is better than the one kept this many changes ago. */
const MEMORY = 25;

interface Tried {
  readonly plan: Plan;
  readonly laid: LaidPlan;
  readonly cost: LayCost;
}

/**
 * A layout of parts on boards, by search. One plan says in which order they are laid, on which boards first, and which way round; each
 * is laid where it reaches least far along its board, with exact clearances. The search begins with plans by size and changes the plan
 * it keeps a little at a time, at random from the seed; a change is kept unless it is worse than the one before and than the plan
 * kept some changes ago (late acceptance: E. K. Burke, Y. Bykov, The late acceptance hill-climbing heuristic, 2017).
 *
 * Bound by steps, never by a clock of its own: the same task, seed and steps give the same layout, unless the caller stops it.
 */
export function searchLayout(task: LayTask, options: SearchOptions): Layout {
  const { steps: most = USUAL_STEPS, shouldStop = () => false, onStep } = options;
  const bench = setUpBench(task);
  const costs = costsOfBoards(task.boards);
  const pinned = task.toLay.filter((each) => !bench.toLay.includes(each));
  const least = leastCost(bench, pinned, costs);
  const random = seeded(options.seed);
  const first = firstPlans(bench, costs);
  const memory: LayCost[] = [];
  let best: Tried | undefined;
  let kept: Tried | undefined;
  let steps = 0;
  let ended: Layout['ended'] | undefined;
  for (let turn = 0; ended === undefined; turn++) {
    const plan =
      kept === undefined || turn < first.length ? first[turn]! : changedPlan(bench, kept.plan, random);
    const laid = layInOrder(bench, plan, shouldStop);
    if (laid === undefined) {
      ended = 'stopped';
      break;
    }
    steps += Math.max(1, laid.steps);
    const tried: Tried = { plan, laid, cost: costOf(laid, bench.toLay, task.boards, costs) };
    const before = memory[turn % MEMORY];
    if (kept === undefined || isKept(tried.cost, kept.cost, before)) kept = tried;
    memory[turn % MEMORY] = kept.cost;
    if (best === undefined || compareCosts(tried.cost, best.cost) < 0) best = tried;
    onStep?.(Math.min(steps, most), most, best.cost);
    if (compareCosts(best.cost, least) <= 0) ended = 'best';
    // With one thing to lay there is nothing to change.
    else if (steps >= most || (bench.toLay.length < 2 && turn + 1 >= first.length)) ended = 'steps';
  }
  const { lying, unlaid } = best?.laid ?? { lying: [], unlaid: bench.toLay.map((_, item) => item) };
  return {
    lying: [...task.pinned, ...lying],
    unlaid: unlaid.map((item) => bench.toLay[item]!.id),
    cost: best?.cost ?? costOf({ unlaid, used: [] }, bench.toLay, task.boards, costs),
    least,
    steps,
    ended: ended ?? 'steps',
  };
}

function isKept(cost: LayCost, kept: LayCost, before: LayCost | undefined): boolean {
  return compareCosts(cost, kept) <= 0 || (before !== undefined && compareCosts(cost, before) < 0);
}
