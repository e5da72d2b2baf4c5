import type { Region, Similarity, Vec } from '../../geometry/index.ts';

/** What parts keep off unless told otherwise. */
export type DefectKind = 'knot' | 'split' | 'sapwood' | 'other';

export interface Defect {
  readonly kind: DefectKind;
  /** In the board's plane, mm. */
  readonly region: Region;
}

/** What the seller counts: `piece` is the whole board or sheet. */
export type PriceUnit =
  | 'piece'
  | 'board foot'
  | 'cubic metre'
  | 'square metre'
  | 'square foot'
  | 'running metre'
  | 'running foot';

export interface Price {
  readonly amount: number;
  readonly per: PriceUnit;
  /** As printed: a code such as `EUR`. */
  readonly currency?: string;
}

/**
 * A board, or a sheet for templates, with its upper face up: x runs along its length from the marked end, y across it from the near
 * edge. Lengths in mm.
 */
export interface Board {
  readonly name: string;
  /** Of a `sheet` no grain is asked. */
  readonly kind: 'board' | 'sheet';
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly price?: Price;
  readonly defects: readonly Defect[];
  /** Direction of the grain, rad from the board's length. */
  readonly grain: number;
}

/**
 * Something to be sawn from one place of a board: a part, or the same part out of every leaf of a resawn board. Its shape is given in
 * the part's own plane.
 */
export interface ToLay {
  /** Unique among those laid together. */
  readonly id: string;
  /** Name of the part as it is made. */
  readonly part: string;
  /** The pieces that come from here, one for each leaf, the uppermost first. */
  readonly pieces: readonly string[];
  /** The true outline: what keeps off defects. */
  readonly region: Region;
  /** With its saw allowance: what keeps off neighbours and lies within the board. One outline, holes left out of account. */
  readonly blank: Region;
  /** Direction of the grain, rad. Absent where none is asked, as of a template: it may be turned any way. */
  readonly grain?: number;
  /** May it lie face side up, face side down, or whichever is better? A bookmatch leaves no choice. */
  readonly face: 'up' | 'down' | 'either';
  /** Names of the boards it may come from: thick enough, and of the right wood. */
  readonly boards: readonly string[];
}

/** Where one lies. */
export interface Lying {
  readonly id: string;
  readonly board: string;
  /** The near left corner of the box round the true outline as it lies, mm. */
  readonly at: Vec;
  /** Anticlockwise, rad, from where the part's own grain runs along the board towards larger x; a half turn is head to tail. */
  readonly turned: number;
  /** Face side down. */
  readonly mirrored: boolean;
}

/** What a layout keeps to. */
export interface LayRules {
  /** How far the grain of a part may stand from that of the board, rad. */
  readonly grainWithin: number;
  /** Room between neighbouring blanks, mm: what the saw takes. */
  readonly between: number;
  /** Defects that parts may lie over. */
  readonly allowed: readonly DefectKind[];
}

/** One as it lies, worked out. */
export interface Laid {
  readonly toLay: ToLay;
  readonly lying: Lying;
  /** From the part's plane to the board's. */
  readonly toBoard: Similarity;
  /** In the board's plane. */
  readonly region: Region;
  readonly blank: Region;
}

/** What is wrong with where something lies. */
export interface LayFault {
  readonly kind:
    | 'unknown-board'
    | 'unknown-part'
    | 'wrong-board'
    | 'off-the-board'
    | 'overlap'
    | 'over-a-defect'
    | 'off-the-grain'
    | 'wrong-face'
    | 'laid-twice';
  readonly id: string;
  readonly board: string;
  /** The neighbour it overlaps. */
  readonly other?: string;
  readonly defect?: DefectKind;
  /** Where, in the board's plane, mm. */
  readonly at?: Vec;
  /** What was measured and what it may be at most: mm² of area, or rad for the grain. */
  readonly measured?: number;
  readonly limit?: number;
}
