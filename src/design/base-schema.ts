import { z } from 'zod';
import { nameText, strictObject, typedLength } from './strict-schema.ts';

/** An angle as typed: text with or without a unit, or a bare number of degrees. */
const typedAngle = z.union([z.string().max(64), z.number()], {
  error: 'an angle such as "45°" or a bare number of degrees',
});

const bothWays = strictObject({ left: typedAngle, right: typedAngle });

/** Loose tenons that the maker has or makes. */
export const looseTenonSchema = strictObject({
  name: nameText.optional(),
  thickness: typedLength,
  width: typedLength,
  length: typedLength,
});

export const dowelSchema = strictObject({
  name: nameText.optional(),
  diameter: typedLength,
  length: typedLength,
});

/** How far the saw that cuts the ends swings and tilts, from square and from upright. */
export const sawSchema = strictObject({ swing: bothWays, tilt: bothWays });

const TENONS =
  'a list of loose tenons, [{ "thickness": "8 mm", "width": "25 mm", "length": "40 mm" }], or none of this name';
const DOWELS = 'a list of dowels, [{ "diameter": "10 mm", "length": "50 mm" }], or none of this name';

/** What a base needs besides its form; what is left out is as usual. */
export const baseSchema = strictObject({
  /** Species of the wood, by its name in the tool's table. */
  wood: nameText.optional(),
  /** Parts of another wood, by the form's name of the part. */
  woods: z.record(nameText, nameText).optional(),
  /** From which those that fit are chosen. */
  looseTenons: z
    .array(looseTenonSchema, { error: TENONS })
    .min(1, { error: TENONS })
    .max(100, { error: 'at most 100 loose tenons' })
    .optional(),
  dowels: z
    .array(dowelSchema, { error: DOWELS })
    .min(1, { error: DOWELS })
    .max(100, { error: 'at most 100 dowels' })
    .optional(),
  saw: sawSchema.optional(),
});

const typedValue = z.union([z.string().max(64), z.number(), z.boolean()]);

/** What the wood really came to: instead of a parameter as decided, and instead of a part's thickness or length in the form. */
export const measuredSchema = strictObject({
  parameters: z.record(nameText, typedValue).optional(),
  /** By the form's name of the part. */
  thickness: z.record(nameText, typedLength).optional(),
  /** Along the grain from long point to long point, tenons left out, by the form's name of the part; the parameter named gives way. */
  length: z.record(nameText, strictObject({ length: typedLength, by: nameText })).optional(),
});

/** Parts cut already, by the form's name, with the figures that they were cut to: they keep their shape whatever changes later. */
export const cutSchema = z.record(
  nameText,
  strictObject({
    revision: nameText,
    parameters: z.record(nameText, typedValue),
    measured: measuredSchema,
  }),
);
