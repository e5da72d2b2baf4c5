import { z } from 'zod';
import table from '../../shared/tables/cutters.json';

const cutterTable = z.object({
  maximumSpeed: z.object({
    rows: z.array(z.object({ upTo: z.number().positive(), perMinute: z.number().positive() })).min(1),
  }),
  depthOfPass: z.object({ shareOfDiameter: z.number().positive(), most: z.number().positive() }),
  through: z.object({ value: z.number().positive() }),
  overlapOfPasses: z.object({ value: z.number().positive() }),
});

const { maximumSpeed, depthOfPass, through, overlapOfPasses } = cutterTable.parse(table);

/** How far a cutter should reach past the far face of the work, mm (common practice). */
export const THROUGH = through.value;

/** How far two settings of one cut should overlap, mm (common practice). */
export const PASS_OVERLAP = overlapOfPasses.value;

/**
 * Highest speed (turns a minute) of a router cutter of this diameter (mm); nothing for one larger than any in the table.
 * The figure on the shank goes before it. Source: shared/tables/cutters.json.
 */
export function highestSpeed(diameter: number): number | undefined {
  return maximumSpeed.rows.find((row) => diameter <= row.upTo)?.perMinute;
}

/** Usual depth (mm) of one pass with a cutter of this diameter (mm): half of it, up to 1/4 in (common practice). */
export function usualDepthOfPass(diameter: number): number {
  return Math.min(depthOfPass.most, diameter * depthOfPass.shareOfDiameter);
}
