import type { Edge, Region, Vec } from '../api.ts';
import { subtractRegions } from '../boolean/booleans.ts';
import { pointAt } from '../edge.ts';
import { closeRegions, openRegions } from '../offset/open-close.ts';
import { RESIDUE_TOLERANCE } from '../tolerance.ts';
import { areaOfRegions } from './area.ts';
import { nearestOnEdges } from './nearest.ts';

/** A place that a disc cannot reach. */
export interface TightPlace {
  /** What the disc cannot cover. */
  readonly region: Region;
  /** Its point farthest from all that the disc can cover, and how far that is, mm. */
  readonly at: Vec;
  readonly reach: number;
  /** mm². */
  readonly area: number;
  /** Identities of the edges of the regions that bound it. */
  readonly edges: readonly string[];
}

/** Places looked at on each edge for the farthest one. */
const LOOKS = 8;

/**
 * The places that a disc of radius r (mm) cannot reach from inside the regions (outside corners and arcs sharper than r, limbs
 * narrower than 2r), or from outside (inside corners and hollows sharper than r, gaps narrower than 2r). Places
 * that reach less than RESIDUE_TOLERANCE are none. The largest reach comes first.
 */
export function tightPlaces(regions: readonly Region[], r: number, side: 'inside' | 'outside'): TightPlace[] {
  if (!(r > 0)) throw new RangeError(`a disc needs a positive radius, not ${r}`);
  const isInside = side === 'inside';
  const reached = isInside ? openRegions(regions, r) : closeRegions(regions, r);
  const left = isInside ? subtractRegions(regions, reached) : subtractRegions(reached, regions);
  const own = edgesOf(regions);
  const front = edgesOf(reached);
  const places = left.map((region): TightPlace => {
    const edges = edgesOf([region]);
    const { at, reach } = farthest(edges, front);
    const ids = new Set(edges.filter((edge) => isOn(own, edge)).map(({ tag }) => tag.id));
    return { region, at, reach, area: areaOfRegions([region]), edges: [...ids] };
  });
  return places.filter(({ reach }) => reach > RESIDUE_TOLERANCE).sort((a, b) => b.reach - a.reach);
}

function edgesOf(regions: readonly Region[]): Edge[] {
  return regions.flatMap(({ outer, holes }) => [outer, ...holes].flatMap(({ edges }) => edges));
}

/** Without a front (nothing is reached at all) every place is endlessly far. */
function farthest(
  edges: readonly Edge[],
  front: readonly Edge[],
): { readonly at: Vec; readonly reach: number } {
  let best = { at: edges[0]!.from, reach: front.length === 0 ? Infinity : 0 };
  if (front.length === 0) return best;
  for (const edge of edges) {
    for (let i = 0; i < LOOKS; i++) {
      const at = pointAt(edge, i / LOOKS);
      const reach = nearestOnEdges(front, at).distance;
      if (reach > best.reach) best = { at, reach };
    }
  }
  return best;
}

function isOn(own: readonly Edge[], edge: Edge): boolean {
  return nearestOnEdges(own, pointAt(edge, 0.5)).distance < RESIDUE_TOLERANCE / 10;
}
