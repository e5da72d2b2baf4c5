import { type Pieces, SHAPE } from '../arrangement/pieces.ts';
import { CARRIER_TOLERANCE, PLAIN_CLEARANCE } from '../tolerance.ts';

/** Is the parallel of the k-th edge of a loop longer, from end to end, than what is cut short at both its ends? */
export function hasRoom(
  { shape, turn }: Pieces,
  from: number,
  count: number,
  k: number,
  shorts: Float64Array,
  by: number,
): boolean {
  const at = SHAPE * (from + k);
  const ux = shape[at + 2]! - shape[at]!;
  const uy = shape[at + 3]! - shape[at + 1]!;
  const scale = turn[from + k] === 0 ? 1 : 1 + (turn[from + k]! * by) / shape[at + 6]!;
  if (!(scale > 0)) return false;
  const cut = (shorts[k]! + shorts[k === 0 ? count - 1 : k - 1]! + PLAIN_CLEARANCE) / scale;
  return cut * cut < ux * ux + uy * uy;
}

/**
 * May the parallels of e and f share one end, half way between their own? The place is then off both by no more than the
 * tolerance. Crossing such parallels instead would ask for digits that doubles do not have.
 */
export function isSmooth(
  source: Pieces,
  e: number,
  f: number,
  gap: number,
  turned: number,
  by: number,
): boolean {
  if (gap * turned * turned > CARRIER_TOLERANCE * CARRIER_TOLERANCE) return false;
  for (const i of [e, f]) {
    const at = SHAPE * i;
    const { shape } = source;
    const chord = (shape[at + 2]! - shape[at]!) ** 2 + (shape[at + 3]! - shape[at + 1]!) ** 2;
    let scale = 1;
    if (source.turn[i] !== 0) {
      const radius = shape[at + 6]! + source.turn[i]! * by;
      if (gap > 8 * CARRIER_TOLERANCE * radius) return false;
      scale = radius / shape[at + 6]!;
    }
    if (16 * gap > chord * scale * scale) return false;
  }
  return true;
}

/** Unit direction of travel of piece i at a point of it. */
export function directionAt(source: Pieces, i: number, x: number, y: number): { x: number; y: number } {
  const { shape } = source;
  const at = SHAPE * i;
  const turn = source.turn[i]!;
  const dx = turn === 0 ? shape[at + 2]! - shape[at]! : -turn * (y - shape[at + 5]!);
  const dy = turn === 0 ? shape[at + 3]! - shape[at + 1]! : turn * (x - shape[at + 4]!);
  const size = Math.sqrt(dx * dx + dy * dy);
  return { x: dx / size, y: dy / size };
}

/** Signed curvature, positive to the left. */
export function bendOf(source: Pieces, i: number): number {
  const turn = source.turn[i]!;
  return turn === 0 ? 0 : turn / source.shape[SHAPE * i + 6]!;
}
