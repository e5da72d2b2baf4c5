import type { Similarity, Vec } from '../../geometry/index.ts';
import type { LengthStyle } from '../../measure/index.ts';
import type { Mark } from '../api.ts';

/** A dimension to be drawn beside a picture. Points are places of the picture, mm in the world; its figure is measured from them. */
export type Dimension =
  /** Between two points; with `along` (rad) only what they lie apart in that direction. */
  | {
      readonly kind: 'length';
      readonly name: string;
      readonly from: Vec;
      readonly to: Vec;
      readonly along?: number;
      /** Where the line is to stand; where there is more room when absent. */
      readonly side?: 'left' | 'right' | 'above' | 'below';
      /** Words after the figure: `top`. */
      readonly words?: string;
      /** By how much (mm in the world) it is drawn too short, where a picture is broken: the figure counts it. */
      readonly shortened?: number;
    }
  /** Between two directions (rad) at a point, anticlockwise from the first. */
  | {
      readonly kind: 'angle';
      readonly name: string;
      readonly at: Vec;
      readonly from: number;
      readonly to: number;
      readonly words?: string;
    }
  /** Of an arc, pointed at where `at` lies on it. */
  | {
      readonly kind: 'radius';
      readonly name: string;
      readonly centre: Vec;
      readonly at: Vec;
      readonly words?: string;
    }
  /** Words that point at a place. */
  | { readonly kind: 'note'; readonly name: string; readonly at: Vec; readonly words: string };

/** How a picture lies on paper and how its dimensions are written. */
export interface DimensionStyle {
  /** From the picture (mm in the world) to paper (mm); never mirrored. */
  readonly toPaper: Similarity;
  readonly lengths: LengthStyle;
  /** Height of figures, mm; 2.5 when absent. */
  readonly height?: number;
}

export interface LaidDimension {
  readonly dimension: Dimension;
  /** As lettered. */
  readonly figure: string;
  /** Lines, heads and the figure, on paper. */
  readonly marks: readonly Mark[];
}

export interface LaidDimensions {
  readonly laid: readonly LaidDimension[];
  /** Found no room: to be said elsewhere. Lengths always find room. */
  readonly left: readonly { readonly dimension: Dimension; readonly figure: string }[];
}
