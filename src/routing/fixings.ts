import {
  boundsOfRegions,
  circleOutline,
  distance,
  intersectRegions,
  offsetRegions,
  pointAt,
  type Region,
  subtractRegions,
  type Vec,
} from '../geometry/index.ts';
import { SCREW, TAPE } from '../materials/index.ts';
import type { SketchedPart } from '../sketch/index.ts';
import type { Fixing, RoutedOpening } from './api.ts';
import { tapePlaces } from './tape-places.ts';

/**
 * Where the template may be held to the work, all clear of the cutter's path: screws in the waste beyond sawn and joint
 * ends, tape where the part is wide enough for tape alone, and screws that hold the waste of an opening to the bench.
 */
export function fixingPlaces(
  part: SketchedPart,
  template: readonly Region[],
  blank: readonly Region[],
  openings: readonly RoutedOpening[],
  cutterDiameter: number,
): Fixing[] {
  const drawn = [part.region];
  const solid = [{ outer: part.region.outer, holes: [] }];
  const safe = offsetRegions(template, -SCREW.fromCut);
  const ends = subtractRegions(intersectRegions(template, blank), solid)
    .flatMap((zone) => intersectRegions(offsetRegions([zone], -SCREW.fromEnd), safe))
    .flatMap(screwsIn)
    .map((at) => screw('screw', at));
  const waste = openings.flatMap((opening) => {
    const slug = offsetRegions(opening.cut, -(cutterDiameter + SCREW.fromCut));
    const start = { outer: circleOutline(opening.at, cutterDiameter / 2 + SCREW.fromCut, TAG, 1), holes: [] };
    return subtractRegions(slug, [start])
      .map((zone) => screwsIn(zone)[0]!)
      .map((at) => screw('waste', at));
  });
  const held = offsetRegions(intersectRegions(template, drawn), -TAPE.fromEdge);
  return [...ends, ...waste, ...tapePlaces(part.centreLine, held, boundsOfRegions(drawn))];
}

const TAG = { id: 'plunge', role: 'left' } as const;

function screw(kind: 'screw' | 'waste', at: Vec): Fixing {
  return { kind, at, width: SCREW.room, height: SCREW.room, turn: 0 };
}

/** One or, in a wide zone, two places whose room is free: any point of the zone may be taken. */
function screwsIn(zone: Region): Vec[] {
  const points = zone.outer.edges.flatMap((edge) => [edge.from, pointAt(edge, 0.5)]);
  let pair: [Vec, Vec] = [points[0]!, points[0]!];
  let wide = 0;
  for (const p of points) {
    for (const q of points) {
      const apart = distance(p, q);
      if (apart > wide) [wide, pair] = [apart, [p, q]];
    }
  }
  if (wide >= SCREW.wideEnd - 2 * SCREW.fromCut) return pair;
  return [points.reduce((best, p) => (reach(p, points) < reach(best, points) ? p : best))];
}

function reach(p: Vec, points: readonly Vec[]): number {
  return Math.max(...points.map((q) => distance(p, q)));
}
