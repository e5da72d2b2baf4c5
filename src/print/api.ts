import type { Similarity, Vec } from '../geometry/index.ts';

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
