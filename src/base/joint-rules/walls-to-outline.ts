import {
  ANGLE_TOLERANCE,
  add3,
  distance,
  type Edge,
  intersectEdges,
  type Line,
  line,
  locate,
  nearestOnEdge,
  norm,
  POSITION_TOLERANCE,
  type Region,
  scale3,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import type { Wall } from './api.ts';
import { type DrilledHole, farthestOfHole, supportOfHole } from './drilled-hole.ts';

const TAG = { id: 'hole', role: 'joint' } as const;
const CORNERS = 360;

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
  const farthest = supportOfHole(hole);
  for (const turn of turns.sort((a, b) => a - b)) {
    const p = farthest({ x: Math.cos(turn), y: Math.sin(turn), z: 0 });
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
  const reach = (depth / 2) * norm(along.x, along.y) + norm(slot.x, slot.y) + radius;
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

/** Least wood between a hole and one edge of the outline that straightTo knows nothing of, square to the part's sides. */
export function sideToOutline(shadow: Shadow, edge: Edge, outline: readonly Region[]): Wall {
  const corners = shadow.corners();
  const sides = corners.map((from, i) => line(from, corners[(i + 1) % corners.length]!, TAG));
  const offs = corners.map((corner) => offCarrier(edge, corner));
  // The farther a side's end lies from the edge's line or circle, the longer it must be to reach that.
  const mayReach = ({ from, to }: Edge, i: number): boolean =>
    Math.min(offs[i]!, offs[(i + 1) % offs.length]!) <= distance(from, to) + POSITION_TOLERANCE;
  const crosses =
    surelyBeside(shadow, edge) <= 0 &&
    sides.some((side, i) => mayReach(side, i) && intersectEdges(side, edge).kind !== 'none');
  if (crosses) return breakThrough(corners, edge, outline);
  let least: { readonly wood: number; readonly on: Vec; readonly z: number } | undefined;
  const offer = (wood: number, on: Vec, z: number): void => {
    if (least === undefined || wood < least.wood) least = { wood, on, z };
  };
  corners.forEach((corner, i) => {
    // The roots of the two may differ in their last digit.
    if (least !== undefined && offs[i]! > least.wood + POSITION_TOLERANCE) return;
    const near = nearestOnEdge(edge, corner);
    offer(near.distance, near.point, corner.z);
  });
  // Where a corner of the outline, or the belly of an arc, looks at a flat side of the hole.
  const looks = edge.kind === 'line' ? [edge.from, edge.to] : [edge.from, edge.to, edge.centre];
  for (const p of looks) {
    const { i, near } = nearestSide(sides, p);
    const back = nearestOnEdge(edge, near.point);
    offer(back.distance, back.point, zAlong(corners, i, near.t));
  }
  const { wood, on, z } = least!;
  return { wood, at: { ...on, z }, on: edge.tag.id };
}

/** The same where all of the hole lies on the wood's side of a straight edge and looks at it square: most often. */
export function straightTo(hole: DrilledHole, edge: Edge): Wall | undefined {
  if (edge.kind === 'arc') return undefined;
  const { from, to, tag } = edge;
  const long = distance(from, to);
  const [x, y] = [(to.x - from.x) / long, (to.y - from.y) / long];
  const { z, ...nearest } = farthestOfHole(hole, { x: y, y: -x, z: 0 });
  const [dx, dy] = [nearest.x - from.x, nearest.y - from.y];
  const wood = x * dy - y * dx;
  const share = (x * dx + y * dy) / long;
  if (!(wood > POSITION_TOLERANCE && share >= 0 && share <= 1)) return undefined;
  return { wood, at: { x: nearest.x + wood * y, y: nearest.y - wood * x, z }, on: tag.id };
}

/** How far a point lies from an edge's line or circle, mm: never farther than from the edge itself. */
function offCarrier(edge: Edge, { x, y }: Vec): number {
  if (edge.kind === 'arc') {
    const [cx, cy] = [x - edge.centre.x, y - edge.centre.y];
    return Math.abs(Math.sqrt(cx * cx + cy * cy) - edge.radius);
  }
  const { from, to } = edge;
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  return Math.abs(dx * (y - from.y) - dy * (x - from.x)) / norm(dx, dy);
}

/** The first of the sides that lie nearest to a point, and where on it. Most are seen to lie farther by their middles. */
function nearestSide(sides: readonly Line[], p: Vec) {
  let best = { i: 0, near: nearestOnEdge(sides[0]!, p) };
  for (let i = 1; i < sides.length; i++) {
    const { from, to } = sides[i]!;
    const reach = best.near.distance + (Math.abs(to.x - from.x) + Math.abs(to.y - from.y)) / 2;
    if (Math.abs(p.x - (from.x + to.x) / 2) > reach || Math.abs(p.y - (from.y + to.y) / 2) > reach) continue;
    const near = nearestOnEdge(sides[i]!, p);
    if (near.distance < best.near.distance) best = { i, near };
  }
  return best;
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
