import { add3, pointToWorld, scale3, type Vec3 } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Hollow } from '../contact/without-pockets.ts';
import type { Box3, Solid } from './api.ts';
import { boundsOf } from './bounds-of.ts';
import { layersOfPart } from './layers-of-part.ts';
import { momentsOfLayer, sumMoments } from './moments-of-layer.ts';

/** What a part weighs, and where. */
export interface PartMass {
  readonly part: string;
  /** mm³. */
  readonly volume: number;
  /** kg. */
  readonly mass: number;
  /** Centre of mass in the world, mm. */
  readonly centre: Vec3;
}

export interface MeasuredSolid extends PartMass {
  /** The box round it in the world, mm, arcs as chords. */
  readonly bounds: Box3;
}

export interface MeasuredBase {
  readonly parts: readonly MeasuredSolid[];
  /** kg. */
  readonly mass: number;
  /** Centre of mass, mm. */
  readonly centre: Vec3;
}

/**
 * Volume and mass of a part at a density in kg/m³, and its centre of mass in the world. Exact to rounding, arcs included: taken from the outline, not from
 * the solid, whose chords lose up to two thirds of SOLID_CHORD along every arc that bulges. A part of which nothing is left has a
 * centre of NaN.
 */
export function massOfPart(part: PlacedPart, density: number, pockets: readonly Hollow[] = []): PartMass {
  const planes = part.cuts.map(({ plane }) => plane);
  const { volume, first } = sumMoments(
    layersOfPart(part, pockets).map((layer) => momentsOfLayer(layer, planes)),
  );
  const centre = pointToWorld(part.frame, scale3(first, 1 / volume));
  return { part: part.id, volume, mass: volume * 1e-9 * density, centre };
}

/** Every part and the whole, each part at its own density in kg/m³. */
export function measureSolids(
  solids: readonly Solid[],
  densityOf: (part: PlacedPart) => number,
): MeasuredBase {
  const parts = solids.map((solid) => ({
    ...massOfPart(solid.part, densityOf(solid.part), solid.pockets),
    bounds: boundsOf(solid.body),
  }));
  const mass = parts.reduce((sum, part) => sum + part.mass, 0);
  const moment = parts.reduce((sum, part) => add3(sum, scale3(part.centre, part.mass)), { x: 0, y: 0, z: 0 });
  return { parts, mass, centre: scale3(moment, 1 / mass) };
}
