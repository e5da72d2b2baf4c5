import { boundsOfRegions } from '../../geometry/index.ts';
import { areaOf } from './cost.ts';
import type { Bench, Plan } from './lay-in-order.ts';
import { areAlike } from './set-up-bench.ts';

/** The plans that a search begins with: largest, longest and widest first, on boards as given, cheapest for their size, smallest. */
export function firstPlans({ toLay, boards }: Bench, costs: readonly number[]): readonly Plan[] {
  const sizes = toLay.map((each) => {
    const { minX, minY, maxX, maxY } = boundsOfRegions([each.blank]);
    const [short, long] = [maxX - minX, maxY - minY].sort((a, b) => a - b) as [number, number];
    return { area: areaOf(each), short, long };
  });
  const orders = (['area', 'long', 'short'] as const).map((by) => sorted(toLay, (i) => -sizes[i]![by]));
  const areas = boards.map(({ length, width }) => length * width);
  const byBoard = [
    boards.map((_, at) => at),
    sorted(boards, (at) => costs[at]! / areas[at]!),
    sorted(boards, (at) => areas[at]!),
  ];
  const ways = toLay.map(() => -1);
  const plans = byBoard.flatMap((order) => orders.map((each) => ({ order: each, boards: order, ways })));
  return plans.filter((plan, i) => plans.findIndex((other) => isSame(plan, other)) === i);
}

/** The same plan with a little changed at random: two things exchanged, one laid earlier or later, one turned, a board taken earlier. */
export function changedPlan(bench: Bench, plan: Plan, random: () => number): Plan {
  const whole = (below: number) => Math.floor(below * random());
  const draw = random();
  const count = plan.order.length;
  if (draw < 0.12 && bench.boards.length > 1) {
    return { ...plan, boards: moved(plan.boards, whole(plan.boards.length), whole(plan.boards.length)) };
  }
  if (draw < 0.35) {
    const item = whole(count);
    const most = Math.max(...bench.shapes[item]!.map(({ length }) => length));
    const way = random() < 0.4 ? -1 : whole(most);
    return { ...plan, ways: plan.ways.map((old, i) => (i === item ? way : old)) };
  }
  const from = whole(count);
  let to = whole(count);
  for (let look = 0; look < 8 && isNoChange(bench, plan, from, to); look++) to = whole(count);
  if (draw < 0.65) return { ...plan, order: moved(plan.order, from, to) };
  const order = [...plan.order];
  [order[from], order[to]] = [order[to]!, order[from]!];
  return { ...plan, order };
}

function isNoChange(bench: Bench, { order, ways }: Plan, from: number, to: number): boolean {
  const [a, b] = [order[from]!, order[to]!];
  return a === b || (areAlike(bench.toLay[a]!, bench.toLay[b]!) && ways[a] === ways[b]);
}

function moved<T>(items: readonly T[], from: number, to: number): readonly T[] {
  const rest = items.toSpliced(from, 1);
  return rest.toSpliced(to, 0, items[from]!);
}

/** Indices of a list, least first; of equals the first. */
function sorted(list: readonly unknown[], by: (index: number) => number): readonly number[] {
  return list.map((_, i) => i).sort((a, b) => by(a) - by(b) || a - b);
}

function isSame(a: Plan, b: Plan): boolean {
  return a.order.every((item, i) => item === b.order[i]) && a.boards.every((at, i) => at === b.boards[i]);
}
