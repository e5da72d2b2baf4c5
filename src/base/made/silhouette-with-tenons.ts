import { pointToWorld, polygonOutline, type Region, uniteRegions } from '../../geometry/index.ts';
import type { Tenon } from '../joints/api.ts';
import { hullOf } from '../joints/hull.ts';
import { pointsRound } from '../joints/points-round.ts';
import type { Shape } from './shape.ts';

/** What a piece fills of its plane, with the tenons that stand out of it: its cut length includes them. */
export function silhouetteWithTenons({
  silhouette,
  work,
}: Pick<Shape, 'silhouette' | 'work'>): readonly Region[] {
  const tenons = work.filter((each): each is Tenon => each.kind === 'tenon').map(shadowOf);
  return tenons.length === 0 ? silhouette : uniteRegions(silhouette, tenons);
}

function shadowOf({ own, outline, length, joint }: Tenon): Region {
  const round = pointsRound(outline);
  const corners = [0, length].flatMap((z) => round.map((p) => pointToWorld(own, { ...p, z })));
  return { outer: polygonOutline(hullOf(corners), { id: `${joint} tenon`, role: 'joint' }), holes: [] };
}
