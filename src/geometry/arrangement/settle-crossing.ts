import { LARGEST_PLAIN_RADIUS } from '../tolerance.ts';
import { type Pieces, SHAPE } from './pieces.ts';

/** Where a crossing was moved to. */
interface Settled {
  x: number;
  y: number;
}

const SETTLED: Settled = { x: 0, y: 0 };

/** Pieces that cross more flatly (sine of their angle) are left as they are: what is far from both is not near their crossing. */
const FLATTEST = 1e-3;

/**
 * The crossing of two pieces of which it is known to within rounding. The centre of a circle of many kilometres is so far away that a place found from it is off by
 * nanometres; how far the place lies beside both carriers is measured in twice as many digits, and it is moved by as much. The record is used again.
 */
export function settleCrossing(
  pieces: Pieces,
  i: number,
  j: number,
  x: number,
  y: number,
): Readonly<Settled> {
  SETTLED.x = x;
  SETTLED.y = y;
  const { shape } = pieces;
  const p = SHAPE * i;
  const q = SHAPE * j;
  const isLarge =
    (pieces.turn[i] !== 0 && shape[p + 6]! > LARGEST_PLAIN_RADIUS) ||
    (pieces.turn[j] !== 0 && shape[q + 6]! > LARGEST_PLAIN_RADIUS);
  if (!isLarge) return SETTLED;
  const a = besideOf(pieces, i, x, y);
  const b = besideOf(pieces, j, x, y);
  const sine = a.nx * b.ny - a.ny * b.nx;
  if (Math.abs(sine) < FLATTEST) return SETTLED;
  SETTLED.x = x - (a.off * b.ny - b.off * a.ny) / sine;
  SETTLED.y = y - (b.off * a.nx - a.off * b.nx) / sine;
  return SETTLED;
}

/** How far a place lies beside a piece's carrier (mm), and in which direction. */
function besideOf(
  pieces: Pieces,
  k: number,
  x: number,
  y: number,
): { readonly off: number; readonly nx: number; readonly ny: number } {
  const { shape } = pieces;
  const at = SHAPE * k;
  if (pieces.turn[k] === 0) {
    const ux = shape[at + 2]! - shape[at]!;
    const uy = shape[at + 3]! - shape[at + 1]!;
    const size = Math.sqrt(ux * ux + uy * uy);
    const off = (ux * (y - shape[at + 1]!) - uy * (x - shape[at]!)) / size;
    return { off, nx: -uy / size, ny: ux / size };
  }
  const cx = shape[at + 4]!;
  const cy = shape[at + 5]!;
  const radius = shape[at + 6]!;
  const dx = x - cx;
  const dy = y - cy;
  // What the differences have lost (T. J. Dekker 1971, D. E. Knuth: sums and products with their errors).
  const lostX = lostInSum(x, -cx, dx);
  const lostY = lostInSum(y, -cy, dy);
  const xx = dx * dx;
  const yy = dy * dy;
  const rr = radius * radius;
  const first = xx - rr;
  const second = first + yy;
  const lost =
    lostInSum(xx, -rr, first) +
    lostInSum(first, yy, second) +
    lostInSquare(dx, xx) +
    lostInSquare(dy, yy) -
    lostInSquare(radius, rr) +
    2 * (dx * lostX + dy * lostY);
  const far = Math.sqrt(xx + yy);
  return { off: (second + lost) / (far + radius), nx: dx / far, ny: dy / far };
}

/** What a sum, as rounded, falls short of a + b. */
function lostInSum(a: number, b: number, sum: number): number {
  const ofB = sum - a;
  return a - (sum - ofB) + (b - ofB);
}

/** 2^27 + 1: splits a number into two halves of its digits. */
const SPLITTER = 134217729;

/** What a square, as rounded, falls short of a². */
function lostInSquare(a: number, square: number): number {
  const c = SPLITTER * a;
  const high = c - (c - a);
  const low = a - high;
  return low * low - (square - high * high - 2 * high * low);
}
