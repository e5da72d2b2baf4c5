import type { Region, Vec } from '../../geometry/index.ts';

/** A threaded insert, all mm. */
export interface Insert {
  readonly thread: string;
  /** Over its outside thread. */
  readonly outer: number;
  readonly length: number;
  readonly pilot: number;
}

/** Holes under one part of the base that lies under the top, seen from above, mm. */
export interface InsertRow {
  /** The placed part. */
  readonly part: string;
  /** Its upper face. */
  readonly footprint: readonly Region[];
  readonly holes: readonly Vec[];
}

/** Where inserts go into the underside of a top, and how they are drilled. */
export interface InsertPlan {
  readonly insert: Insert;
  /** Of the holes, mm; what is left of the top above them. */
  readonly depth: number;
  readonly left: number;
  readonly rows: readonly InsertRow[];
  /** Least wood from the outside of a hole to the top's edge, mm. */
  readonly leastEdge: number;
}
