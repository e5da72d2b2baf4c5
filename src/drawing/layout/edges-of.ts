import type { Edge, Region } from '../../geometry/index.ts';

/** Every edge of regions, outer loops and holes alike. */
export function edgesOf(regions: readonly Region[]): readonly Edge[] {
  return regions.flatMap(({ outer, holes }) => [outer, ...holes].flatMap(({ edges }) => edges));
}
