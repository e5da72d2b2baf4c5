import { z } from 'zod';
import {
  boardSchema,
  placementSchema,
  searchSchema,
  typedAngle,
  typedPercent,
  typedThickness,
} from './board-schema.ts';
import { nameText, strictObject, typedLength } from './strict-schema.ts';

/** A temperature as typed: text with its unit, or a bare number of degrees Celsius. */
const typedTemperature = z.union([z.string().max(64), z.number()], {
  error: 'a temperature such as "21 °C", "70 °F" or a bare number of °C',
});

/** Air that wood lives in for long. */
export const airSchema = strictObject({ temperature: typedTemperature, humidity: typedPercent });

export const climateSchema = strictObject({
  /** The room where the piece will stand, at its driest and at its dampest. */
  room: strictObject({ dry: airSchema, damp: airSchema }).optional(),
  /** What the wood is at when it is worked: its moisture content as measured, or the air of the shop that it has lain in for weeks. */
  shop: z
    .union([strictObject({ moisture: typedPercent }), airSchema], {
      error: '{ "moisture": "8 %" } or { "temperature": "18 °C", "humidity": "50 %" }',
    })
    .optional(),
});

/** How growth rings lie in a wide part: flat-sawn moves by the tangential figure, quarter-sawn by the radial. */
export const sawnSchema = z.enum(['flat', 'quarter']);

/** How the top is held: bolts or screws of this thread through slots in the base, into inserts in the top. */
export const topSchema = strictObject({
  wood: nameText.optional(),
  sawn: sawnSchema.optional(),
  thread: nameText.optional(),
  /** The insert in hand, measured. Left out: the usual one of that thread. */
  insert: strictObject({ outer: typedLength, length: typedLength, pilot: typedLength }).optional(),
});

/** From a rough board to leaves, and from leaves to a part at its finished thickness. */
export const resawPlanSchema = strictObject({
  name: nameText,
  /** The board as it comes. Left out: the thickness of the boards that the bookmatch names. */
  rough: typedThickness.optional(),
  /** Off the rough board as a whole, both faces, until it is flat. */
  flattening: typedLength,
  kerf: typedLength,
  leaves: z.int().min(1).max(50),
  /** Off each face of a leaf: one that the resaw left, and one that was an outer face of the flattened board. */
  planing: strictObject({ sawn: typedLength, outer: typedLength }),
  /** Off each leaf as a whole, because it dries out of true once it is sawn and must be flattened again. */
  drying: typedLength,
  /** The piece that leaves are glued to, planed; left out or 0: none. */
  backing: typedLength.optional(),
  /** Leaves glued into one piece: one on its face, or one on its face and one on its back. Left out: as many as the bookmatch shows faces of a part, otherwise 1. */
  glued: z.int().min(1).max(2).optional(),
  /** Off the glued-up piece, to its finished thickness: off the face that shows, and off the other. */
  lastPlaning: strictObject({ show: typedLength, back: typedLength }),
  /** How far the saw may wander off its line, to either side. */
  drift: typedLength.optional(),
  /** Finished thickness; left out: that of the parts that the bookmatch names. */
  finished: typedLength.optional(),
});

/** One leaf as it is glued. */
export const leafPlaceSchema = strictObject({
  /** Left out where there is one board. */
  board: nameText.optional(),
  /** Counted from the board's upper face down: 1 is the uppermost. */
  leaf: z.int().min(1).max(50),
  /** The piece as it is marked or named, as `FL` or `leg-2`. */
  piece: nameText,
  face: z.enum(['face', 'back']),
  /** The face of the leaf that shows: that which lay up in the board, or that which lay down. */
  shows: z.enum(['upper', 'lower']),
  /** Where the board's marked end points once the piece stands: up or down, or on a level piece to the left or right of who faces the leaf. */
  markedEnd: z.enum(['up', 'down', 'left', 'right']),
});

/** Which parts carry leaves, and how the leaves are opened. */
export const bookmatchSchema = strictObject({
  name: nameText,
  /**
   * `book`: neighbours are turned over from each other like pages, the legs of each frame mirror images. `slip`: every leaf shows the same way,
   * the figure repeats. `radial`: leaves follow the legs round the base, each turned over from the one before.
   */
  arrangement: z.enum(['book', 'slip', 'radial']),
  /** Name of its resaw plan. */
  resaw: nameText,
  /** Boards in the order in which they are opened; left out: one board of that plan. */
  boards: z.array(nameText).min(1).max(50).optional(),
  /** Names of the parts as they are made, with the faces that carry a leaf. */
  parts: z
    .array(
      strictObject({
        part: nameText,
        faces: z
          .array(z.enum(['face', 'back']))
          .min(1)
          .max(2),
      }),
    )
    .min(1)
    .max(50),
  /** Which edge of the board lies towards the middle of the frame; left out: the near one, where y is 0. */
  centre: z.enum(['near', 'far']).optional(),
  /** By hand, instead of what follows from the arrangement. It is checked alike. */
  leaves: z.array(leafPlaceSchema).min(1).max(200).optional(),
});

/** A patch for a flaw, and where on a board its plug is to be cut. */
export const patchSchema = strictObject({
  name: nameText,
  /** `boat`: two arcs that meet in points; `diamond`: four slanting sides. */
  shape: z.enum(['boat', 'diamond']),
  /** Of the flaw, along the grain and across it. */
  along: typedLength,
  across: typedLength,
  /** Sound wood round the flaw that goes with it, and room for glue all round. */
  margin: typedLength.optional(),
  clearance: typedLength.optional(),
  slenderness: z.number().min(1).max(20).optional(),
  /** In place of the design's own; the collar left out: the one that fits. */
  cutter: typedLength.optional(),
  bushing: typedLength.optional(),
  collar: typedLength.optional(),
  /** Left out: the first board. */
  board: nameText.optional(),
  /** The middle of the plug, and how far its grain is turned from the board's length. Left out: the middle of the board, along its grain. */
  x: typedLength.optional(),
  y: typedLength.optional(),
  turned: typedAngle.optional(),
});

/** The wood of a design, beyond its species: that is in `base`. Everything may be left out. */
export const woodSchema = strictObject({
  climate: climateSchema.optional(),
  top: topSchema.optional(),
  /** How the growth rings lie in wide parts, by the form's name of the part; flat where nothing is said. */
  sawn: z.record(nameText, sawnSchema).optional(),
  resaw: z.array(resawPlanSchema).max(50).optional(),
  bookmatch: z.array(bookmatchSchema).max(50).optional(),
  boards: z.array(boardSchema).max(200).optional(),
  placements: z.array(placementSchema).max(1000).optional(),
  search: searchSchema.optional(),
  patches: z.array(patchSchema).max(100).optional(),
});

/** What of it a workshop may hold: nothing that names a part of one design, and no photographs, which are kept beside a design. */
export const workshopWoodSchema = strictObject({
  climate: climateSchema.optional(),
  top: topSchema.optional(),
  resaw: z.array(resawPlanSchema).max(50).optional(),
  boards: z
    .array(boardSchema.omit({ photographs: true }))
    .max(200)
    .optional(),
  search: searchSchema.optional(),
});
