import { z } from 'zod';
import { nameText, strictObject, typedLength } from './strict-schema.ts';

/** An angle as typed: text with or without a unit, or a bare number of degrees. */
export const typedAngle = z.union([z.string().max(64), z.number()], {
  error: 'an angle such as "2°" or a bare number of degrees',
});

/** A percentage as typed: text with or without its sign, or a bare number of percent. */
export const typedPercent = z.union([z.string().max(64), z.number()], {
  error: 'a percentage such as "45 %" or a bare number of percent',
});

/** Thickness of a rough board: in quarters of an inch as the trade sells it, or a length. */
export const typedThickness = z.union([z.string().max(64), z.number()], {
  error: 'a thickness in quarters such as "6/4", or a length such as "40 mm"',
});

/**
 * A place on a board. x runs along the board's length from its marked end, y across it from its near edge, both from the corner where
 * those meet; the board lies with its upper face up. So x and y are never negative.
 */
export const boardPoint = z.tuple([typedLength, typedLength], {
  error: 'a place on the board [x, y], such as ["420 mm", "85 mm"]',
});

/** What parts keep off, or may not: knots, splits, sapwood, whatever else. A round one by its middle, any other by its corners in order. */
export const defectSchema = z.union(
  [
    strictObject({
      kind: z.enum(['knot', 'split', 'sapwood', 'other']),
      points: z.array(boardPoint).min(3).max(200),
      note: nameText.optional(),
    }),
    strictObject({
      kind: z.enum(['knot', 'split', 'sapwood', 'other']),
      centre: boardPoint,
      diameter: typedLength,
      note: nameText.optional(),
    }),
  ],
  {
    error:
      '{ "kind": "knot", "split", "sapwood" or "other", with "points" (three or more [x, y]) or "centre" and "diameter" }',
  },
);

/** A point that is known both in the picture (pixels from its upper left corner, x to the right, y down) and on the board. */
const knownPoint = strictObject({
  pixel: z.tuple([z.number().min(-1e5).max(1e5), z.number().min(-1e5).max(1e5)], {
    error: 'a place in the picture [x, y] in pixels',
  }),
  on: boardPoint,
});

/** A photograph of one face, by the name of its file: two known points make it true to scale, four true to shape as well. */
export const photographSchema = strictObject({
  file: nameText,
  /** Which face it shows; the lower one is seen with the board turned over about its length. */
  face: z.enum(['upper', 'lower']),
  /** Of a resawn board: of which leaf, 1 for the uppermost. Left out: of the board as it comes. */
  leaf: z.int().min(1).max(50).optional(),
  points: z
    .array(knownPoint, { error: 'a list of two or four known points' })
    .refine((points) => points.length === 2 || points.length === 4, { error: 'two or four known points' }),
});

export const priceSchema = strictObject({
  amount: z.number().min(0).max(1e9),
  /** As the seller counts: `piece` is the whole board or sheet. */
  per: z.enum([
    'piece',
    'board foot',
    'cubic metre',
    'square metre',
    'square foot',
    'running metre',
    'running foot',
  ]),
  /** As it is printed: a code such as `EUR`. */
  currency: nameText.max(12).optional(),
});

export const boardSchema = strictObject({
  name: nameText,
  /** A board of solid wood for parts, or a sheet for templates: of that no grain is asked. */
  kind: z.enum(['board', 'sheet']).optional(),
  /** By its name in the tool's table; left out: the wood of the base. */
  wood: nameText.optional(),
  length: typedLength,
  width: typedLength,
  thickness: typedThickness,
  /** How its growth rings lie: flat-sawn boards move by the tangential figure, quarter-sawn ones by the radial. */
  sawn: z.enum(['flat', 'quarter']).optional(),
  /** Moisture content measured, now. */
  moisture: typedPercent.optional(),
  price: priceSchema.optional(),
  defects: z.array(defectSchema).max(200).optional(),
  /** Of the grain, anticlockwise from the board's length, seen on its upper face; 0 where nothing is said. */
  grain: typedAngle.optional(),
  photographs: z.array(photographSchema).max(40).optional(),
});

/** Where one part lies on a board: all the leaves of a resawn board take their part from the same place, that is one placement. */
export const placementSchema = strictObject({
  board: nameText,
  /** Name of the part as it is made, as in the cut list, or of a pattern's part for a template. */
  part: nameText,
  /** The pieces that come from here, as `FL` or `leg-2`: one, or one for each leaf that is used, the uppermost first. Left out: whichever is next. */
  pieces: z.array(nameText).max(50).optional(),
  /** The near left corner of the box round the part's outline as it lies, saw allowance not counted. */
  x: typedLength,
  y: typedLength,
  /** Anticlockwise, from where the part's own grain, as its form draws it, runs along the board towards larger x: 180° is head to tail. */
  turned: typedAngle.optional(),
  /** It lies with its face side down: the pattern is turned over. */
  mirrored: z.boolean().optional(),
  /** Laid by hand: a search leaves it where it is. */
  pinned: z.boolean().optional(),
});

/** What a search for a layout keeps to. */
export const searchSchema = strictObject({
  /** The same seed gives the same layout. */
  seed: z.int().min(0).max(4294967295).optional(),
  /** Longest time that it may take. */
  seconds: z.number().min(0.1).max(3600).optional(),
  /** How far the grain of a part may stand from that of the board. */
  grainWithin: typedAngle.optional(),
  /** Room between neighbours for the saw, beyond the saw allowance of each. */
  between: typedLength.optional(),
  /** Defects that parts may lie over, because they do not show or do not weaken. */
  allowed: z
    .array(z.enum(['knot', 'split', 'sapwood', 'other']))
    .max(4)
    .optional(),
});
