import { POSITION_TOLERANCE } from '../tolerance.ts';
import { type Pieces, SHAPE } from './pieces.ts';

/** Where pieces lie. */
export interface Spread {
  /** The middle of all pieces' boxes. */
  readonly x: number;
  readonly y: number;
  /** The side (mm) of a square of which each piece would have four, were they evenly spread. */
  readonly cell: number;
  /** In how many pieces' boxes a place lies on average. */
  readonly covered: number;
}

export function centreOfPieces({ boxes, count }: Pieces): Spread {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  let areas = 0;
  for (let at = 0; at < 4 * count; at += 4) {
    areas += (boxes[at + 2]! - boxes[at]!) * (boxes[at + 3]! - boxes[at + 1]!);
    if (boxes[at]! < minX) minX = boxes[at]!;
    if (boxes[at + 1]! < minY) minY = boxes[at + 1]!;
    if (boxes[at + 2]! > maxX) maxX = boxes[at + 2]!;
    if (boxes[at + 3]! > maxY) maxY = boxes[at + 3]!;
  }
  const area = (maxX - minX) * (maxY - minY);
  return {
    x: (minX + maxX) / 2,
    y: (minY + maxY) / 2,
    cell: 2 * Math.sqrt(area / count),
    covered: areas / area,
  };
}

/** The least and the greatest distance of a piece from a place, a hair to the safe side, mm. */
export interface Ring {
  least: number;
  most: number;
}

const FOUND: Ring = { least: 0, most: 0 };

/** Ring of piece i about (x, y). The record returned is reused by the next call. */
export function ringOf({ shape, turn }: Pieces, i: number, x: number, y: number): Readonly<Ring> {
  const at = SHAPE * i;
  const ax = shape[at]! - x;
  const ay = shape[at + 1]! - y;
  const bx = shape[at + 2]! - x;
  const by = shape[at + 3]! - y;
  const a = Math.sqrt(ax * ax + ay * ay);
  const b = Math.sqrt(bx * bx + by * by);
  let least = Math.min(a, b);
  let most = Math.max(a, b);
  let hair = POSITION_TOLERANCE;
  if (turn[i] === 0) {
    const ux = bx - ax;
    const uy = by - ay;
    const size = ux * ux + uy * uy;
    const along = -(ax * ux + ay * uy);
    if (along > 0 && along < size) least = Math.abs(ax * by - ay * bx) / Math.sqrt(size);
  } else {
    const cx = shape[at + 4]! - x;
    const cy = shape[at + 5]! - y;
    const radius = shape[at + 6]!;
    const d = Math.sqrt(cx * cx + cy * cy);
    // Seen from the arc's centre the place lies towards (−cx, −cy); is that, or the opposite, in the sweep?
    const after = turn[i]! * ((ax - cx) * -cy - (ay - cy) * -cx);
    const before = turn[i]! * (-cx * (by - cy) + cy * (bx - cx));
    hair += POSITION_TOLERANCE + radius * 1e-9;
    if (d < hair || (after >= 0 && before >= 0)) least = Math.min(least, Math.abs(d - radius));
    if (d < hair || (after <= 0 && before <= 0)) most = Math.max(most, d + radius);
  }
  FOUND.least = least - hair;
  FOUND.most = most + hair;
  return FOUND;
}
