import { FIGURE_ROUNDING } from '../../geometry/index.ts';

/** Cost of going from stop i to stop j; from −1, the start. Symmetric. */
export type StepCost = (from: number, to: number) => number;

const START = -1;

export function costOfPath(path: readonly number[], step: StepCost): number {
  return path.reduce((sum, stop, at) => sum + step(at === 0 ? START : path[at - 1]!, stop), 0);
}

/**
 * Cheapest path from the start through all stops, ending anywhere: dynamic programming over sets of stops (M. Held and
 * R. M. Karp, 1962). Exact; 2ⁿ n² steps.
 */
export function exactPath(count: number, step: StepCost): readonly number[] {
  if (count === 0) return [];
  const sets = 1 << count;
  const cost = Array.from({ length: sets }, () => new Array<number>(count).fill(Number.POSITIVE_INFINITY));
  const before = Array.from({ length: sets }, () => new Array<number>(count).fill(START));
  for (let stop = 0; stop < count; stop++) cost[1 << stop]![stop] = step(START, stop);
  for (let set = 1; set < sets; set++) {
    for (let last = 0; last < count; last++) {
      const here = cost[set]![last]!;
      if (here === Number.POSITIVE_INFINITY) continue;
      for (let next = 0; next < count; next++) {
        const bit = 1 << next;
        if ((set & bit) !== 0) continue;
        const there = here + step(last, next);
        if (there < cost[set | bit]![next]!) {
          cost[set | bit]![next] = there;
          before[set | bit]![next] = last;
        }
      }
    }
  }
  const all = cost[sets - 1]!;
  let last = all.indexOf(Math.min(...all));
  const path: number[] = [];
  for (let set = sets - 1; last !== START; ) {
    path.unshift(last);
    const previous = before[set]![last]!;
    set &= ~(1 << last);
    last = previous;
  }
  return path;
}

/** A good path for many stops: always to the nearest, then stretches reversed (2-opt) while that is cheaper. */
export function goodPath(count: number, step: StepCost): readonly number[] {
  const path = nearestFirst(count, step);
  const stepOf = (at: number): number =>
    at >= count || at < 0 ? 0 : step(at === 0 ? START : path[at - 1]!, path[at]!);
  for (let improved = true; improved; ) {
    improved = false;
    for (let from = 0; from < count - 1; from++) {
      for (let to = from + 1; to < count; to++) {
        const previous = from === 0 ? START : path[from - 1]!;
        const now = stepOf(from) + stepOf(to + 1);
        const then = step(previous, path[to]!) + (to + 1 < count ? step(path[from]!, path[to + 1]!) : 0);
        // A smaller gain is rounding, and would never end.
        if (then >= now * (1 - FIGURE_ROUNDING)) continue;
        path.splice(from, to - from + 1, ...path.slice(from, to + 1).reverse());
        improved = true;
      }
    }
  }
  return path;
}

function nearestFirst(count: number, step: StepCost): number[] {
  const path: number[] = [];
  const left = new Set(Array.from({ length: count }, (_, stop) => stop));
  while (left.size > 0) {
    const here = path.at(-1) ?? START;
    let nearest = START;
    for (const stop of left) {
      if (nearest === START || step(here, stop) < step(here, nearest)) nearest = stop;
    }
    path.push(nearest);
    left.delete(nearest);
  }
  return path;
}
