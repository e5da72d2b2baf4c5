import { ROUGH_BOARDS, type RoughBoard } from '../../materials/index.ts';
import type { ResawPlan } from './api.ts';
import { resawStack } from './resaw-stack.ts';

/** More leaves than this nobody takes from one board. */
const MOST_LEAVES = 50;

/** mm: below this a board is thick enough but for rounding. */
const TRIFLE = 1e-9;

/**
 * How thick (mm) a rough board must be for the piece to reach its finished thickness with as many leaves as planned, also where the saw
 * drifts as far as it may: the plan turned round. It may be thinner than the leaves' own losses where the backing alone suffices: then as
 * thick as leaves of no thickness want.
 */
export function roughNeeded(plan: ResawPlan): number {
  const { flattening, kerf, leaves } = plan;
  const asSawn = Math.max(0, leafNeeded(plan)) + lossOfLeaf(plan);
  return flattening + leaves * asSawn + (leaves - 1) * kerf;
}

/** How thick (mm) the thinnest leaf must be as it is glued. */
export function leafNeeded({ finished, lastPlaning, backing, glued }: ResawPlan): number {
  return (finished + lastPlaning.show + lastPlaning.back - backing) / glued;
}

/** What the leaf that loses most loses between saw and glue, mm: a middle one where there is any. */
function lossOfLeaf({ leaves, planing, drying, drift }: ResawPlan): number {
  const faces = [...(leaves === 1 ? [0] : [1]), ...(leaves > 2 ? [2] : [])];
  const losses = faces.map((sawn) => sawn * (planing.sawn + drift) + (2 - sawn) * planing.outer);
  return Math.max(...losses) + drying;
}

/** The thinnest rough board that is sold and is thick enough; nothing where none is. */
export function boardNeeded(plan: ResawPlan): RoughBoard | undefined {
  const needed = roughNeeded(plan);
  return ROUGH_BOARDS.find(({ rough }) => rough >= needed - TRIFLE);
}

/** The most leaves that the board gives with every piece at its finished thickness, as planned or where the saw drifts; 0 where not one. */
export function mostLeaves(plan: ResawPlan, saw: 'as planned' | 'drifts'): number {
  const drift = saw === 'drifts' ? plan.drift : 0;
  for (let leaves = MOST_LEAVES; leaves > 0; leaves--) {
    const each = { ...plan, leaves, drift };
    if (plan.rough >= roughNeeded(each) - TRIFLE) return leaves;
  }
  return 0;
}

/** How thick (mm) a backing brings the piece to its finished thickness, also where the saw drifts; 0 where none is wanted. */
export function backingNeeded(plan: ResawPlan): number {
  const { leastReaches } = resawStack(plan);
  return Math.max(0, plan.backing + plan.finished - leastReaches);
}

/** How far (mm) the saw may drift before the piece falls short; 0 where it does at once, infinite where nothing is resawn. */
export function mostDrift(plan: ResawPlan): number {
  const least = leafNeeded(plan);
  const drifts = resawStack(plan).leaves.map(({ thickness, sawnFaces }) => {
    const slack = thickness - least;
    if (slack < 0) return 0;
    return sawnFaces === 0 ? Number.POSITIVE_INFINITY : slack / sawnFaces;
  });
  return Math.min(...drifts);
}
