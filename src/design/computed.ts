import type { BuiltBase } from '../base/index.ts';
import type { Finding } from '../core/index.ts';
import type { Pattern, Picture } from '../drawing/index.ts';
import type { LengthStyle } from '../measure/index.ts';
import type { SheetPlan } from '../print/index.ts';
import type { Hand, Routing } from '../routing/index.ts';
import type { Sketch, SketchedPart } from '../sketch/index.ts';
import type { Design, PatternRequest } from './design-schema.ts';
import type { ComputedWood } from './wood-of-design.ts';

/** Which outputs are asked for; what is left out costs nothing. */
export interface Wanted {
  /** Patterns to lay on sheets, in place of those that the design asks for. */
  readonly patterns?: readonly PatternRequest[];
  /** Patterns of the cauls that gluing needs, beside those of the parts. */
  readonly cauls?: boolean;
  /** Patterns drawn in one piece, not laid on sheets. */
  readonly drawings?: readonly PatternRequest[];
  /** Whether to tell how the base weighs and stands, where solids are at hand; yes when left out. By far the longest of all steps. */
  readonly standing?: boolean;
}

export type BaseView = 'front' | 'left' | 'right' | 'plan' | 'pictorial';

export interface ComputedView {
  readonly view: BaseView;
  readonly picture: Picture;
}

export interface ComputedPart {
  readonly part: SketchedPart;
  readonly routing: Routing;
  /** As each of its hands is made, the one as drawn first. */
  readonly hands: readonly Hand[];
}

export interface ComputedPattern {
  readonly request: PatternRequest;
  readonly pattern: Pattern;
  readonly plan: SheetPlan;
  /** What is printed on each sheet, in a few digits: a sheet with the same digest need not be printed again. */
  readonly digests: readonly string[];
}

/** Everything that follows from a design. */
export interface Computed {
  readonly design: Design;
  readonly lengths: LengthStyle;
  readonly sketch: Sketch;
  /** Of a form that places its parts in space. */
  readonly base?: BuiltBase;
  /** Of a base: movement, leaves, inserts. */
  readonly wood?: ComputedWood;
  readonly parts: readonly ComputedPart[];
  readonly patterns: readonly ComputedPattern[];
  readonly drawings: readonly { readonly request: PatternRequest; readonly pattern: Pattern }[];
  /** Graver ones first. */
  readonly findings: readonly Finding[];
  /** The design's pinned grids with those of the patterns laid out now: to be kept in the design. */
  readonly grids: Design['grids'];
}
