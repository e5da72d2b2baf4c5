import { RESIDUE_TOLERANCE } from '../../geometry/index.ts';
import type { InsertSize, JointPlace } from './api.ts';
import { mostInto } from './depths-of-insert.ts';
import { roomAlong } from './rows-of-places.ts';
import type { FitRules } from './rules.ts';

/** Sizes made to measure are rounded down to this, mm: what a planer or a bit can be set to. */
const GRAIN = 0.5;

/** Thicknesses tried, from the one wanted downwards. */
const TRIES = 12;

/**
 * The piece that the wood of a joint would take: about a third of its thickness or what the walls leave, as wide as the rules allow, reaching equally
 * far into both parts. A round one where pieces are to be many (dowels). Nothing when it would be thinner than anyone makes, or when `fits` refuses it.
 */
export function madeToMeasure(
  { contact, behind }: JointPlace,
  rules: FitRules,
  thickness: number,
  fits: (size: InsertSize) => boolean,
): InsertSize | undefined {
  const depth = Math.min(...behind.map((wood) => mostInto(wood, rules).most));
  const most = Math.min(
    Math.max(rules.thicknessShare * thickness, rules.leastThickness),
    thickness - 2 * rules.wall,
    depth / rules.leastDepth,
  );
  for (let k = 0; k < TRIES; k++) {
    const thick = roundDown(most - k * GRAIN);
    if (thick < rules.leastThickness) return undefined;
    const room = roomAlong(contact, thick, rules);
    if (room === undefined) continue;
    const isRound = rules.leastCount > 1;
    const width = isRound ? thick : roundDown(Math.min(room.width, rules.lengthShare * room.long));
    const length = 2 * roundDown(Math.min(depth, MOST_REACH * thick));
    const size = { thickness: thick, width, length };
    if (width >= thick && fits(size)) return size;
  }
  return undefined;
}

/** Thicknesses that a piece reaches into each part at most: five in all. */
const MOST_REACH = 2.5;

const roundDown = (value: number): number => Math.floor((value + RESIDUE_TOLERANCE) / GRAIN) * GRAIN;
