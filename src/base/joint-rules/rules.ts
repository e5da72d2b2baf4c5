import { DOWEL_RULES, type Figure, TENON_RULES } from '../../materials/index.ts';
import type { InsertSize } from './api.ts';

export type TenonRules = { readonly [name in keyof typeof TENON_RULES]: number };
export type DowelRules = { readonly [name in keyof typeof DOWEL_RULES]: number };

const TENON_FIGURES: TenonRules = valuesOf(TENON_RULES);
const DOWEL_FIGURES: DowelRules = valuesOf(DOWEL_RULES);

/** The rules for tenons in force: the table's, or the maker's own where given. Lengths in mm. */
export function tenonRules(own: Partial<TenonRules> = {}): TenonRules {
  return { ...TENON_FIGURES, ...own };
}

/** The rules for dowels in force: the table's, or the maker's own where given. Lengths in mm. */
export function dowelRules(own: Partial<DowelRules> = {}): DowelRules {
  return { ...DOWEL_FIGURES, ...own };
}

function valuesOf<T extends Readonly<Record<string, Figure>>>(
  rules: T,
): { readonly [name in keyof T]: number } {
  return Object.fromEntries(Object.entries(rules).map(([name, { value }]) => [name, value])) as {
    readonly [name in keyof T]: number;
  };
}

/** What both kinds of rules come to for the layout, lengths in mm. */
export interface FitRules {
  readonly thicknessShare: number;
  readonly mostThicknessShare: number;
  readonly leastThickness: number;
  readonly wall: number;
  readonly bottomWall: number;
  readonly depthShare: number;
  /** In thicknesses. */
  readonly leastDepth: number;
  readonly depthClearance: number;
  readonly twoRowsFrom: number;
  readonly leastCount: number;
  readonly lengthShare: number;
  /** Wood between the end of a piece and the end of the joint, and between two pieces in line. */
  readonly shoulder: (size: InsertSize) => number;
  readonly spacing: (size: InsertSize) => number;
}

export function fitOfTenons(rules: TenonRules): FitRules {
  return { ...rules, shoulder: () => rules.shoulder, spacing: () => rules.spacing };
}

/** Distances between centres become wood between sides; the length of a joint is no limit to round holes. */
export function fitOfDowels(rules: DowelRules): FitRules {
  return {
    ...rules,
    lengthShare: Infinity,
    shoulder: ({ thickness }) => (rules.edgeInDiameters - 0.5) * thickness,
    spacing: ({ thickness }) => (rules.spacingInDiameters - 1) * thickness,
  };
}
