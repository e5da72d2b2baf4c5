import { z } from 'zod';
import { pointSchema, regionSchema } from './region-schema.ts';
import { nameText, strictObject } from './strict-schema.ts';

const toBoardSchema = z
  .tuple([z.number(), z.number(), z.number(), z.number(), z.number(), z.number()])
  .describe(
    'a, b, c, d, e, f: x → a x + c y + e, y → b x + d y + f, mm; turned over where a d − b c is negative',
  );

const movementSchema = strictObject({
  shrinks: z.number().describe('Narrower than made in the driest air, mm'),
  swells: z.number().describe('Wider than made in the dampest air, mm'),
  range: z.number().describe('From narrowest to widest, mm'),
  method: z.enum(['coefficient', 'shrinkage']),
});

const movingSchema = strictObject({
  part: nameText,
  wood: nameText,
  sawn: z.enum(['flat', 'quarter']),
  width: z.number().describe('Across the grain, mm'),
  across: movementSchema,
  through: movementSchema.describe('Of the thickness'),
});

const leafSchema = strictObject({
  board: nameText.optional().describe('Absent where the boards give too few leaves'),
  leaf: z.int().describe('From the board’s upper face down, from 1'),
  piece: nameText.describe('Identity of the placed piece'),
  face: z.enum(['face', 'back']),
  shows: z.enum(['upper', 'lower']).describe('The face of the leaf that shows'),
  markedEnd: z.enum(['up', 'down', 'left', 'right']).describe('Where the board’s marked end points'),
  inner: z.enum(['near', 'far']).describe('The edge of the board that lies inwards'),
  toBoard: toBoardSchema.describe('From the piece’s own plane to the board’s'),
});

const matchSchema = strictObject({
  name: nameText,
  arrangement: z.enum(['book', 'slip', 'radial']),
  resaw: strictObject({
    name: nameText,
    leaves: z.int(),
    rough: z.number(),
    asSawn: z.number().describe('Each leaf off the saw, mm'),
    thinnest: z.number().describe('As glued, mm'),
    reaches: z.number().describe('What leaf and backing come to, mm'),
    finished: z.number(),
  }),
  frames: z.array(strictObject({ name: z.string(), pieces: z.array(nameText) })),
  leaves: z.array(leafSchema),
  drift: z.array(
    strictObject({
      between: z.tuple([nameText, nameText]),
      kind: z.enum(['mates', 'frames', 'neighbours']),
      apart: z
        .number()
        .optional()
        .describe('Wood taken between the faces that show, mm; absent of two boards'),
      mostApart: z.number().optional().describe('The same, if the saw drifts, mm'),
    }),
  ),
});

const boardSchema = strictObject({
  name: nameText,
  kind: z.enum(['board', 'sheet']),
  length: z.number(),
  width: z.number(),
  thickness: z.number(),
  yield: z.number().describe('Share of its face that ends up in parts'),
  boardFeet: z.number().describe('0 for a sheet'),
  cubicMetres: z.number(),
  price: z.number().optional(),
  currency: z.string().optional(),
  laid: z.array(
    strictObject({
      part: nameText,
      pieces: z.array(nameText).describe('The uppermost leaf first'),
      outline: regionSchema.describe('On the board: x from its marked end, y from its near edge'),
      toBoard: toBoardSchema.describe('From the part’s own plane'),
    }),
  ),
  offcuts: z.array(
    strictObject({
      area: z.number().describe('mm²'),
      rectangle: strictObject({ from: pointSchema, to: pointSchema })
        .optional()
        .describe('The largest one along the board clear of defects'),
    }),
  ),
});

/** What a result says of the wood of a base. */
export const resultWoodSchema = strictObject({
  moisture: strictObject({
    made: z.number().describe('%, as worked'),
    driest: z.number().describe('% in the driest air'),
    dampest: z.number().describe('% in the dampest air'),
  }).optional(),
  movement: z.array(movingSchema).describe('Of parts over a year, the widest first; real boards move less'),
  top: movementSchema.describe('Of the top across its grain'),
  matches: z.array(matchSchema),
  boards: z.array(boardSchema).describe('Boards that are cut into; none where they cannot be read'),
  unlaid: z.array(strictObject({ part: nameText, pieces: z.array(nameText) })),
  faults: z.array(z.string()).describe('What is wrong with where things lie'),
});
