import type { Severity } from '../core/index.ts';
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
  /** Diameter of the shank, mm; where it is not known, a plan that depends on it says so. */
  readonly shank?: number;
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
  /** Wood left beyond sawn and joint ends until they are trimmed, mm; absent: as usual, see usualEndAllowance. */
  readonly endAllowance?: number;
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
  readonly remarks: readonly DepthRemark[];
}

export interface DepthRemark {
  readonly code: string;
  /** `stop` when no plan is possible because of it. */
  readonly severity: Severity;
  readonly words: string;
  /** mm. */
  readonly measured: number;
  /** mm. */
  readonly limit: number;
  readonly cure?: string;
}

/** Where the template's edge stands for one edge of the part. */
export interface EdgeOffset {
  /** Identity of the part's edge. */
  readonly edge: string;
  /** mm from the part's edge into the wood; negative out of it. */
  readonly offset: number;
  /** For an edge of an opening: by how much the template's opening is wider than the part's, mm (twice the offset). */
  readonly across?: number;
}

/** How the template passes a run of edges that are not routed. */
export interface Gap {
  /** The edges passed over, in the order of the outline. */
  readonly edges: readonly string[];
  /**
   * `end`: the routed edges run on and a line closes them. `meet`: they meet before that. `bridge`: they face each other
   * and the template runs straight across. `around`: each end of the run has its own run-on, the rest stays as it is; where a
   * run-on would hit the part itself there is none.
   */
  readonly kind: 'end' | 'meet' | 'bridge' | 'around';
  /** The least that the template runs on past the wood's corner at either side, mm. */
  readonly runOn: number;
  /** Corner of the part where it falls shortest. */
  readonly at: Vec;
}

/** An inside cut: what the template needs and what the cutter reaches from the plunge. */
export interface RoutedOpening {
  readonly name: string;
  /** Edges of the part's hole, none twice. */
  readonly edges: readonly string[];
  /** Opening to cut in the template; empty when a small guide leaves none. */
  readonly template: readonly Region[];
  /** Wood that the cutter takes away. */
  readonly cut: readonly Region[];
  /**
   * Whether the guide can stand at the plunge: `free`; `tight` when it lies in the waste but the guide would cover the
   * template; `outside` the waste; `missing` when none is declared.
   */
  readonly plunge: 'free' | 'tight' | 'outside' | 'missing';
  readonly at: Vec;
  /** Room from the plunge to the template's edge, mm (negative: on the template). */
  readonly room: number;
}

export interface Fixing {
  /** `waste` holds the waste of an opening down to the bench, so that it cannot fly when it comes free. */
  readonly kind: 'screw' | 'tape' | 'waste';
  readonly at: Vec;
  /** mm; of a screw the room it takes. */
  readonly width: number;
  readonly height: number;
  /** Direction of the height, rad from +y anticlockwise. */
  readonly turn: number;
}

/** Everything that follows from a part and the tooling. Of a part that is only sawn all lists are empty. */
export interface Routing {
  readonly tooling: Tooling;
  /** (guide − cutter) / 2, mm; negative with a guide smaller than the cutter. */
  readonly offset: number;
  /** Board to cut, already offset, running on past sawn ends; openings in it are holes of its regions. */
  readonly template: readonly Region[];
  /** What the cutter leaves, sawn ends as drawn. */
  readonly asRouted: readonly Region[];
  readonly differences: readonly Difference[];
  /** Blank at the saw allowance, ends at the end allowance, edges that stay as the board came not grown. */
  readonly blank: readonly Region[];
  /** Wood beyond sawn and joint ends in the blank, mm. */
  readonly endAllowance: number;
  /** Every routed edge, in the order of the outline, none twice. */
  readonly offsets: readonly EdgeOffset[];
  readonly gaps: readonly Gap[];
  readonly openings: readonly RoutedOpening[];
  /** Where the template lies while the machine is used, the face side of the part up. */
  readonly templateSide: 'above' | 'below';
  readonly feed: readonly FeedRun[];
  /** Places to screw or tape the template, clear of the cutter's path. */
  readonly fixings: readonly Fixing[];
  readonly depth: DepthPlan;
  /** Tightest hollow of the routed edges; absent when every routed edge is straight or bulges. Radius 0 is a sharp inside corner. */
  readonly tightest?: { readonly radius: number; readonly at: Vec; readonly edge: string };
  /** Largest cutter of the maker's list that makes the part as drawn, with a whole template, by this guide kind; absent when none does. */
  readonly largestCutter?: Cutter;
  /** Widest blade of the list that follows the saw line; absent when none does. */
  readonly blade?: { readonly blade: Blade; readonly leastRadius: number };
  /** Tightest hollow of the saw line, mm, and where; absent when it has none. Sharp inside corners are sawn from both sides. */
  readonly tightestCurve?: { readonly radius: number; readonly at: Vec };
}
