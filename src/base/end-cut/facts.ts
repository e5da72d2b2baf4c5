import { z } from 'zod';
import table from '../../../shared/tables/end-cuts.json';
import { MM_PER, RAD_PER_DEGREE } from '../../measure/index.ts';

const positive = z.number().positive();
const facts = z
  .object({
    sameSetting: z.object({ degrees: positive }),
    rip: z.object({ degreesFromLength: positive }),
    strike: z.object({ overMm: positive, overIn: positive }),
    rise: z.object({ overMm: positive, overIn: positive }),
    slip: z.object({ degrees: positive }),
    wedge: z.object({ mostDegrees: positive }),
    offcut: z.object({ mm: positive, in: positive }),
  })
  .parse(table);

/** Settings of a saw closer than this (rad) are one (common practice). */
export const SAME_SETTING = facts.sameSetting.degrees * RAD_PER_DEGREE;
/** A cut that runs this near (rad) to the length is ripped (common practice). */
export const RIP_WITHIN = facts.rip.degreesFromLength * RAD_PER_DEGREE;
/** Widths (mm) of the board on whose edge an angle is struck. */
export const STRIKE = { metric: facts.strike.overMm, inch: facts.strike.overIn * MM_PER.in } as const;
/** Runs (mm) over which a rise is given. */
export const RUN = { metric: facts.rise.overMm, inch: facts.rise.overIn * MM_PER.in } as const;
/** How far (rad) a setting by scale is usually off (common practice). */
export const USUAL_SLIP = facts.slip.degrees * RAD_PER_DEGREE;
/** Steepest wedge (rad) that is used loose (common practice). */
export const STEEPEST_WEDGE = facts.wedge.mostDegrees * RAD_PER_DEGREE;
/** A piece shorter than this (mm) is clamped, not held: a round figure in either unit (common practice). */
export const HAND_CLEARANCE = { metric: facts.offcut.mm, inch: facts.offcut.in * MM_PER.in } as const;
