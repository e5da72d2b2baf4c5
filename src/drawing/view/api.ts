import type { PlacedPart } from '../../base/index.ts';
import type { Box, Edge, EdgeTag, Frame, Region } from '../../geometry/index.ts';
import type { SketchedPart } from '../../sketch/index.ts';

/**
 * How a drawing looks at things: a frame in the world whose x runs to the right on paper, y up on paper, z towards the viewer. Views
 * are parallel projections; mm in the picture are mm in the world.
 */
export type Camera = Frame;

/**
 * A hollow in a part: the prism of its region from z = 0 of its own frame (given in the part's frame) down to z = −depth. Where it breaks
 * out of the part its region ends on the part's own surface.
 */
export interface Pocket {
  readonly name: string;
  readonly frame: Frame;
  readonly region: Region;
  readonly depth: number;
}

/** What a view needs of a part; a PlacedPart is one. */
export interface ViewedPart extends Pick<PlacedPart, 'id' | 'frame'> {
  readonly drawn: Pick<SketchedPart, 'region' | 'thickness'>;
  readonly cuts: readonly Pick<PlacedPart['cuts'][number], 'name' | 'role' | 'plane'>[];
  readonly pockets?: readonly Pocket[];
}

/** Where on its part an edge lies: round the face or the back, along an arris between them, round a cut, in a pocket. */
export type EdgePlace = 'face' | 'back' | 'arris' | 'cut' | 'pocket';

/** One stretch of an edge in the picture, all of it visible or all of it hidden. */
export interface ViewLine {
  readonly part: string;
  /** Identity and role of the form's edge; of an arris the edge before it and, after a bar, the edge behind it. */
  readonly edge: EdgeTag;
  readonly on: EdgePlace;
  readonly visible: boolean;
  /** In the picture, mm, each beginning where the one before ended. */
  readonly edges: readonly Edge[];
}

export interface View {
  readonly camera: Camera;
  /** How far (mm in the world) straight pieces may lie from the curves that they stand for. */
  readonly tolerance: number;
  readonly lines: readonly ViewLine[];
  /** Round all lines; empty (min > max) when there are none. */
  readonly box: Box;
}

export interface ViewOptions {
  /** Largest distance, mm in the world, between a curve and the straight pieces that stand for it. */
  readonly tolerance?: number;
  /** Are hidden edges wanted? Yes when absent. */
  readonly hidden?: boolean;
  /** Hidden edges nearer than this (mm in the world) beside another line are left out: on paper they would run into it. */
  readonly hiddenApart?: number;
}
