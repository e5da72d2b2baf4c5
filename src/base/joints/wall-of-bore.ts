import { heightOver, locate, nearestOnEdges, type Vec3 } from '../../geometry/index.ts';
import type { SolidPart } from '../contact/api.ts';
import type { Bore, Wall } from './api.ts';
import { hullOf } from './hull.ts';
import { pointsOfBore } from './points-of-bore.ts';
import { polygonToEdge } from './polygon-to-edge.ts';

export type BoreShape = Pick<Bore, 'own' | 'outline' | 'depth'> & {
  /** Names of the face that it is cut into, and of the edges that lie in it: no wall stands there. */
  readonly mouthOn: readonly string[];
};

/**
 * The least wood round a bore, beside it as well as behind it, to whichever face of the part is nearest; negative where it comes out. A part is
 * the prism of its outline within its cuts, so that the nearest of edges, faces and cut planes is the nearest face. Exact but for
 * the chords of the bore's round ends (SECTION_TOLERANCE).
 */
export function wallOfBore({ drawn, cuts }: SolidPart, bore: BoreShape): Wall {
  const { mouth, bottom } = pointsOfBore(bore);
  const points = [...mouth, ...bottom];
  const isMouth = (name: string): boolean => bore.mouthOn.includes(name);
  const flats: readonly { readonly name: string; readonly depth: (p: Vec3) => number }[] = [
    { name: 'face', depth: (p) => -p.z },
    { name: 'back', depth: (p) => p.z + drawn.thickness },
    ...cuts.map(({ name, plane }) => ({ name, depth: (p: Vec3) => -heightOver(plane, p) })),
  ];
  const walls = flats
    .filter(({ name }) => !isMouth(name))
    .map(({ name, depth }) => leastOver(points, (at): Wall => ({ value: depth(at), to: name, at })));
  return leastOver([...walls, ...wallsToEdges({ drawn }, points, isMouth)], (wall) => wall);
}

function wallsToEdges(
  { drawn: { region } }: Pick<SolidPart, 'drawn'>,
  points: readonly Vec3[],
  isMouth: (name: string) => boolean,
): readonly Wall[] {
  const edges = [region.outer, ...region.holes]
    .flatMap((loop) => loop.edges)
    .filter(({ tag }) => !isMouth(tag.id));
  if (edges.length === 0) return [];
  const outside = points.filter((p) => locate([region], p) === 'outside');
  if (outside.length > 0) {
    return outside.map((at) => {
      const { index, distance } = nearestOnEdges(edges, at);
      return { value: -distance, to: edges[index]!.tag.id, at };
    });
  }
  const hull = hullOf(points);
  return edges.map((edge) => {
    const { distance, onPolygon } = polygonToEdge(hull, edge);
    const z = leastOver(points, (p) => ({
      value: Math.hypot(p.x - onPolygon.x, p.y - onPolygon.y),
      z: p.z,
    })).z;
    return { value: distance, to: edge.tag.id, at: { ...onPolygon, z } };
  });
}

/** What has the least value of all that is made of a list. */
function leastOver<T, W extends { readonly value: number }>(items: readonly T[], make: (item: T) => W): W {
  return items.map(make).reduce((least, each) => (each.value < least.value ? each : least));
}
