import { cross, directionAt, dot, locate, type Region, SMOOTH_TURN } from '../../geometry/index.ts';
import type { PocketCorner } from './api.ts';

/**
 * Inside corners of a pocket, those that lie in the wood and not on an open side of it, and what a cutter of a radius (mm) leaves there:
 * with the walls meeting at θ in the pocket, r² (cot(θ/2) − (π − θ)/2) of area, reaching r (1/sin(θ/2) − 1) into the corner.
 */
export function cornersOfPocket(
  pocket: readonly Region[],
  wood: readonly Region[],
  radius: number,
): readonly PocketCorner[] {
  return pocket.flatMap(({ outer, holes }) =>
    [outer, ...holes].flatMap(({ edges }) =>
      edges.flatMap((edge, at): readonly PocketCorner[] => {
        const before = edges[(at + edges.length - 1) % edges.length]!;
        if (locate(wood, edge.from) !== 'inside') return [];
        const [into, out] = [directionAt(before, 1), directionAt(edge, 0)];
        const turn = Math.atan2(cross(into, out), dot(into, out));
        if (turn < SMOOTH_TURN) return [];
        const angle = Math.PI - turn;
        return [
          {
            at: edge.from,
            angle,
            residue: {
              area: radius * radius * (1 / Math.tan(angle / 2) - (Math.PI - angle) / 2),
              reach: radius * (1 / Math.sin(angle / 2) - 1),
            },
          },
        ];
      }),
    ),
  );
}
