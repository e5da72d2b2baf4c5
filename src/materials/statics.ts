import { z } from 'zod';
import table from '../../shared/tables/statics.json';
import { figure } from './figure.ts';

const staticsTable = z.object({
  loading: z.object({ fromEdge: figure, gravity: figure }),
  loads: z.object({ table: figure, desk: figure, bench: figure, stool: figure, tips: figure }),
  sag: z.object({ shows: figure, design: figure, creep: figure, stressShare: figure }),
  errors: z.object({
    sawSetting: figure,
    length: figure,
    template: figure,
    gapHides: figure,
    gapShows: figure,
  }),
});

/** Source: shared/tables/statics.json. */
export const {
  /** How far in from the top's edge (mm) a load that tips stands, and the acceleration of free fall, m/s². */
  loading: TIPPING_LOAD,
  /** What stands on a top, kg, by its use; and what one puts on its edge. */
  loads: STANDING_LOADS,
  /** Sag that shows and sag to design for (mm for each mm of span), what creep makes of it, share of the strength to count on. */
  sag: SAG_LIMITS,
  /** How far saws (rad), lengths and templates (mm) are usually off, and what gap (mm) hides or shows. */
  errors: USUAL_ERRORS,
} = staticsTable.parse(table);
