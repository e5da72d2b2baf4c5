import {
  boundsOfRegions,
  intersectRegions,
  leftOf,
  norm,
  type Outline,
  polygonOutline,
  type Region,
  scale,
  type Vec,
} from '../../geometry/index.ts';
import type { Cut } from '../api.ts';

/** What a cut leaves of the part's plane at a depth: the points p with normal · p ≤ offset, the normal of any length. */
export interface HalfPlane {
  readonly normal: Vec;
  readonly offset: number;
}

/** Where a cut passes at depth z of the part's frame (0 on the face side, less below it). */
export function halfPlaneAt({ plane }: Pick<Cut, 'plane'>, z: number): HalfPlane {
  return {
    normal: { x: plane.normal.x, y: plane.normal.y },
    offset: plane.offset - plane.normal.z * z,
  };
}

/** What lies within a half plane. The edge that it makes carries the cut's name and role. */
export function keepHalfPlane(
  regions: readonly Region[],
  { normal, offset }: HalfPlane,
  { name, role }: Pick<Cut, 'name' | 'role'>,
): readonly Region[] {
  const box = boundsOfRegions(regions);
  if (regions.length === 0 || box === undefined) return [];
  const corners = [
    { x: box.minX, y: box.minY },
    { x: box.maxX, y: box.minY },
    { x: box.maxX, y: box.maxY },
    { x: box.minX, y: box.maxY },
  ];
  const length = norm(normal.x, normal.y);
  const out = scale(normal, 1 / length);
  const reach = corners.map((p) => out.x * p.x + out.y * p.y - offset / length);
  if (Math.max(...reach) <= 0) return regions;
  if (Math.min(...reach) >= 0) return [];
  return intersectRegions(regions, [
    { outer: coverage(out, offset / length, corners, { id: name, role }), holes: [] },
  ]);
}

/** A rectangle that holds all of the corners that lie within the half plane, its first edge on the half plane's line. */
function coverage(
  out: Vec,
  offset: number,
  corners: readonly Vec[],
  tag: { readonly id: string; readonly role: Cut['role'] },
): Outline {
  const along = leftOf(out);
  const across = corners.map((p) => p.x * along.x + p.y * along.y);
  const depths = corners.map((p) => offset - (p.x * out.x + p.y * out.y));
  const margin = 1 + Math.max(...across) - Math.min(...across);
  const [first, last] = [Math.min(...across) - margin, Math.max(...across) + margin];
  const depth = Math.max(...depths) + margin;
  const at = (t: number, d: number): Vec => ({
    x: along.x * t + out.x * (offset - d),
    y: along.y * t + out.y * (offset - d),
  });
  return polygonOutline([at(first, 0), at(last, 0), at(last, depth), at(first, depth)], tag);
}
