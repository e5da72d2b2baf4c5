import {
  type Line,
  lengthOf,
  norm,
  POSITION_TOLERANCE,
  type Region,
  type Vec,
} from '../../geometry/index.ts';
import type { Room, Stretch } from './api.ts';

/** What lies on the inner side of a straight edge: n · p ≥ offset, n a unit vector. */
interface Side {
  readonly x: number;
  readonly y: number;
  readonly offset: number;
}

export interface ConvexRoom {
  readonly corners: readonly Vec[];
  readonly sides: readonly Side[];
}

/** Sine of a turn to the right that still counts as straight on: what cuts leave of rounding in a straight edge. */
const STRAIGHT = 1e-9;

/** A contact with straight edges that bulges everywhere; nothing for any other. */
export function convexRoom(contact: readonly Region[]): ConvexRoom | undefined {
  const [region] = contact;
  if (region === undefined || contact.length > 1 || region.holes.length > 0) return undefined;
  const { edges } = region.outer;
  if (!edges.every((edge): edge is Line => edge.kind === 'line')) return undefined;
  const lines = edges.filter((edge) => lengthOf(edge) > POSITION_TOLERANCE);
  const ways = lines.map(({ from, to }) => {
    const size = norm(to.x - from.x, to.y - from.y);
    return { x: (to.x - from.x) / size, y: (to.y - from.y) / size };
  });
  let turned = 0;
  for (const [at, way] of ways.entries()) {
    const next = ways[(at + 1) % ways.length]!;
    const sine = way.x * next.y - way.y * next.x;
    if (sine < -STRAIGHT) return undefined;
    turned += Math.atan2(sine, way.x * next.x + way.y * next.y);
  }
  // Round once: a loop that runs round twice bulges everywhere as well.
  if (lines.length < 3 || Math.abs(turned - 2 * Math.PI) > 1) return undefined;
  return {
    corners: lines.map(({ from }) => from),
    sides: lines.map(({ from }, at) => {
      const [x, y] = [-ways[at]!.y, ways[at]!.x];
      return { x, y, offset: x * from.x + y * from.y };
    }),
  };
}

/** What lies at least `by` mm inside of it; nothing where none is left. */
export function insetConvex({ corners, sides }: ConvexRoom, by: number): Room | undefined {
  let left = corners;
  if (by > 0) {
    for (const side of sides) {
      left = keepInside(left, side, by);
      if (left.length === 0) return undefined;
    }
  }
  const xs = left.map(({ x }) => x);
  const ys = left.map(({ y }) => y);
  const box = {
    minX: Math.min(...xs),
    minY: Math.min(...ys),
    maxX: Math.max(...xs),
    maxY: Math.max(...ys),
  };
  if (Math.min(box.maxX - box.minX, box.maxY - box.minY) <= POSITION_TOLERANCE) return undefined;
  return { box, stretchesAt: (y) => stretchAt(sides, by, y) };
}

function keepInside(corners: readonly Vec[], { x, y, offset }: Side, by: number): readonly Vec[] {
  const kept: Vec[] = [];
  for (const [at, p] of corners.entries()) {
    const q = corners[(at + 1) % corners.length]!;
    const [here, there] = [x * p.x + y * p.y - offset - by, x * q.x + y * q.y - offset - by];
    if (here >= 0) kept.push(p);
    if (here >= 0 === there >= 0) continue;
    const t = here / (here - there);
    kept.push({ x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) });
  }
  return kept;
}

function stretchAt(sides: readonly Side[], by: number, level: number): readonly Stretch[] {
  let [from, to] = [-Infinity, Infinity];
  for (const { x, y, offset } of sides) {
    const rest = offset + by - y * level;
    if (Math.abs(x) < STRAIGHT) {
      if (rest > POSITION_TOLERANCE) return [];
    } else if (x > 0) from = Math.max(from, rest / x);
    else to = Math.min(to, rest / x);
  }
  return to - from > POSITION_TOLERANCE ? [{ from, to }] : [];
}
