import { z } from 'zod';
import { MM_PER, RAD_PER_DEGREE } from '../measure/index.ts';

/** A published figure in internal units, with what a check says of where it comes from. */
export interface Figure {
  /** mm, rad, MPa, %, or a plain ratio. */
  readonly value: number;
  readonly source: string;
  /** `read`, `read-secondary`, `memory`, `computed`, `common practice`: see the head of its table. */
  readonly status: string;
}

/** Units in which tables print what is in other units inside. */
const TO_INTERNAL: Readonly<Record<string, number>> = {
  in: MM_PER.in,
  degrees: RAD_PER_DEGREE,
  'in per ft of span': MM_PER.in / MM_PER.ft,
};

/** Reads one figure of a table: inches come out as mm, degrees as rad. */
export const figure = z
  .object({
    value: z.number().positive(),
    unit: z.string().min(1),
    source: z.string().min(1),
    status: z.string().min(1),
  })
  .transform(
    ({ value, unit, source, status }): Figure => ({
      value: value * (TO_INTERNAL[unit] ?? 1),
      source,
      status,
    }),
  );
