import { z } from 'zod';
import table from '../../shared/tables/dowels.json';

/** A dowel as sold, mm. */
export interface DowelSize {
  readonly diameter: number;
  readonly length: number;
}

const size = z.number().positive();
const dowelTable = z.object({
  sizes: z.object({ rows: z.array(z.object({ diameter: size, lengths: z.array(size).min(1) })).min(1) }),
});

/** Usual dowels, thinnest and shortest first. Source: shared/tables/dowels.json; a maker's own list goes before it. */
export const USUAL_DOWELS: readonly DowelSize[] = dowelTable
  .parse(table)
  .sizes.rows.flatMap(({ diameter, lengths }) => lengths.map((length) => ({ diameter, length })));
