import { z } from 'zod';
import { dayText, nameText, strictObject, typedLength } from './strict-schema.ts';

/** Factors found by printing and measuring the calibration sheet, along the paper's own edges. */
export const calibrationSchema = strictObject({
  long: z.number().positive(),
  short: z.number().positive(),
  date: dayText,
  printer: nameText.optional(),
  /** mm: what the rule read on that day, so that the same reading is not taken twice. */
  readings: strictObject({
    long: z.number().positive().optional(),
    short: z.number().positive().optional(),
  }).optional(),
});

export const paperSchema = strictObject({
  size: z.union(
    [
      nameText,
      strictObject({ width: typedLength, height: typedLength }),
      strictObject({ roll: typedLength, longest: typedLength }),
    ],
    {
      error: 'a paper by its name, such as "A4", or { "width", "height" }, or { "roll", "longest" }',
    },
  ),
  orientation: z.enum(['portrait', 'landscape', 'fewest']),
  margins: strictObject({ top: typedLength, right: typedLength, bottom: typedLength, left: typedLength }),
  overlap: typedLength,
  calibration: calibrationSchema.optional(),
});

/** How the sheets lie under one pattern, kept so that a reprinted sheet fits the ones already taped. */
export const pinnedGridSchema = strictObject({
  /** The paper it was chosen for; on another paper it is chosen anew. */
  paper: z.string().max(200),
  orientation: z.enum(['portrait', 'landscape']),
  /** Degrees, anticlockwise. */
  turn: z.number().min(-360).max(360),
  /** mm. */
  shift: strictObject({ x: z.number().min(-1e5).max(1e5), y: z.number().min(-1e5).max(1e5) }),
});
