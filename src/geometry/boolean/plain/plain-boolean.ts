import type { Outline } from '../../api.ts';
import type { Membership } from '../membership.ts';
import { keepStretches } from './keep-stretches.ts';
import { clearWorkspace, loadLoops } from './load-loops.ts';
import { orderEntries } from './order-entries.ts';
import { findPlainCrossings } from './plain-crossings.ts';
import { walkStretches } from './walk-stretches.ts';
import { WORKSPACE } from './workspace.ts';

/**
 * The loops that part what belongs from what does not, when all that the loops have in common are clear crossings: two edges
 * at an angle that leaves no doubt (PLAIN_ANGLE), no end and no second crossing near (PLAIN_CLEARANCE). Most outlines meet so, and then
 * there is nothing to snap, to lay together or to weigh: loops are cut at their crossings, one ray for each loop tells on which side of
 * the others it begins, every crossing passed changes that by one, and what is kept is read off edge by edge.
 *
 * Undefined as soon as anything is in doubt, or when there are too many edges to compare each with each: then the
 * arrangement decides.
 */
export function combinePlainly(
  first: readonly Outline[],
  second: readonly Outline[],
  belongs: Membership,
): Outline[] | undefined {
  const w = WORKSPACE;
  clearWorkspace(w);
  const known: Outline[] = [];
  if (!loadLoops(w, known, first, 0) || !loadLoops(w, known, second, 1)) return undefined;
  if (!findPlainCrossings(w) || !orderEntries(w) || !keepStretches(w, belongs)) return undefined;
  return walkStretches(w, known);
}
