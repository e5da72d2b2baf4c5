import type { Region } from '../api.ts';
import { offsetRegions } from './offset-regions.ts';

/** All that a disc of radius r (mm) covers while it stays inside the regions: what a cutter leaves of a hole it clears. */
export function openRegions(regions: readonly Region[], radius: number): Region[] {
  return offsetRegions(offsetRegions(regions, -radius), radius);
}

/** The regions with every inside corner filled that a disc of radius r (mm) outside cannot reach. */
export function closeRegions(regions: readonly Region[], radius: number): Region[] {
  return offsetRegions(offsetRegions(regions, radius), -radius);
}
