import type { Region, Vec } from '../../geometry/index.ts';

/** What regions that are alike to a hundred-thousandth of a millimetre have in common, whichever way and from wherever their edges are run through. */
export function keyOfRegions(regions: readonly Region[]): string {
  const place = (p: Vec): string => `${rounded(p.x)},${rounded(p.y)}`;
  return regions
    .flatMap(({ outer, holes }) => [outer, ...holes].flatMap((loop) => loop.edges))
    .map((edge) => {
      const ends = [place(edge.from), place(edge.to)].sort().join(' ');
      return edge.kind === 'line' ? ends : `${ends} ${place(edge.centre)}`;
    })
    .sort()
    .join(';');
}

/** Hundred-thousandths of a millimetre; never a negative zero. */
const rounded = (value: number): number => Math.round(value * 1e5) + 0;
