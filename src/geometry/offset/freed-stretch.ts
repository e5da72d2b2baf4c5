import { type Pieces, SHAPE } from '../arrangement/pieces.ts';
import { distanceToPiece } from './nearness.ts';

/** A stretch of a line or arc, from and to (mm) along it from a place on it; empty unless the place lies inside. */
export interface Stretch {
  from: number;
  to: number;
}

/** The stretch found last. */
export const FREED: Stretch = { from: 0, to: 0 };

/** About a place (x, y) on a line in direction (ux, uy): a stretch that lies nearer than r (mm) to piece k of the source. */
export function freedOfLine(
  source: Pieces,
  k: number,
  x: number,
  y: number,
  ux: number,
  uy: number,
  r: number,
): void {
  startAround(source, k, x, y, r);
  const { shape } = source;
  const at = SHAPE * k;
  const ax = shape[at]! - x;
  const ay = shape[at + 1]! - y;
  const bx = shape[at + 2]! - x;
  const by = shape[at + 3]! - y;
  widenByDisc(ax, ay, ux, uy, r);
  widenByDisc(bx, by, ux, uy, r);
  if (source.turn[k] !== 0) return;
  // Beside the line from a to b: nearer than r to it, and between its ends. What is near a segment is convex, so that the parts make one stretch.
  const vx = bx - ax;
  const vy = by - ay;
  const size = Math.sqrt(vx * vx + vy * vy);
  const aside = (vy * ax - vx * ay) / size;
  const asideStep = (vx * uy - vy * ux) / size;
  const along = -(vx * ax + vy * ay) / size;
  const alongStep = (vx * ux + vy * uy) / size;
  let from = Number.NEGATIVE_INFINITY;
  let to = Number.POSITIVE_INFINITY;
  if (Math.abs(asideStep) < FLAT) {
    if (Math.abs(aside) >= r - FLAT * LONGEST) return;
    from = -LONGEST;
    to = LONGEST;
  } else {
    const p = (-r - aside) / asideStep;
    const q = (r - aside) / asideStep;
    from = Math.min(p, q);
    to = Math.max(p, q);
  }
  if (Math.abs(alongStep) < FLAT) {
    if (along < 0 || along > size) return;
  } else {
    const p = -along / alongStep;
    const q = (size - along) / alongStep;
    from = Math.max(from, Math.min(p, q));
    to = Math.min(to, Math.max(p, q));
  }
  if (!(from < to)) return;
  FREED.from = Math.min(FREED.from, from);
  FREED.to = Math.max(FREED.to, to);
}

/** Lines that turn by less than this (rad) from each other count as parallel over LONGEST (mm). */
const FLAT = 1e-12;
const LONGEST = 1e5;

/** The same about a place on an arc; lengths are measured along the arc. */
export function freedOfArc(
  source: Pieces,
  k: number,
  x: number,
  y: number,
  arc: { readonly cx: number; readonly cy: number; readonly radius: number; readonly turn: number },
  r: number,
): void {
  startAround(source, k, x, y, r);
  const { shape } = source;
  const at = SHAPE * k;
  widenArcByDisc(shape[at]!, shape[at + 1]!, x, y, arc, r);
  widenArcByDisc(shape[at + 2]!, shape[at + 3]!, x, y, arc, r);
}

/** No place is further from another than along the way: as far as the place itself is too near, both ways are. */
function startAround(source: Pieces, k: number, x: number, y: number, r: number): void {
  const spare = r - distanceToPiece(source, k, x, y);
  FREED.from = -spare;
  FREED.to = spare;
}

/** Widens by what of the line lies in the disc of radius r about (px, py), seen from the place, if the place does. */
function widenByDisc(px: number, py: number, ux: number, uy: number, r: number): void {
  if (px * px + py * py >= r * r) return;
  const along = px * ux + py * uy;
  const aside = px * uy - py * ux;
  const half = Math.sqrt(Math.max(0, (r - aside) * (r + aside)));
  FREED.from = Math.min(FREED.from, along - half);
  FREED.to = Math.max(FREED.to, along + half);
}

function widenArcByDisc(
  px: number,
  py: number,
  x: number,
  y: number,
  {
    cx,
    cy,
    radius,
    turn,
  }: { readonly cx: number; readonly cy: number; readonly radius: number; readonly turn: number },
  r: number,
): void {
  if ((px - x) * (px - x) + (py - y) * (py - y) >= r * r) return;
  const dx = px - cx;
  const dy = py - cy;
  const d = Math.sqrt(dx * dx + dy * dy);
  const qx = x - cx;
  const qy = y - cy;
  // The square of the sine of a quarter of what lies in the disc: the cosine of half of it would be too rough for radii of kilometres.
  const square = ((r - (d - radius)) * (r + (d - radius))) / (4 * radius * d);
  if (!(square > 0)) return;
  // The whole circle, when it lies in the disc.
  const half = square < 1 ? 2 * Math.asin(Math.sqrt(square)) : 2 * Math.PI;
  const ahead = turn * Math.atan2(qx * dy - qy * dx, qx * dx + qy * dy);
  FREED.from = Math.min(FREED.from, radius * (ahead - half));
  FREED.to = Math.max(FREED.to, radius * (ahead + half));
}
