import type { Manifold } from 'manifold-3d';
import { add3, cross3, dot3, scale3, subtract3, type Vec3 } from '../../geometry/index.ts';
import { facetsOf } from './facets.ts';

/** Centre of a body's volume, mm: tetrahedra between its facets and one of its corners. Of a body of no volume it is NaN. */
export function centreOf(body: Manifold): Vec3 {
  const facets = facetsOf(body);
  const origin = facets[0]?.[0] ?? { x: 0, y: 0, z: 0 };
  let sixfold = 0;
  let moment: Vec3 = { x: 0, y: 0, z: 0 };
  for (const facet of facets) {
    const [a, b, c] = facet.map((corner) => subtract3(corner, origin)) as [Vec3, Vec3, Vec3];
    const volume = dot3(a, cross3(b, c));
    sixfold += volume;
    moment = add3(moment, scale3(add3(a, add3(b, c)), volume / 4));
  }
  return add3(origin, scale3(moment, 1 / sixfold));
}
