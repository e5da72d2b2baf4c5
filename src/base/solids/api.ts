import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import type { Vec3 } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Hollow } from '../contact/without-pockets.ts';

/** What reckons with solids, loaded once. What lies in it is the business of this folder alone. */
export interface SolidKernel {
  readonly wasm: ManifoldToplevel;
}

/** A part as a solid in the world. It holds memory that only `freeSolids` gives back. */
export interface Solid {
  readonly part: PlacedPart;
  readonly pockets: readonly Hollow[];
  /** The business of this folder alone. */
  readonly body: Manifold;
}

/** A box along the axes of the world, mm. */
export interface Box3 {
  readonly min: Vec3;
  readonly max: Vec3;
}
