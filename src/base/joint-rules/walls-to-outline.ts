import {
  ANGLE_TOLERANCE,
  add3,
  boundsOfEdge,
  distance,
  type Edge,
  intersectEdges,
  type Line,
  line,
  locate,
  nearestOnEdge,
  nearestOnEdges,
  POSITION_TOLERANCE,
  type Region,
  scale3,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import type { Wall } from './api.ts';
import { centresAt, type DrilledHole, farthestOfHole } from './drilled-hole.ts';

const TAG = { id: 'hole', role: 'joint' } as const;
const CORNERS = 360;

/** Sine of the angle at which a line comes out a thousand times its distance from the surface further on: never. */
export const FLATTEST = 1e-3;

/**
 * The hole seen along the part's thickness: corners of the convex shape it covers, anticlockwise. Its flat sides, along the hole and along
 * a slot, are exact.
 */
function shadowOf(hole: DrilledHole): readonly Vec3[] {
  const turns = Array.from({ length: CORNERS }, (_, k) => ((k + 0.5) * 2 * Math.PI) / CORNERS);
  // A hair to each side of square to it, one finds both ends of the flat.
  for (const { x, y } of hole.slot === undefined ? [hole.along] : [hole.along, hole.slot])
    for (const aside of x === 0 && y === 0 ? [] : [-ANGLE_TOLERANCE, ANGLE_TOLERANCE])
      turns.push(wholeTurn(Math.atan2(x, -y) + aside), wholeTurn(Math.atan2(-x, y) + aside));
  const corners: Vec3[] = [];
  for (const turn of turns.sort((a, b) => a - b)) {
    const p = farthestOfHole(hole, { x: Math.cos(turn), y: Math.sin(turn), z: 0 });
    const last = corners.at(-1);
    if (last === undefined || p.x !== last.x || p.y !== last.y) corners.push(p);
  }
  return corners;
}

const wholeTurn = (angle: number): number => (angle < 0 ? angle + 2 * Math.PI : angle);

/** What is asked of a hole seen along the part's thickness, once for all edges that it is held against. */
export interface Shadow {
  readonly hole: DrilledHole;
  /** A disc that holds all of it. */
  readonly middle: Vec;
  readonly reach: number;
  readonly corners: () => readonly Vec3[];
}

export function shadowOfHole(hole: DrilledHole): Shadow {
  const { at, along, depth, radius, slot = { x: 0, y: 0 } } = hole;
  const { x, y } = add3(at, scale3(along, depth / 2));
  const reach = (depth / 2) * Math.hypot(along.x, along.y) + Math.hypot(slot.x, slot.y) + radius;
  let corners: readonly Vec3[] | undefined;
  const ask = (): readonly Vec3[] => {
    corners ??= shadowOf(hole);
    return corners;
  };
  return { hole, middle: { x, y }, reach, corners: ask };
}

/** Wood that there surely is between a hole and an edge, mm; at most 0 where they may cross. */
export const surelyBeside = ({ middle, reach }: Shadow, edge: Edge): number =>
  nearestOnEdge(edge, middle).distance - reach - POSITION_TOLERANCE;

/** Least wood between a hole and one edge of the outline, square to the part's sides. */
export function sideToOutline(shadow: Shadow, edge: Edge, outline: readonly Region[]): Wall {
  const straight = edge.kind === 'line' ? straightTo(shadow.hole, edge) : undefined;
  if (straight !== undefined) return straight;
  const corners = shadow.corners();
  const sides = corners.map((from, i) => line(from, corners[(i + 1) % corners.length]!, TAG));
  const crosses =
    surelyBeside(shadow, edge) <= 0 && sides.some((side) => intersectEdges(side, edge).kind !== 'none');
  if (crosses) return breakThrough(corners, edge, outline);
  let least: { readonly wood: number; readonly on: Vec; readonly z: number } | undefined;
  const offer = (wood: number, on: Vec, z: number): void => {
    if (least === undefined || wood < least.wood) least = { wood, on, z };
  };
  for (const corner of corners) {
    const near = nearestOnEdge(edge, corner);
    offer(near.distance, near.point, corner.z);
  }
  // Where a corner of the outline, or the belly of an arc, looks at a flat side of the hole.
  const looks = edge.kind === 'line' ? [edge.from, edge.to] : [edge.from, edge.to, edge.centre];
  for (const p of looks) {
    const side = nearestOnEdges(sides, p);
    const back = nearestOnEdge(edge, side.point);
    offer(back.distance, back.point, zAlong(corners, side.index, side.t));
  }
  const { wood, on, z } = least!;
  return { wood, at: { ...on, z }, on: edge.tag.id };
}

/** Where all of the hole lies on the wood's side of a straight edge and looks at it square: most often. */
function straightTo(hole: DrilledHole, { from, to, tag }: Line): Wall | undefined {
  const long = distance(from, to);
  const [x, y] = [(to.x - from.x) / long, (to.y - from.y) / long];
  const { z, ...nearest } = farthestOfHole(hole, { x: y, y: -x, z: 0 });
  const [dx, dy] = [nearest.x - from.x, nearest.y - from.y];
  const wood = x * dy - y * dx;
  const share = (x * dx + y * dy) / long;
  if (!(wood > POSITION_TOLERANCE && share >= 0 && share <= 1)) return undefined;
  return { wood, at: { x: nearest.x + wood * y, y: nearest.y - wood * x, z }, on: tag.id };
}

function zAlong(corners: readonly Vec3[], i: number, t: number): number {
  const [from, to] = [corners[i]!, corners[(i + 1) % corners.length]!];
  return from.z + t * (to.z - from.z);
}

/** How far the hole's corners stand out of the wood beyond an edge that it crosses. */
function breakThrough(corners: readonly Vec3[], edge: Edge, outline: readonly Region[]): Wall {
  let worst: Wall = { wood: 0, at: { ...edge.from, z: corners[0]!.z }, on: edge.tag.id };
  for (const corner of corners) {
    if (locate(outline, corner) !== 'outside') continue;
    const { distance, point } = nearestOnEdge(edge, corner);
    if (-distance < worst.wood) worst = { wood: -distance, at: { ...point, z: corner.z }, on: edge.tag.id };
  }
  return worst;
}

/**
 * Where lines along the hole, all round it, come out of the outline's edges: wood beyond the bottom along each. Of edges that surely lie no nearer
 * than `than` (mm beyond the bottom) nothing need be said.
 */
export function bottomToOutline(hole: DrilledHole, edges: readonly Edge[], than: number): readonly Wall[] {
  const { along, radius, depth } = hole;
  const run = Math.hypot(along.x, along.y);
  if (run <= FLATTEST) return [];
  const centres = centresAt(hole, 0.5);
  const facing = edges.filter((edge) => {
    const { ahead, past, aside } = laneTo(edge, along, centres, radius);
    return aside <= POSITION_TOLERANCE && past >= -POSITION_TOLERANCE && ahead / run - depth / 2 < than;
  });
  if (facing.length === 0) return [];
  const [u, v] = squareTo(along);
  const starts = centres.flatMap((centre) => [
    centre,
    ...Array.from({ length: CORNERS }, (_, k) => {
      const turn = (k * 2 * Math.PI) / CORNERS;
      return add3(centre, add3(scale3(u, radius * Math.cos(turn)), scale3(v, radius * Math.sin(turn))));
    }),
  ]);
  return starts.flatMap((start) => {
    const ray = line(start, add3(start, scale3(along, REACH)), TAG);
    const first = firstMet(ray, facing);
    if (first === undefined) return [];
    const beyond = first.t * REACH;
    return [{ wood: beyond - depth / 2, at: add3(start, scale3(along, beyond)), on: first.edge.tag.id }];
  });
}

/**
 * How an edge lies to the lane that the hole drills on, seen along the thickness: mm from the foremost of the lane's beginning to its nearest and from the
 * hindmost to its farthest point, and mm beside the lane (negative within). What lies there may seem nearer than it is, never farther.
 */
function laneTo(edge: Edge, along: Vec3, centres: readonly Vec3[], radius: number) {
  const run = Math.hypot(along.x, along.y);
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
  const run = Math.hypot(x, y);
  const u = { x: -y / run, y: x / run, z: 0 };
  return [u, { x: -z * u.y, y: z * u.x, z: x * u.y - y * u.x }];
}
