import { z } from 'zod';
import type { DeepReadonly } from './deep-readonly.ts';
import { patternViewSchema } from './design-schema.ts';
import { edgeSchema, pointSchema, regionSchema } from './region-schema.ts';
import { resultBaseSchema } from './result-base-schema.ts';
import { resultWoodSchema } from './result-wood-schema.ts';
import { dayText, nameText, strictObject } from './strict-schema.ts';

export const RESULT_VERSION = 1;

const quantitySchema = strictObject({ value: z.number(), unit: z.enum(['mm', 'rad', 'mm2', 'none']) });

const handSchema = z
  .enum(['left', 'right', 'as drawn', 'mirrored'])
  .describe('A part without hands is made as drawn or, where a pattern of it is asked for so, mirrored');

const findingSchema = strictObject({
  code: z.string(),
  severity: z.enum(['stop', 'caution', 'note']),
  part: nameText.optional(),
  hand: handSchema.optional().describe('The one hand it holds for; every hand of the part when absent'),
  joint: z
    .string()
    .optional()
    .describe('The form’s name of the joint it speaks of; of two, joined by a blank'),
  edges: z.array(nameText).describe('Identities of the edges it speaks of'),
  at: pointSchema.optional().describe('Place in the part’s own plane as drawn, mm'),
  message: z.string(),
  measured: quantitySchema.optional(),
  limit: quantitySchema.optional(),
  cure: z.string().optional(),
  set: strictObject({
    path: z.string().describe('Where it stands in the design, names joined by dots'),
    value: z.unknown().describe('What to put there, as typed'),
    words: z.string(),
  })
    .optional()
    .describe('A figure that cures it, tried by computing again'),
  fits: strictObject({
    kind: z.enum(['tenon', 'dowel']),
    thickness: z.number(),
    width: z.number(),
    length: z.number(),
  })
    .optional()
    .describe('A loose tenon or dowel made to measure that would fit, mm'),
});

const cutterSchema = strictObject({
  name: nameText.optional(),
  diameter: z.number(),
  cuttingLength: z.number(),
  shank: z.number().optional(),
});

const feedSchema = z.array(
  strictObject({
    edge: nameText,
    grain: z.enum(['with', 'against', 'neutral', 'end']),
    path: edgeSchema.describe('In the direction in which the tool is fed'),
  }),
);

const routingSchema = strictObject({
  offset: z.number().describe('(guide − cutter) / 2, mm'),
  offsets: z.array(
    strictObject({
      edge: nameText,
      offset: z.number().describe('mm from the part’s edge into the wood'),
      across: z.number().optional().describe('By how much the opening in the template is wider, mm'),
    }),
  ),
  template: z.array(regionSchema),
  asRouted: z.array(regionSchema),
  blank: z.array(regionSchema),
  differences: z
    .array(
      strictObject({
        kind: z.enum(['left', 'lost']),
        at: pointSchema,
        reach: z.number().describe('Farthest from the drawn outline, mm'),
        area: z.number().describe('mm²'),
        edges: z.array(nameText),
        region: regionSchema,
      }),
    )
    .describe('Where what the cutter leaves differs from the part drawn'),
  feed: feedSchema.describe('Of the part as drawn; `hands` has that of each hand'),
  tightest: strictObject({ radius: z.number(), at: pointSchema, edge: nameText }).optional(),
  largestCutter: cutterSchema.optional(),
  blade: strictObject({ width: z.number(), leastRadius: z.number() }).optional(),
  depthPossible: z.boolean(),
});

