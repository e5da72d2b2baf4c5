import { z } from 'zod';
import table from '../../shared/tables/wood-screws.json';
import { MM_PER } from '../measure/index.ts';

/** Holes for a wood screw, diameters in mm. */
export interface WoodScrew {
  /** 6 for a No. 6. */
  readonly number: number;
  readonly diameter: number;
  readonly pilot: { readonly hardwood: number; readonly softwood: number };
  /** Hole in the piece that is screwed down. */
  readonly shank: number;
}

const size = z.number().positive();
const screwTable = z.object({
  unit: z.literal('in'),
  rows: z.array(
    z.object({ number: size, diameter: size, hardwoodPilot: size, softwoodPilot: size, shank: size }),
  ),
});

/** Wood screws by number, thinnest first. Source: shared/tables/wood-screws.json. */
export const WOOD_SCREWS: readonly WoodScrew[] = screwTable.parse(table).rows.map((row) => ({
  number: row.number,
  diameter: row.diameter * MM_PER.in,
  pilot: { hardwood: row.hardwoodPilot * MM_PER.in, softwood: row.softwoodPilot * MM_PER.in },
  shank: row.shank * MM_PER.in,
}));
