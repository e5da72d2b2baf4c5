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

/**
 * A good path for many stops: always to the nearest, then improved while that is cheaper, by reversing stretches (2-opt) and by
 * moving stretches of up to three stops elsewhere, either way round (or-opt).
 */
export function goodPath(count: number, step: StepCost): readonly number[] {
  let path: readonly number[] = nearestFirst(count, step);
  for (let cost = costOfPath(path, step); ; ) {
    const better = cheaperNeighbour(path, cost, step);
    if (better === undefined) return path;
    path = better;
    cost = costOfPath(path, step);
  }
}

const LONGEST_MOVED = 3;

function cheaperNeighbour(
  path: readonly number[],
  cost: number,
  step: StepCost,
): readonly number[] | undefined {
  // A smaller gain is rounding, and would never end.
  const most = cost * (1 - FIGURE_ROUNDING);
  for (const neighbour of neighboursOf(path)) if (costOfPath(neighbour, step) < most) return neighbour;
  return undefined;
}

function* neighboursOf(path: readonly number[]): Generator<readonly number[]> {
  for (let from = 0; from < path.length; from++) {
    for (let to = from + 1; to < path.length; to++) {
      yield [...path.slice(0, from), ...path.slice(from, to + 1).reverse(), ...path.slice(to + 1)];
    }
    for (let size = 1; size <= LONGEST_MOVED && from + size <= path.length; size++) {
      const moved = path.slice(from, from + size);
      const rest = [...path.slice(0, from), ...path.slice(from + size)];
      for (let at = 0; at <= rest.length; at++) {
        yield [...rest.slice(0, at), ...moved, ...rest.slice(at)];
        yield [...rest.slice(0, at), ...moved.toReversed(), ...rest.slice(at)];
      }
    }
  }
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
