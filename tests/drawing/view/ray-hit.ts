import type { Camera, ViewedPart } from '../../../src/drawing/view/api.ts';
import {
  directionToFrame,
  dot3,
  intersectEdges,
  line,
  locate,
  pointToFrame,
  pointToWorld,
  scale3,
  type Vec,
  type Vec3,
} from '../../../src/geometry/index.ts';

/** What one sees through a point of the picture. */
export interface Hit {
  readonly part: string;
  /** `face`, `back`, a cut's name or the number of a wall. */
  readonly surface: string;
  /** Along the camera's z, mm. */
  readonly depth: number;
}

/**
 * What a ray meets first, from the exact outlines by the outline kernel: nothing in it is shared with the way views are drawn. Undefined
 * where it meets nothing.
 */
export function rayHit(parts: readonly ViewedPart[], camera: Camera, q: Vec): Hit | undefined {
  const origin = pointToWorld(camera, { ...q, z: 0 });
  let best: Hit | undefined;
  for (const part of parts) {
    const hit = hitPart(part, origin, camera.z);
    if (hit !== undefined && (best === undefined || hit.depth > best.depth)) best = hit;
  }
  return best;
}

function hitPart(part: ViewedPart, origin: Vec3, sight: Vec3): Hit | undefined {
  const o = pointToFrame(part.frame, origin);
  // Going away from the viewer.
  const d = scale3(directionToFrame(part.frame, sight), -1);
  const planes = [
    { name: 'face', normal: { x: 0, y: 0, z: 1 }, offset: 0 },
    { name: 'back', normal: { x: 0, y: 0, z: -1 }, offset: part.drawn.thickness },
    ...part.cuts.map(({ name, plane }) => ({ name, ...plane })),
  ];
  let [t0, t1, surface] = [-1e5, 1e5, ''];
  for (const { name, normal, offset } of planes) {
    const slope = dot3(normal, d);
    const t = (offset - dot3(normal, o)) / slope;
    if (Math.abs(slope) < 1e-12) {
      if (dot3(normal, o) > offset) return undefined;
    } else if (slope > 0) t1 = Math.min(t1, t);
    else if (t > t0) [t0, surface] = [t, name];
  }
  if (t0 >= t1) return undefined;
  const at = (t: number): Vec => ({ x: o.x + t * d.x, y: o.y + t * d.y });
  const { region } = part.drawn;
  if (Math.hypot(d.x, d.y) < 1e-9) {
    return locate([region], o) === 'inside' ? { part: part.id, surface, depth: -t0 } : undefined;
  }
  const way = line(at(t0), at(t1), { id: 'ray', role: 'left' });
  const walls = [region.outer, ...region.holes]
    .flatMap(({ edges }) => edges)
    .flatMap((edge, number) => {
      const met = intersectEdges(way, edge);
      return met.kind !== 'points'
        ? []
        : met.points.map(({ point }) => ({ number, t: t0 + (t1 - t0) * shareOf(way.from, way.to, point) }));
    })
    .sort((a, b) => a.t - b.t);
  const stops = [{ number: -1, t: t0 }, ...walls, { number: -1, t: t1 }];
  for (let i = 0; i + 1 < stops.length; i++) {
    const [a, b] = [stops[i]!, stops[i + 1]!];
    if (b.t - a.t < 1e-6 || locate([region], at((a.t + b.t) / 2)) !== 'inside') continue;
    return { part: part.id, surface: a.number < 0 ? surface : `wall ${a.number}`, depth: -a.t };
  }
  return undefined;
}

function shareOf(from: Vec, to: Vec, p: Vec): number {
  const [x, y] = [to.x - from.x, to.y - from.y];
  return ((p.x - from.x) * x + (p.y - from.y) * y) / (x * x + y * y);
}
