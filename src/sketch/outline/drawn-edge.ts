import type { Edge, EdgeRole, Vec } from '../../geometry/index.ts';
import type { Place } from '../source/place.ts';

/** One edge of a form as drawn: lines and arcs one after another, before any corner is rounded. */
export interface DrawnEdge {
  readonly name: string;
  readonly role: EdgeRole;
  readonly from: Vec;
  readonly to: Vec;
  /** At least one; each begins exactly where the one before it ends. */
  readonly pieces: readonly Edge[];
  /** Name of the corner at its end. */
  readonly corner: string;
  /** Where the form declares it. */
  readonly place: Place;
}
