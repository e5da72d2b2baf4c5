import { z } from 'zod';
import { pointSchema, regionSchema } from './region-schema.ts';
import { nameText, strictObject } from './strict-schema.ts';

const vectorSchema = z
  .tuple([z.number(), z.number(), z.number()])
  .meta({ id: 'vector', description: 'x, y and z; of a place mm' });

const frameSchema = strictObject({
  origin: vectorSchema,
  x: vectorSchema,
  y: vectorSchema,
  z: vectorSchema,
}).describe(
  'World: x along the table’s length, y along its depth, z up, the floor at z = 0. A place (x, y) of the piece’s plane at height z lies at origin + x·x + y·y + z·z',
);

const placedSchema = strictObject({
  id: nameText.describe('Unique: the place’s name, numbered from its second copy on'),
  place: nameText,
  label: z.string(),
  mark: z
    .string()
    .describe(
      'As marked on the wood, seen by the sitter: FL is front left; empty where nothing tells it apart',
    ),
  part: nameText.describe('The part of `parts` that it is made as'),
  hand: z.enum(['left', 'right']).describe('Right is made with the pattern turned over'),
  turned: z.boolean().describe('It stands turned by half a turn in its plane from the pattern'),
  frame: frameSchema,
  thickness: z.number().describe('mm: the wood lies between z = 0 and z = −thickness'),
  face: z.array(regionSchema).describe('Outline of its face side, in its own plane'),
  back: z.array(regionSchema).describe('Outline of its back; it differs where an end is bevelled'),
});

const cutSchema = strictObject({
  name: nameText.describe('Name of the plane'),
  kind: z.enum(['end', 'rip', 'flat']).describe('Across the part, along its edge, or along its face'),
  fence: nameText
    .optional()
    .describe('Identity of the edge against the fence; absent where the part is sawn in its blank'),
  mitre: z.number().optional().describe('Of an end: rad from square, signed'),
  bevel: z.number().optional().describe('Of an end or a rip: rad from upright, signed'),
  arrises: z
    .array(
      strictObject({
        name: z.enum(['face-left', 'face-right', 'back-left', 'back-right']),
        length: z.number().describe('mm from the cut at the other end, or from the end of the blank'),
        at: vectorSchema.describe('In the part’s own frame'),
      }),
    )
    .optional()
    .describe('Of an end: the four long arrises of the part’s blank'),
});

const madeSchema = strictObject({
  part: nameText,
  members: z.array(nameText).describe('Identities of the placed pieces'),
  cuts: z.array(cutSchema),
});

const jointSchema = strictObject({
  id: nameText,
  name: nameText.describe('In the form'),
  label: z.string(),
  kind: z.enum(['loose-tenons', 'dowels', 'mortise-and-tenon', 'halved', 'glued', 'screwed']),
  between: z.tuple([nameText, nameText]).describe('Identities of the placed pieces'),
  contact: strictObject({
    area: z.number().describe('mm²'),
    frame: frameSchema.describe('The origin in the middle, z from the first piece into the second'),
  })
    .optional()
    .describe('Where they touch; absent where they touch only once they are halved'),
  tenons: strictObject({
    count: z.int(),
    thickness: z.number(),
    width: z.number(),
    length: z.number(),
  })
    .optional()
    .describe('Loose tenons that go in, mm'),
  dowels: strictObject({ count: z.int(), diameter: z.number(), length: z.number() })
    .optional()
    .describe('Dowels that go in, mm'),
  tenon: strictObject({ thickness: z.number(), width: z.number(), length: z.number() })
    .optional()
    .describe('The tenon left on the first piece, mm'),
  screw: z.int().optional().describe('Number of the wood screw'),
  glue: strictObject({
    area: z.number().describe('All faces that are glued, mm²'),
    longGrain: z.number().describe('The share of it where long grain lies on long grain'),
  }),
});

const boardSchema = strictObject({ thickness: z.number(), width: z.number(), length: z.number() }).describe(
  'mm; length along the grain',
);

const cutListSchema = strictObject({
  part: nameText,
  label: z.string(),
  count: z.int(),
  hands: strictObject({ left: z.int(), right: z.int() }),
  marks: z.array(z.string()),
  wood: nameText,
  finished: boardSchema,
  rough: boardSchema.describe('With what planing and sawing take, mm; length along the grain'),
});

const tippingSchema = strictObject({
  stands: z.boolean().describe('With nothing on it'),
  fromEdge: z.number().describe('How far in from the top’s edge the load stands, mm'),
  lines: z
    .array(
      strictObject({
        from: pointSchema,
        to: pointSchema,
        inside: z.number().describe('From the line to the centre of mass, mm; negative beyond it'),
        outside: z.number().describe('From the line to the load, mm; 0 or less never tips'),
        kilograms: z.number().optional().describe('What tips it over this line; absent where nothing does'),
      }),
    )
    .describe('Lines through two neighbouring feet, seen from above'),
  kilograms: z.number().optional().describe('The least that tips it over any line'),
  assumption: z.string(),
});

const standingSchema = strictObject({
  mass: z.number().describe('Of the base, kg'),
  topMass: z.number().describe('Of the top, reckoned in the wood of the base, kg'),
  centre: vectorSchema.describe('Centre of mass of the base'),
  tipping: tippingSchema.optional().describe('Absent where nothing reaches the floor'),
});

/** What a result says of a base: its pieces where they stand, how they are made and joined, and how it stands. */
export const resultBaseSchema = strictObject({
  use: z.enum(['table', 'desk', 'bench', 'stool']),
  top: strictObject({
    shape: z.enum(['rectangle', 'round']),
    length: z.number(),
    width: z.number(),
    thickness: z.number(),
    level: z.number().describe('Of its underside over the floor'),
  }).describe('What the base carries, over the origin, mm'),
  levellers: z.number().describe('Between the feet and the floor, mm'),
  placed: z.array(placedSchema),
  made: z.array(madeSchema).describe('How each part of `parts` is cut'),
  joints: z.array(jointSchema),
  cutList: z.array(cutListSchema),
  standing: standingSchema.optional().describe('Guidance under the assumptions stated, never a certificate'),
});
