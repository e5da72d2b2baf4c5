import { z } from 'zod';
import { baseSchema, cutSchema, measuredSchema } from './base-schema.ts';
import type { DeepReadonly } from './deep-readonly.ts';
import { paperSchema, pinnedGridSchema } from './paper-schema.ts';
import { dayText, nameText, siteText, strictObject, typedValue, unitsSchema } from './strict-schema.ts';
import { toolingSchema } from './tooling-schema.ts';
import { woodSchema } from './wood-schema.ts';

/** What this program writes; raised whenever a file of the version before would be read otherwise. */
export const DESIGN_VERSION = 1;

export const patternViewSchema = z.enum(['part', 'template', 'as-routed', 'all']);

export const patternRequestSchema = strictObject({
  part: nameText,
  view: patternViewSchema,
  mirrored: z.boolean(),
});

/**
 * The file a maker keeps. Lengths and angles stay as they were typed. The form's text is kept line by line inside the
 * design, so that an old template fits for ever, whatever becomes of the form.
 */
export const designSchema = strictObject({
  legwright: z.literal(DESIGN_VERSION),
  name: nameText,
  revision: strictObject({ index: nameText.max(12), date: dayText }),
  units: unitsSchema,
  form: strictObject({
    name: nameText,
    version: z.int().min(1),
    text: z.array(z.string().max(10_000)).min(1).max(20_000),
  }),
  /** As typed; what is not given takes the form's default. */
  parameters: z.record(nameText, typedValue),
  tooling: toolingSchema,
  paper: paperSchema,
  patterns: z.array(patternRequestSchema).min(1).max(500),
  /** By the pattern's name: one grid for each paper it was printed on. */
  grids: z.record(nameText, z.array(pinnedGridSchema).max(100)),
  /** What was measured on the work itself goes before what was decided. */
  measured: measuredSchema,
  cut: cutSchema.optional(),
  base: baseSchema.optional(),
  wood: woodSchema.optional(),
  /** Where the app is found, so that links and square codes of the design lead there. */
  site: siteText.optional(),
});

export type Design = DeepReadonly<z.output<typeof designSchema>>;
export type PatternRequest = Design['patterns'][number];
export type PinnedGrid = DeepReadonly<z.output<typeof pinnedGridSchema>>;
export type TypedPaper = Design['paper'];
export type TypedTooling = Design['tooling'];
export type TypedWood = NonNullable<Design['wood']>;
export type TypedLength = string | number;
