import { type Edge, lengthOf } from '../../geometry/index.ts';

/** So many of the longest edges, longest first; those as long as others stay in their order. */
export function longest<E extends Edge>(edges: readonly E[], most: number): readonly E[] {
  const lengths = Float64Array.from(edges, lengthOf);
  // Sorting bare numbers is quick: only the few edges kept are sorted as such.
  const least = lengths.toSorted()[Math.max(0, edges.length - most)] ?? 0;
  return edges
    .map((edge, i) => ({ edge, length: lengths[i]! }))
    .filter(({ length }) => length >= least)
    .sort((a, b) => b.length - a.length)
    .slice(0, most)
    .map(({ edge }) => edge);
}
