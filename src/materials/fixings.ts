import { z } from 'zod';
import table from '../../shared/tables/fixings.json';

const size = z.number().positive();
const fixingTable = z.object({
  screw: z.object({ room: size, fromCut: size, fromEnd: size, wideEnd: size }),
  tape: z.object({ leastWidth: size, width: size, length: size, fromEdge: size, spacing: size }),
});

/** Lengths in mm, all common practice. Source: shared/tables/fixings.json. */
export const {
  /** Room a screw takes; its distance from the cut and from a sawn edge; width of an end that takes two. */
  screw: SCREW,
  /** Least width of a part that tape alone may hold; a strip's size, its distance from an edge, and from strip to strip. */
  tape: TAPE,
} = fixingTable.parse(table);
