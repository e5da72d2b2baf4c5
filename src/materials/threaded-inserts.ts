import { z } from 'zod';
import table from '../../shared/tables/threaded-inserts.json';
import { figure } from './figure.ts';

/** A screw-in insert, mm. Sizes are from memory: the insert in hand is to be measured. */
export interface ThreadedInsert {
  readonly thread: string;
  /** Over its outside thread. */
  readonly outer: number;
  readonly length: number;
  /** Diameters between which the hole for it lies: the smaller in softwood, the larger in hardwood. */
  readonly leastPilot: number;
  readonly mostPilot: number;
}

const size = z.number().positive();
const insertTable = z.object({
  sizes: z.object({
    rows: z.array(
      z.object({ thread: z.string(), outer: size, length: size, leastPilot: size, mostPilot: size }),
    ),
  }),
  rules: z.object({ deeper: figure, edgeInOuterDiameters: figure, leftAbove: figure }),
});

const { sizes, rules } = insertTable.parse(table);

/** Usual inserts, smallest first. Source: shared/tables/threaded-inserts.json. */
export const THREADED_INSERTS: readonly ThreadedInsert[] = sizes.rows;

/** By how much (mm) a hole is deeper than its insert; wood left to an edge, in outer diameters; wood left above a blind hole, mm. */
export const INSERT_RULES = rules;
