import {
  add3,
  boundsOfEdge,
  distance,
  type Edge,
  intersectEdges,
  type Line,
  line,
  norm,
  POSITION_TOLERANCE,
  scale3,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import type { Wall } from './api.ts';
import { centresAt, type DrilledHole, farthestOfHalf } from './drilled-hole.ts';

const TAG = { id: 'hole', role: 'joint' } as const;
const CORNERS = 360;

/** Sine of the angle at which a line comes out a thousand times its distance from the surface further on: never. */
export const FLATTEST = 1e-3;

/**
 * Where lines along the hole, all round it, come out of the outline's edges: wood beyond the bottom along each. Of edges that surely lie no nearer
 * than `than` (mm beyond the bottom) nothing need be said.
 */
export function bottomToOutline(hole: DrilledHole, edges: readonly Edge[], than: number): readonly Wall[] {
  const { along, radius, depth } = hole;
  const run = norm(along.x, along.y);
  if (run <= FLATTEST) return [];
  const centres = centresAt(hole, 0.5);
  const facing = edges.filter((edge) => {
    const { ahead, past, aside } = laneTo(edge, along, centres, radius);
    return aside <= POSITION_TOLERANCE && past >= -POSITION_TOLERANCE && ahead / run - depth / 2 < than;
  });
  const met = facing.map((edge) => ({
    edge,
    wall: edge.kind === 'line' ? straightBehind(hole, edge) : undefined,
  }));
  const straight = met.flatMap(({ wall }) => wall ?? []);
  const others = met.filter(({ wall }) => wall === undefined).map(({ edge }) => edge);
  return others.length === 0 ? straight : [...straight, ...alongRays(hole, others)];
}

/** Behind a hole that runs on into the middle of a straight edge from the wood's side: most often. */
function straightBehind(hole: DrilledHole, { from, to, tag }: Line): Wall | undefined {
  const { along, depth } = hole;
  const long = distance(from, to);
  const [x, y] = [(to.x - from.x) / long, (to.y - from.y) / long];
  const out = { x: y, y: -x, z: 0 };
  const approach = out.x * along.x + out.y * along.y;
  if (approach <= FLATTEST) return undefined;
  const nearest = farthestOfHalf(hole, out);
  const beyond = ((from.x - nearest.x) * out.x + (from.y - nearest.y) * out.y) / approach;
  const at = add3(nearest, scale3(along, beyond));
  const share = ((at.x - from.x) * x + (at.y - from.y) * y) / long;
  return beyond > 0 && share >= 0 && share <= 1 ? { wood: beyond - depth / 2, at, on: tag.id } : undefined;
}

/** All round the hole, one ray after the other in the order in which they might come out, until none is left that could do so sooner. */
function alongRays(hole: DrilledHole, edges: readonly Edge[]): readonly Wall[] {
  const { along, radius, depth } = hole;
  const [u, v] = squareTo(along);
  const centres = centresAt(hole, 0.5);
  const startOf = (at: number): Vec3 => {
    const centre = centres[Math.floor(at / RAYS.length)]!;
    const { x, y } = RAYS[at % RAYS.length]!;
    return add3(centre, add3(scale3(u, radius * x), scale3(v, radius * y)));
  };
  const run = norm(along.x, along.y);
  const way = { x: along.x / run, y: along.y / run };
  const soonest = new Float64Array(centres.length * RAYS.length);
  for (let at = 0; at < soonest.length; at++) soonest[at] = soonestOf(edges, startOf(at), way) / run;
  let least: Wall | undefined;
  for (;;) {
    let next = 0;
    for (let at = 1; at < soonest.length; at++) if (soonest[at]! < soonest[next]!) next = at;
    const far = soonest[next]!;
    if (far === Infinity || (least !== undefined && far - depth / 2 >= least.wood)) break;
    soonest[next] = Infinity;
    const start = startOf(next);
    const first = firstMet(line(start, add3(start, scale3(along, REACH)), TAG), edges);
    if (first === undefined) continue;
    const beyond = first.t * REACH;
    const wood = beyond - depth / 2;
    if (least === undefined || wood < least.wood)
      least = { wood, at: add3(start, scale3(along, beyond)), on: first.edge.tag.id };
  }
  return least === undefined ? [] : [least];
}

/** Where rays start, in radii from a centre: there, and all round it. */
const RAYS: readonly Vec[] = [
  { x: 0, y: 0 },
  ...Array.from({ length: CORNERS }, (_, k) => {
    const turn = (k * 2 * Math.PI) / CORNERS;
    return { x: Math.cos(turn), y: Math.sin(turn) };
  }),
];

function soonestOf(edges: readonly Edge[], start: Vec, way: Vec): number {
  let soonest = Infinity;
  for (const edge of edges) soonest = Math.min(soonest, soonestOn(edge, start, way));
  return soonest;
}

/** How far along a ray (mm in the plane) an edge is met at the soonest, if at all: where the ray meets its line or circle. */
export function soonestOn(edge: Edge, { x, y }: Vec, way: Vec): number {
  if (edge.kind === 'line') {
    const [dx, dy] = [edge.to.x - edge.from.x, edge.to.y - edge.from.y];
    const approach = way.x * dy - way.y * dx;
    const far = ((edge.from.x - x) * dy - (edge.from.y - y) * dx) / approach;
    if (Math.abs(approach) < FLATTEST) return 0;
    return far < -POSITION_TOLERANCE ? Infinity : far;
  }
  const [cx, cy] = [edge.centre.x - x, edge.centre.y - y];
  const off = way.x * cy - way.y * cx;
  if (Math.abs(off) > edge.radius + POSITION_TOLERANCE) return Infinity;
  const half = Math.sqrt(Math.max(0, edge.radius * edge.radius - off * off));
  const middle = way.x * cx + way.y * cy;
  if (middle + half < -POSITION_TOLERANCE) return Infinity;
  return middle > half ? middle - half : middle + half;
}

/**
 * How an edge lies to the lane that the hole drills on, seen along the thickness: mm from the foremost of the lane's beginning to its nearest and from the
 * hindmost to its farthest point, and mm beside the lane (negative within). What lies there may seem nearer than it is, never farther.
 */
function laneTo(edge: Edge, along: Vec3, centres: readonly Vec3[], radius: number) {
  const run = norm(along.x, along.y);
  const [x, y] = [along.x / run, along.y / run];
  const { minX, minY, maxX, maxY } = boundsOfEdge(edge);
  // Of a line its two ends are enough; round an arc stands its box.
  const seen: readonly Vec[] =
    edge.kind === 'line'
      ? [edge.from, edge.to]
      : [
          { x: minX, y: minY },
          { x: maxX, y: minY },
          { x: maxX, y: maxY },
          { x: minX, y: maxY },
        ];
  const spread = (points: readonly Vec[]) => {
    const on = points.map((p) => x * p.x + y * p.y);
    const off = points.map((p) => x * p.y - y * p.x);
    return { on, least: Math.min(...off), most: Math.max(...off) };
  };
  const [own, other] = [spread(centres), spread(seen)];
  return {
    ahead: Math.min(...other.on) - Math.max(...own.on) - radius,
    past: Math.max(...other.on) - Math.min(...own.on) + radius,
    aside: Math.max(other.least - own.most, own.least - other.most) - radius,
  };
}

/** mm: longer than any part. */
const REACH = 1e5;

function firstMet(
  ray: Line,
  edges: readonly Edge[],
): { readonly t: number; readonly edge: Edge } | undefined {
  let first: { readonly t: number; readonly edge: Edge } | undefined;
  for (const edge of edges) {
    const met = intersectEdges(ray, edge);
    if (met.kind !== 'points') continue;
    for (const { onA } of met.points) if (first === undefined || onA < first.t) first = { t: onA, edge };
  }
  return first;
}

/** Two unit vectors square to a unit vector and to each other. */
function squareTo({ x, y, z }: Vec3): readonly [Vec3, Vec3] {
  const run = norm(x, y);
  const u = { x: -y / run, y: x / run, z: 0 };
  return [u, { x: -z * u.y, y: z * u.x, z: x * u.y - y * u.x }];
}
