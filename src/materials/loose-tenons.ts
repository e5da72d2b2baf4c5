import { z } from 'zod';
import table from '../../shared/tables/loose-tenons.json';

/** A loose tenon with rounded edges, mm: its length runs into both parts. */
export interface LooseTenonSize {
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
}

const size = z.number().positive();
const tenonTable = z.object({
  sizes: z.object({ rows: z.array(z.object({ thickness: size, width: size, length: size })).min(1) }),
});

/** Sizes that a shop often makes for itself. Source: shared/tables/loose-tenons.json; a maker's own list goes before it. */
export const USUAL_LOOSE_TENONS: readonly LooseTenonSize[] = tenonTable.parse(table).sizes.rows;
