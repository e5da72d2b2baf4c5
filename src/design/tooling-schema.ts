import { z } from 'zod';
import { nameText, strictObject, typedLength } from './strict-schema.ts';

/** A bit: its diameter and how much of it cuts. */
export const cutterSchema = strictObject({
  name: nameText.optional(),
  diameter: typedLength,
  cuttingLength: typedLength,
  shank: typedLength.optional(),
});

/** What follows the template. */
export const guideSchema = z.discriminatedUnion(
  'kind',
  [
    strictObject({
      kind: z.literal('bearing'),
      name: nameText.optional(),
      diameter: typedLength,
      at: z.enum(['tip', 'shank']),
    }),
    strictObject({
      kind: z.literal('bushing'),
      name: nameText.optional(),
      outsideDiameter: typedLength,
      barrelLength: typedLength,
    }),
  ],
  { error: 'a guide of kind "bearing" or "bushing"' },
);

export const bladeSchema = strictObject({ name: nameText.optional(), width: typedLength });

export const machineSchema = z.enum(['hand-held', 'table']);

export const toolingSchema = strictObject({
  machine: machineSchema,
  cutter: cutterSchema,
  guide: guideSchema,
  templateThickness: typedLength,
  runOn: typedLength,
  sawAllowance: typedLength,
  endAllowance: typedLength.optional(),
  cutters: z.array(cutterSchema).max(200),
  blades: z.array(bladeSchema).max(200),
});
