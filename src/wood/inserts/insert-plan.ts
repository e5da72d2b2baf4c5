import type { StandingBase, TopFixings } from '../../base/index.ts';
import { norm, type Vec } from '../../geometry/index.ts';
import { INSERT_RULES, THREADED_INSERTS, type Wood } from '../../materials/index.ts';
import type { Insert, InsertPlan, InsertRow } from './api.ts';

/**
 * The usual insert of a thread: its hole the wider the harder the wood, at the larger diameter in hardwood and the smaller in softwood. Nothing
 * for a thread that the table does not know. Sizes are from memory: measure the insert in hand.
 */
export function usualInsert(thread: string, { kind }: Pick<Wood, 'kind'>): Insert | undefined {
  const row = THREADED_INSERTS.find((each) => each.thread === thread);
  if (row === undefined) return undefined;
  const { outer, length, leastPilot, mostPilot } = row;
  return { thread, outer, length, pilot: kind === 'hardwood' ? mostPilot : leastPilot };
}

/** Where the inserts of a top go: one over each fixing of the base. Holes are drilled a little deeper than the insert is long. */
export function insertPlan(
  { points }: Pick<TopFixings, 'points'>,
  top: StandingBase['top'],
  insert: Insert,
): InsertPlan {
  const depth = insert.length + INSERT_RULES.deeper.value;
  const parts = [...new Set(points.map(({ part }) => part))];
  const rows = parts.map((part): InsertRow => {
    const own = points.filter((each) => each.part === part);
    return { part, footprint: own[0]!.footprint, holes: own.map(({ at }) => at) };
  });
  const edges = points.map(({ at }) => toEdge(at, top) - insert.pilot / 2);
  return { insert, depth, left: top.thickness - depth, rows, leastEdge: Math.min(...edges) };
}

/** How far (mm) a place lies within the top's edge; of an oval one at least so far. */
function toEdge({ x, y }: Vec, { shape, length, width }: StandingBase['top']): number {
  const [a, b] = [length / 2, width / 2];
  if (shape === 'rectangle') return Math.min(a - Math.abs(x), b - Math.abs(y));
  return (1 - norm(x / a, y / b)) * Math.min(a, b);
}
