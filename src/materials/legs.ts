import { z } from 'zod';
import table from '../../shared/tables/legs.json';

const legTable = z.object({
  grain: z.object({ caution: z.number().positive(), stop: z.number().positive() }),
  splay: z.object({ mostDegrees: z.number().positive() }),
});

const { grain, splay } = legTable.parse(table);

/** Slope of grain (rise over run) from which a limb is flagged and refused (common practice). */
export const GRAIN_SLOPE = grain;

/** Splay (rad) past which a leg suffers short grain and catches toes (common practice). */
export const MOST_SPLAY = (splay.mostDegrees * Math.PI) / 180;
