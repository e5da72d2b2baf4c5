import type { Vec } from '../api.ts';

/** What can be wrong with regions. */
export type FaultKind =
  /** A loop without edges. */
  | 'empty'
  /** A coordinate or radius that is not a finite number. */
  | 'not-finite'
  /** An edge that does not end where the next begins. */
  | 'unclosed'
  /** A line or arc of no length. */
  | 'zero-edge'
  /** An arc whose radius is not positive, or whose ends do not lie on its circle. */
  | 'bad-arc'
  /** A loop that crosses, touches or runs along itself. */
  | 'self-crossing'
  /** Two loops that cross or run along each other. */
  | 'crossing'
  /** An outer loop that runs clockwise, or a hole that runs anticlockwise. */
  | 'wrong-direction'
  /** A hole that does not lie inside its outer loop. */
  | 'hole-outside'
  /** A hole inside another hole of its region, or a region inside the material of another. */
  | 'overlap';

/** One reason why regions are not valid, and where. */
export interface Fault {
  readonly kind: FaultKind;
  readonly at: Vec;
  /** Number of the region. */
  readonly region: number;
  /** 0 for the outer loop, 1 for the first hole, and so on. */
  readonly loop: number;
  /** Number of the edge in its loop. */
  readonly edge: number;
  readonly message: string;
}
