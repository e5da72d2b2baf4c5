import type { Box, Edge, Vec } from '../geometry/index.ts';
import type { LengthStyle } from '../measure/index.ts';

/** What a line means; drawing/styles.ts says how each is drawn (ISO 128-2 types and widths). */
export type LineRole =
  | 'part'
  | 'template'
  | 'as-routed'
  | 'residue'
  | 'saw-line'
  | 'keep-side'
  | 'against'
  | 'grain'
  | 'feed'
  | 'joint'
  | 'centre'
  | 'station'
  | 'check'
  | 'reference'
  | 'fixing'
  | 'dimension'
  | 'extension'
  | 'mark'
  | 'frame'
  | 'thin'
  | 'visible'
  | 'hidden'
  | 'axis'
  | 'phantom'
  | 'hatch'
  | 'cutting-plane'
  | 'border';

/**
 * Marks that may be left out together where they would take a sheet of their own: what they say stands on the first page
 * as well. All marks of one name go together.
 */
interface LeftOutTogether {
  readonly optional?: string;
}

export interface PathMark extends LeftOutTogether {
  readonly kind: 'path';
  readonly role: LineRole;
  readonly edges: readonly Edge[];
  /** The edges form a closed loop, so that they can be filled. */
  readonly closed: boolean;
  /** `solid` in the line's colour, `tint` a light wash of it; none when absent. A filled mark has no line round it. */
  readonly fill?: 'solid' | 'tint';
  /** In views: the part of the base whose edge it is; the edges' tags name the edge. */
  readonly part?: string;
}

export interface TextMark extends LeftOutTogether {
  readonly kind: 'text';
  readonly text: string;
  /** Left, middle or right end of the baseline. */
  readonly at: Vec;
  /** Height of capitals, mm (ISO 3098: 1.8, 2.5, 3.5, 5, 7, 10 …). */
  readonly height: number;
  /** Direction of the baseline, rad. */
  readonly angle: number;
  readonly align: 'left' | 'middle' | 'right';
  readonly weight: 'regular' | 'semibold';
  readonly role: LineRole;
}

export type Mark = PathMark | TextMark;

/** A drawing in millimetres, y up, drawn in the order of its marks. */
export interface Scene {
  readonly marks: readonly Mark[];
  readonly box: Box;
}

/** What a pattern shows: the part, the template, what the cutter leaves, or all told apart by line type. */
export type PatternView = 'part' | 'template' | 'as-routed' | 'all';

export interface PatternOptions {
  readonly view: PatternView;
  /** Turned over, for the other hand. */
  readonly mirrored: boolean;
  /** Name of the maker's design, revision and date, as printed. */
  readonly design: string;
  readonly revision: string;
  readonly date: string;
  /** How lengths are written beside the pattern. */
  readonly lengths: LengthStyle;
  /** Where the pieces of this pattern carry leaves of a bookmatch. */
  readonly leaves?: readonly LeafLabel[];
}

/** A leaf that a piece made from a pattern carries. */
export interface LeafLabel {
  /** As the piece is marked: `FR`. */
  readonly piece: string;
  /** Of the piece. */
  readonly face: 'face' | 'back';
  /** Board and leaf: `A2`. */
  readonly leaf: string;
  /** Which face of the leaf shows. */
  readonly shows: 'upper' | 'lower';
}

/** A length to measure across the taped pattern. */
export interface CheckLength {
  /** `A`, `B` … as printed. */
  readonly name: string;
  readonly from: Vec;
  readonly to: Vec;
  /** mm. */
  readonly nominal: number;
}

export interface ToolFact {
  readonly words: string;
  readonly figure?: string;
  /** To be seen first: something that is not as it should be. */
  readonly grave?: boolean;
}

/** A joint whose name found no room at its line. */
export interface JointNote {
  /** What stands at the line instead: `J1`; empty where nothing does. */
  readonly mark: string;
  readonly label: string;
}

/** One full-size drawing of one part, before it is laid on sheets. */
export interface Pattern {
  /** Unique in the design, fit for a file name: `splayed-leg`, `splayed-leg-mirrored`. */
  readonly name: string;
  readonly title: string;
  readonly view: PatternView;
  readonly mirrored: boolean;
  /** What is laid on sheets; what can be said in words alone stands on their first page. */
  readonly scene: Scene;
  /** The same with the notes beside it: the drawing in one piece. Laid out when first asked for. */
  readonly withNotes: Scene;
  /** How it is routed and sawn, as printed: a sentence, or what is set and its figure. */
  readonly toolFacts: readonly ToolFact[];
  /** Places that a seam should keep away from: corners, joints, small text. With the clearance wanted, mm. */
  readonly keepOffSeams: readonly { readonly at: Vec; readonly clearance: number }[];
  readonly checks: readonly CheckLength[];
  /** Joints that stand in the drawing by number only. */
  readonly jointNotes?: readonly JointNote[];
}
