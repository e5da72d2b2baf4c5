import type { Edge, Region, Vec } from '../geometry/index.ts';

/** What follows the template: diameters in mm. */
export type Guide =
  | {
      readonly kind: 'bearing';
      readonly name?: string;
      readonly diameter: number;
      readonly at: 'tip' | 'shank';
    }
  | {
      readonly kind: 'bushing';
      readonly name?: string;
      readonly outsideDiameter: number;
      readonly barrelLength: number;
    };

export interface Cutter {
  readonly name?: string;
  /** mm. */
  readonly diameter: number;
  /** mm of cutting edge. */
  readonly cuttingLength: number;
}

export interface Blade {
  readonly name?: string;
  /** mm, tooth to back. */
  readonly width: number;
}

export interface Tooling {
  readonly machine: 'hand-held' | 'table';
  readonly cutter: Cutter;
  readonly guide: Guide;
  /** Board that the guide follows, mm. */
  readonly templateThickness: number;
  /** How far the template runs on past sawn ends, mm. */
  readonly runOn: number;
  /** Wood left outside the line by the saw, mm. */
  readonly sawAllowance: number;
  /** The maker's other cutters, from which a better one may be named. */
  readonly cutters: readonly Cutter[];
  readonly blades: readonly Blade[];
}

/** A place where what the bit leaves differs from the part drawn. */
export interface Difference {
  /** `left`: wood that stays outside the line. `lost`: wood cut away inside it. */
  readonly kind: 'left' | 'lost';
  readonly region: Region;
  /** Farthest point from the drawn outline, and how far, mm. */
  readonly at: Vec;
  readonly reach: number;
  /** mm². */
  readonly area: number;
  /** Identities of the part's edges it lies at. */
  readonly edges: readonly string[];
}

/** A stretch of one edge along which the cut meets the grain in one way. */
export interface FeedRun {
  readonly edge: string;
  /** Part of the outline in the direction the tool is fed. */
  readonly path: Edge;
  readonly grain: 'with' | 'against' | 'neutral' | 'end';
}

export interface Pass {
  /** mm of the stock's thickness cut, measured from the template side: from shallower to deeper. */
  readonly from: number;
  readonly to: number;
  /** What the guide runs on: the template, or the face cut before. */
  readonly guideOn: 'template' | 'cut face';
  readonly turned: boolean;
  readonly words: string;
}

export interface DepthPlan {
  readonly possible: boolean;
  readonly passes: readonly Pass[];
  /** Why a plan fails, or what to watch, one sentence each. */
  readonly remarks: readonly {
    readonly code: string;
    readonly grave: boolean;
    readonly words: string;
    readonly measured: number;
    readonly limit: number;
    readonly cure?: string;
  }[];
}

/** Everything that follows from a part and the tooling. */
export interface Routing {
  readonly tooling: Tooling;
  /** (guide − cutter) / 2, mm; negative with a guide smaller than the cutter. */
  readonly offset: number;
  /** Board to cut, already offset, running on past sawn ends; openings in it are holes of its regions. */
  readonly template: readonly Region[];
  /** What the cutter leaves, sawn ends as drawn. */
  readonly asRouted: readonly Region[];
  readonly differences: readonly Difference[];
  /** Blank at the saw allowance. */
  readonly blank: readonly Region[];
  readonly feed: readonly FeedRun[];
  /** Places to screw (`screw`) or tape (`tape`) the template, mm. */
  readonly fixings: readonly {
    readonly kind: 'screw' | 'tape';
    readonly at: Vec;
    readonly width: number;
    readonly height: number;
    readonly turn: number;
  }[];
  readonly depth: DepthPlan;
  /** Tightest hollow of the routed edges; absent when every routed edge is straight or bulges. Radius 0 is a sharp inside corner. */
  readonly tightest?: { readonly radius: number; readonly at: Vec; readonly edge: string };
  /** Largest cutter of the maker's list that reaches everywhere with this guide kind; absent when none does. */
  readonly largestCutter?: Cutter;
  /** Widest blade of the list that follows the saw line; absent when none does. */
  readonly blade?: { readonly blade: Blade; readonly leastRadius: number; readonly tightestCurve: number };
}
