import type { EdgeTag, Vec } from '../../geometry/index.ts';
import type { Desk } from '../evaluate/desk.ts';
import type { DrawnEdge } from './drawn-edge.ts';

/** What an edge is drawn from: where it starts, and the edge that arrived there. */
export interface Start {
  readonly from: Vec;
  readonly before: DrawnEdge | undefined;
}

/** What every kind of edge is drawn with. */
export interface Stroke extends Start {
  readonly to: Vec;
  readonly tag: EdgeTag;
  readonly desk: Desk;
}
