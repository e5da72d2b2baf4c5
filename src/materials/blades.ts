import { z } from 'zod';
import table from '../../shared/tables/blades.json';
import { MM_PER } from '../measure/index.ts';

const bladeTable = z.object({
  unit: z.literal('in'),
  rows: z.array(z.object({ width: z.number().positive(), radius: z.number().positive() })).min(1),
});

const ROWS = bladeTable
  .parse(table)
  .rows.map(({ width, radius }) => ({ width: width * MM_PER.in, radius: radius * MM_PER.in }))
  .sort((a, b) => a.width - b.width);

/** A metric blade counts as the inch size it is sold for: 6 mm for 1/4 in, 13 mm for 1/2 in. */
const SAME_WIDTH = 0.5;

/**
 * Least radius (mm) that a band-saw blade of this width (mm, tooth to back) follows. A width between two rows of the table
 * counts as the wider. Nothing for a blade wider than any in the table. Source: shared/tables/blades.json.
 */
export function leastRadiusOfBlade(width: number): number | undefined {
  return ROWS.find((row) => width <= row.width + SAME_WIDTH)?.radius;
}
