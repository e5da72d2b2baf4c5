import {
  add,
  angleOf,
  type Edge,
  intersectEdges,
  line,
  nearestOnEdge,
  polar,
  subtract,
  sweepOf,
  type Vec,
} from '../../geometry/index.ts';

interface Approach {
  readonly distance: number;
  readonly onPolygon: Vec;
  readonly onEdge: Vec;
}

const TAG = { id: 'polygon', role: 'left' } as const;

/** Where a polygon comes nearest to an edge: exact, arcs as arcs. Distance 0 where they meet. */
export function polygonToEdge(corners: readonly Vec[], edge: Edge): Approach {
  const sides = corners.map((from, at) => line(from, corners[(at + 1) % corners.length]!, TAG));
  for (const side of sides) {
    const met = intersectEdges(side, edge);
    if (met.kind !== 'none') {
      const { point } = met.kind === 'tangent' ? met.at : (met.points[0] ?? { point: side.from });
      return { distance: 0, onPolygon: point, onEdge: point };
    }
  }
  // Short of a meeting the nearest places are a corner of the polygon, an end of the edge, or where an arc runs along a side.
  const fromCorners = corners.map((p): Approach => {
    const near = nearestOnEdge(edge, p);
    return { distance: near.distance, onPolygon: p, onEdge: near.point };
  });
  const fromEdge = sides.flatMap((side) =>
    [edge.from, edge.to, ...alongArc(edge, side)].map((p): Approach => {
      const near = nearestOnEdge(side, p);
      return { distance: near.distance, onPolygon: near.point, onEdge: p };
    }),
  );
  return [...fromCorners, ...fromEdge].reduce((best, each) => (each.distance < best.distance ? each : best));
}

/** Places of an arc at which it runs along a side. */
function alongArc(edge: Edge, side: { readonly from: Vec; readonly to: Vec }): readonly Vec[] {
  if (edge.kind !== 'arc') return [];
  const { x, y } = subtract(side.to, side.from);
  const start = angleOf(subtract(edge.from, edge.centre));
  return [Math.atan2(-x, y), Math.atan2(x, -y)].flatMap((angle) => {
    const turned = edge.turn * (angle - start);
    const ahead = turned - 2 * Math.PI * Math.floor(turned / (2 * Math.PI));
    return ahead < sweepOf(edge) ? [add(edge.centre, polar(angle, edge.radius))] : [];
  });
}
