import type { InsertSize, JointOutcome, JointPlace } from './api.ts';
import { layOutJoint } from './lay-out-joint.ts';
import { fitOfTenons, type TenonRules, tenonRules } from './rules.ts';

/**
 * Lays out loose tenons from the maker's list of sizes, mm: mortises are slots with rounded ends along the joint's long direction. The rules
 * are those of the trade, each of which the maker may replace.
 */
export function layOutLooseTenons(
  place: JointPlace,
  sizes: readonly InsertSize[],
  own: Partial<TenonRules> = {},
): JointOutcome {
  return layOutJoint(place, sizes, fitOfTenons(tenonRules(own)));
}
