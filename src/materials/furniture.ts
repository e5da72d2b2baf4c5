import { z } from 'zod';
import table from '../../shared/tables/furniture.json';
import { MM_PER } from '../measure/index.ts';
import { figure } from './figure.ts';

/** Usual height of a piece of furniture, mm: to the top of a table, to the seat of a chair. */
export interface UsualHeight {
  readonly item: string;
  readonly least: number;
  readonly most: number;
}

const size = z.number().positive();
const furnitureTable = z.object({
  heights: z.object({
    unit: z.literal('in'),
    rows: z.array(z.object({ item: z.string(), least: size, most: size })),
  }),
  knees: z.object({
    diningHeight: figure,
    diningSeatHeight: figure,
    thighs: figure,
    diningWidth: figure,
    deskHeight: figure,
    deskWidth: figure,
    deskDepthAtKnee: figure,
    deskDepthAtFoot: figure,
    accessibleHeight: figure,
    accessibleWidth: figure,
    accessibleDepth: figure,
  }),
  places: z.object({
    leastWidth: figure,
    comfortableWidth: figure,
    chair: figure,
    armsWiden: figure,
    gap: figure,
  }),
  overhang: z.object({
    leastSide: figure,
    mostSide: figure,
    leastEnd: figure,
    mostEnd: figure,
    mostShareOfSpan: figure,
    spreadOfFeet: figure,
  }),
});

const { heights, knees, places, overhang } = furnitureTable.parse(table);

/** Usual heights, common practice. Source: shared/tables/furniture.json. */
export const USUAL_HEIGHTS: readonly UsualHeight[] = heights.rows.map(({ item, least, most }) => ({
  item,
  least: least * MM_PER.in,
  most: most * MM_PER.in,
}));

/** Room for knees and feet, mm. */
export const KNEE_ROOM = knees;

/** Width of the top for one place, width of a chair, what arms add to it, and room between two chairs, mm. */
export const PLACES = places;

/** How far a top reaches past what carries it: mm along sides and ends, and shares. */
export const OVERHANG = overhang;
