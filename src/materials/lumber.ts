import { z } from 'zod';
import table from '../../shared/tables/lumber.json';
import { MM_PER } from '../measure/index.ts';
import { figure } from './figure.ts';

/** Rough hardwood as it is sold. */
export interface RoughBoard {
  /** Of an inch: 6 is sold as 6/4. */
  readonly quarters: number;
  /** mm. */
  readonly rough: number;
  /** Planed on both sides, mm, at least. */
  readonly surfaced: number;
}

const size = z.number().positive();
const lumberTable = z.object({
  rough: z.object({ rows: z.array(z.object({ quarters: size, rough: size, surfaced: size })) }),
  resaw: z.object({
    leastKerf: figure,
    mostKerf: figure,
    leastPlaning: figure,
    leastDrying: figure,
    wide: figure,
  }),
});

const { rough, resaw } = lumberTable.parse(table);

/** Thicknesses that rough boards are sold in, thinnest first. Source: shared/tables/lumber.json. */
export const ROUGH_BOARDS: readonly RoughBoard[] = rough.rows.map((row) => ({
  quarters: row.quarters,
  rough: row.rough * MM_PER.in,
  surfaced: row.surfaced * MM_PER.in,
}));

/** What usual saws take (mm of kerf), what sawn faces and leaves that dry out of true want, mm, and from which width on more. */
export const RESAW_RULES = resaw;