const partSchema = strictObject({
  name: nameText,
  label: z.string(),
  thickness: z.number().describe('mm'),
  grain: z.number().describe('Direction in the part’s plane, rad, wherever no piece says otherwise'),
  pieces: z
    .array(
      strictObject({
        name: nameText,
        label: z.string(),
        leftOf: strictObject({ from: pointSchema, to: pointSchema }),
        grain: z.number().describe('Direction in the part’s plane, rad'),
      }),
    )
    .describe('Pieces glued on before shaping, each left of a line without ends, with a grain of its own'),
  up: z.number().describe('Direction in the part’s plane, rad'),
  quantity: strictObject({ left: z.int(), right: z.int() }),
  hands: z
    .array(
      strictObject({
        name: handSchema,
        mirrored: z.boolean(),
        quantity: z.int(),
        feed: feedSchema.describe('In the plane of this hand: turned over where it is mirrored'),
      }),
    )
    // Results of earlier versions have none.
    .optional()
    .describe('The hands that it is made in; the cutter turns one way, so that each has its own feed'),
  outline: regionSchema,
  dimensions: z.array(
    strictObject({
      kind: z.enum(['length', 'angle', 'radius']),
      name: nameText,
      label: z.string(),
      value: z.number().describe('mm; of an angle rad'),
    }),
  ),
  routing: routingSchema,
});

const matrixSchema = z
  .tuple([z.number(), z.number(), z.number(), z.number(), z.number(), z.number()])
  .describe('a, b, c, d, e, f: x → a x + c y + e, y → b x + d y + f');

const sheetSchema = strictObject({
  row: z.int().describe('From the top, from 1'),
  place: z.int().describe('From the left, from 1'),
  page: z.int().describe('Page of the pattern’s PDF, from 1'),
  toPattern: matrixSchema.describe(
    'From the sheet as it lies printed at true size (mm from its lower left corner, y up) to the pattern’s plane',
  ),
  digest: z.string().describe('Alike for two sheets with the same print'),
});

const patternSchema = strictObject({
  name: nameText,
  title: z.string(),
  part: nameText,
  view: patternViewSchema,
  mirrored: z.boolean(),
  file: z.string().optional().describe('The PDF, beside the result'),
  regions: strictObject({
    designed: z.array(regionSchema),
    template: z.array(regionSchema),
    asRouted: z.array(regionSchema),
  }).describe('In the pattern’s plane: turned over where the pattern is mirrored'),
  checks: z.array(
    strictObject({ name: nameText, from: pointSchema, to: pointSchema, nominal: z.number().describe('mm') }),
  ),
  paper: strictObject({
    name: nameText,
    width: z.number().describe('Of the page as turned, mm'),
    height: z.number().describe('Of the page as turned, mm'),
    calibration: strictObject({ long: z.number(), short: z.number() }),
  }),
  rows: z.int(),
  places: z.int(),
  sheets: z.array(sheetSchema),
});

/** What `make` writes for other programs to read, and for a later `--since`. Lengths in mm, angles in radians, y up. */
export const resultSchema = strictObject({
  'legwright-result': z.literal(RESULT_VERSION),
  design: strictObject({
    name: nameText,
    revision: strictObject({ index: nameText, date: dayText }),
    form: strictObject({ name: nameText, version: z.int() }),
    file: nameText.optional().describe('Name of the design’s own file, without its folder'),
  }),
  parameters: z
    .record(
      nameText,
      z.union([z.number(), z.string(), z.boolean()], {
        error: 'a number, a text in double quotes, true or false',
      }),
    )
    .describe('In force; lengths in mm, angles in rad'),
  parts: z.array(partSchema),
  base: resultBaseSchema.optional().describe('Of a form that places its parts in space'),
  wood: resultWoodSchema.optional().describe('Of such a form: what follows for its wood'),
  patterns: z.array(patternSchema),
  findings: z.array(findingSchema),
  files: z.array(z.string()).describe('Everything written with this result, beside it'),
});

export type WrittenResult = DeepReadonly<z.output<typeof resultSchema>>;

/** The JSON Schema (draft 2020-12) of a result, made from the schema that the program itself reads with. */
export function resultJsonSchema(): object {
  return z.toJSONSchema(resultSchema, { target: 'draft-2020-12', reused: 'ref' });
}
