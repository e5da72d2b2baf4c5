import { z } from 'zod';
import { baseSchema } from './base-schema.ts';
import type { DeepReadonly } from './deep-readonly.ts';
import { calibrationSchema, paperSchema } from './paper-schema.ts';
import { nameText, siteText, strictObject, typedLength, unitsSchema } from './strict-schema.ts';
import { bladeSchema, cutterSchema, guideSchema, machineSchema } from './tooling-schema.ts';
import { workshopWoodSchema } from './wood-schema.ts';

export const WORKSHOP_VERSION = 1;

/** In a workshop everything has a name, by which a design takes it over. */
const named = { name: nameText };

/** The maker's own tools, kept in one file beside the designs. What a design uses is copied into it. */
export const workshopSchema = strictObject({
  'legwright-workshop': z.literal(WORKSHOP_VERSION),
  units: unitsSchema,
  machine: machineSchema,
  /** The first of each list is the usual one. */
  cutters: z.array(cutterSchema.extend(named)).min(1).max(200),
  guides: z
    .array(z.intersection(guideSchema, z.looseObject(named)))
    .min(1)
    .max(200),
  blades: z.array(bladeSchema.extend(named)).max(200),
  templateThickness: typedLength,
  runOn: typedLength,
  sawAllowance: typedLength,
  printers: z.array(strictObject({ ...named, calibration: calibrationSchema.optional() })).max(50),
  paper: paperSchema.optional(),
  /** What a base is usually made of and with. */
  base: baseSchema.optional(),
  /** The air of shop and room, resaw plans, boards on the rack: what a design begins with. */
  wood: workshopWoodSchema.optional(),
  /** Where the app is found. */
  site: siteText.optional(),
});

export type Workshop = DeepReadonly<z.output<typeof workshopSchema>>;
