import { z } from 'zod';
import table from '../../shared/tables/clearance-holes.json';
import { MM_PER } from '../measure/index.ts';

const size = z.number().positive();
const holes = z.object({
  unit: z.enum(['mm', 'in']),
  source: z.string(),
  rows: z.array(z.object({ thread: z.string(), fine: size, medium: size, coarse: size })),
});
const { metric, inch } = z.object({ metric: holes, inch: holes }).parse(table);

export type HoleFit = 'fine' | 'medium' | 'coarse';

/**
 * Diameter (mm) of the hole that a bolt of this thread (`M6`, `#10`, `1/4`) passes through; nothing for a thread that the table does not
 * know. Fine, medium and coarse are the series of ISO 273; close, normal and loose of ASME B18.2.8 for inch threads.
 */
export function clearanceHole(thread: string, fit: HoleFit = 'medium'): number | undefined {
  for (const { unit, rows } of [metric, inch]) {
    const row = rows.find((candidate) => candidate.thread === thread);
    if (row !== undefined) return row[fit] * MM_PER[unit];
  }
  return undefined;
}
