import type { DowelSize } from '../../materials/index.ts';
import type { JointOutcome, JointPlace } from './api.ts';
import { layOutJoint } from './lay-out-joint.ts';
import { type DowelRules, dowelRules, fitOfDowels } from './rules.ts';

/** Lays out dowels from the maker's list of sizes, mm. The rules are those of the trade, each of which the maker may replace. */
export function layOutDowels(
  place: JointPlace,
  sizes: readonly DowelSize[],
  own: Partial<DowelRules> = {},
): JointOutcome {
  const inserts = sizes.map(({ diameter, length }) => ({ thickness: diameter, width: diameter, length }));
  return layOutJoint(place, inserts, fitOfDowels(dowelRules(own)));
}
