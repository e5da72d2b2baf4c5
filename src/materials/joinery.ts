import { z } from 'zod';
import table from '../../shared/tables/joinery.json';
import { figure } from './figure.ts';

const joineryTable = z.object({
  tenon: z.object({
    thicknessShare: figure,
    mostThicknessShare: figure,
    shoulder: figure,
    spacing: figure,
    lengthShare: figure,
    wall: figure,
    bottomWall: figure,
    depthShare: figure,
    leastDepth: figure,
    depthClearance: figure,
    lengthInThicknesses: figure,
    twoRowsFrom: figure,
    leastCount: figure,
    leastThickness: figure,
  }),
  dowel: z.object({
    thicknessShare: figure,
    mostThicknessShare: figure,
    edgeInDiameters: figure,
    spacingInDiameters: figure,
    wall: figure,
    bottomWall: figure,
    depthShare: figure,
    leastDepth: figure,
    depthClearance: figure,
    twoRowsFrom: figure,
    leastCount: figure,
    leastThickness: figure,
  }),
  glue: z.object({ lightest: figure, densest: figure, spread: figure }),
  glueSpread: z.object({ grams: figure, solids: figure }),
});

/** Rules of the trade for joints, all common practice. Source: shared/tables/joinery.json, each with its own. */
export const {
  /** Mortises with tenons, loose or not: lengths in mm, shares of the thickness, of the length and of the depth of wood. */
  tenon: TENON_RULES,
  /** Lengths in mm, shares, and multiples of the dowel's diameter. */
  dowel: DOWEL_RULES,
  /** Pressure of clamps in MPa on the lightest and the densest woods, and how it fans out, rad. */
  glue: GLUE_PRESSURE,
  /** Wet glue on a square metre of glued face, g, and the share of it that stays once it is dry. */
  glueSpread: GLUE_SPREAD,
} = joineryTable.parse(table);
