import type { Severity } from '../core/index.ts';
import type { Pattern } from '../drawing/index.ts';
import type { Similarity, Vec } from '../geometry/index.ts';
import type { LengthStyle } from '../measure/index.ts';

/** mm. */
export interface Margins {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

/** Paper as the maker asks for it; lengths in mm. */
export interface Paper {
  /** `A4`, `Letter` …, or what was typed. */
  readonly name: string;
  /** The paper's own edges, short ≤ long for sheets. A roll is `width` wide and as long as needed up to `most`. */
  readonly size:
    | { readonly kind: 'sheet'; readonly short: number; readonly long: number }
    | { readonly kind: 'roll'; readonly width: number; readonly most: number };
  readonly orientation: 'portrait' | 'landscape' | 'fewest';
  readonly margins: Margins;
  readonly overlap: number;
  /** Nominal / measured along the paper's own long and short edges; 1 when not calibrated. */
  readonly calibration: { readonly long: number; readonly short: number };
}

/** How the grid of sheets lies under the pattern; kept in the design so that reprints match. */
export interface SheetGrid {
  readonly orientation: 'portrait' | 'landscape';
  /** Turn of the pattern on the paper, rad anticlockwise. */
  readonly turn: number;
  /** Shift of the turned pattern, mm, against the grid's own corner. */
  readonly shift: Vec;
}

export interface Sheet {
  /** Rows from the top, from 1; places from the left, from 1. */
  readonly row: number;
  readonly place: number;
  /** Page number in the pattern's PDF, from 1. */
  readonly page: number;
  /** Pattern plane (mm) to page (mm from the lower left corner of the page, y up), before calibration. */
  readonly toPage: Similarity;
}

export interface SheetPlan {
  readonly pattern: string;
  readonly paper: Paper;
  readonly grid: SheetGrid;
  /** Page, mm, as turned. */
  readonly page: { readonly width: number; readonly height: number };
  readonly rows: number;
  readonly places: number;
  readonly sheets: readonly Sheet[];
}

export interface PlanOptions {
  /** The grid of an earlier plan, kept so that sheets whose content did not change need not be printed again. */
  readonly pinned?: SheetGrid;
}

/** The lettering's files, woff or ttf, as bytes. */
export interface PrintFonts {
  readonly regular: Uint8Array;
  readonly semibold: Uint8Array;
}

/** Which part a pattern is of, of which hand, and how many are made. */
export interface PartFacts {
  /** Name of the part as printed: `Splayed leg`. */
  readonly part: string;
  /** `left hand`, `right hand`, or nothing where the part has no hands. */
  readonly hand?: string;
  /** How many are made from this pattern. */
  readonly quantity: number;
  /** The other hand and how many of it are wanted too; absent where there are none. */
  readonly other?: { readonly hand: string; readonly quantity: number };
}

/** What the sheets say of a pattern besides what is drawn in it. */
export interface PatternFacts extends PartFacts {
  /** Dimensions by which the pattern can also be laid out by hand, and what else belongs beside it. */
  readonly keyFacts: readonly { readonly label: string; readonly value: string }[];
  /** What must be known before wood is cut, a sentence or two each. */
  readonly findings?: readonly { readonly severity: Exclude<Severity, 'note'>; readonly words: string }[];
  /** Cautions for a part that is made another way than the design's others, in the place of theirs. */
  readonly cautions?: readonly string[];
}

/** A pattern with the sheets that it is printed on. */
export interface PatternPrint {
  readonly pattern: Pattern;
  readonly plan: SheetPlan;
  readonly facts: PatternFacts;
}

/** What the sheets say of the design. */
export interface PrintMeta {
  readonly design: string;
  readonly revision: string;
  /** ISO 8601: `2025-03-14`. */
  readonly date: string;
  readonly lengths: LengthStyle;
  /** Cautions printed on the first page, a sentence or two each. */
  readonly cautions: readonly string[];
  /** A link that holds the design whole: printed as a square code, so that paper still knows its design. */
  readonly link?: string;
}

/** One sheet of one pattern, by the names on paper. */
export interface SheetName {
  readonly pattern: string;
  readonly row: number;
  readonly place: number;
}

export interface PrintOptions {
  /** Only these sheets, without the first page: a trial, or those that changed. */
  readonly only?: readonly SheetName[];
  /** Instead of the calibration in the plan's paper. */
  readonly calibration?: Paper['calibration'];
}
