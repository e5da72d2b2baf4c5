import { boundsOfRegions, momentsOfRegions, type Region } from '../../geometry/index.ts';

/** What the section of a beam does against bending in its own depth. */
export interface BeamSection {
  /** About the middle line, mm⁴. */
  readonly secondMoment: number;
  /** From the middle line to the outermost fibre, mm. */
  readonly toFibre: number;
}

/** A rectangle, mm: I = b h³ / 12. */
export function rectangleSection(width: number, depth: number): BeamSection {
  return { secondMoment: (width * depth ** 3) / 12, toFibre: depth / 2 };
}

/** Any section, drawn with its depth along y, mm. Bends about the level line through its centre of area, as if held upright. */
export function sectionOfRegions(regions: readonly Region[]): BeamSection {
  const { xx, centroid } = momentsOfRegions(regions);
  const box = boundsOfRegions(regions);
  return { secondMoment: xx, toFibre: Math.max(box.maxY - centroid.y, centroid.y - box.minY) };
}
