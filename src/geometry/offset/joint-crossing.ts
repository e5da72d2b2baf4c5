import { type Pieces, SHAPE } from '../arrangement/pieces.ts';
import { CARRIER_TOLERANCE } from '../tolerance.ts';
import { norm } from '../vec.ts';

/**
 * A circle larger than this (mm) knows its own points to no better than 1e-10 mm: where it leaves the next edge at a flat angle, that is
 * farther along the edge than the parallels run past each other, and a crossing of the circles can miss both.
 */
const LARGEST_CROSSED = 1e6;
/** Nearer than this, mm, the two courses have met. */
const MET = CARRIER_TOLERANCE / 100;
const ROUNDS = 12;

/** Where the parallels of two edges cross short of their joint, and how far short of it (mm) along either. */
export interface JointCrossing {
  readonly x: number;
  readonly y: number;
  readonly short: number;
}

/** A parallel as it runs from the place beside the joint: direction (unit) and curvature, positive to the left. */
interface Course {
  readonly x: number;
  readonly y: number;
  readonly tx: number;
  readonly ty: number;
  readonly bend: number;
}

/**
 * Where the parallels of edges e and f cross that turn towards the offset, reckoned from the joint by Newton's rule: no centre comes into it, so
 * that the size of the circles does not matter. Nothing where neither circle is so large as to need it, or no crossing is found.
 */
export function jointCrossing(
  source: Pieces,
  e: number,
  f: number,
  before: Omit<Course, 'bend'>,
  after: Omit<Course, 'bend'>,
  by: number,
): JointCrossing | undefined {
  if (!isLarge(source, e) && !isLarge(source, f)) return undefined;
  const one = { ...before, bend: bendOfParallel(source, e, by) };
  const two = { ...after, bend: bendOfParallel(source, f, by) };
  const cross = one.tx * two.ty - one.ty * two.tx;
  const along = one.tx * two.tx + one.ty * two.ty;
  let a = (-Math.abs(by) * Math.abs(cross)) / (1 + along);
  let b = -a;
  for (let round = 0; round < ROUNDS; round++) {
    const p = placeAfter(one, a);
    const q = placeAfter(two, b);
    const [gx, gy] = [q.x - p.x, q.y - p.y];
    if (norm(gx, gy) < MET) return a <= 0 && b >= 0 ? { x: p.x, y: p.y, short: Math.max(-a, b) } : undefined;
    const size = p.tx * q.ty - p.ty * q.tx;
    if (size === 0) return undefined;
    a += (gx * q.ty - gy * q.tx) / size;
    b += (gx * p.ty - gy * p.tx) / size;
  }
  return undefined;
}

function isLarge({ shape, turn }: Pieces, i: number): boolean {
  return turn[i] !== 0 && shape[SHAPE * i + 6]! > LARGEST_CROSSED;
}

function bendOfParallel({ shape, turn }: Pieces, i: number, by: number): number {
  return turn[i] === 0 ? 0 : turn[i]! / (shape[SHAPE * i + 6]! + turn[i]! * by);
}

/** Place and direction so far (mm) along a course; of hardly bent ones by series, which lose no digits. */
function placeAfter({ x, y, tx, ty, bend }: Course, way: number): Omit<Course, 'bend'> {
  const turned = bend * way;
  const isFlat = Math.abs(turned) < 1e-3;
  const ahead = isFlat ? way * (1 - (turned * turned) / 6) : Math.sin(turned) / bend;
  const aside = isFlat ? ((way * turned) / 2) * (1 - (turned * turned) / 12) : (1 - Math.cos(turned)) / bend;
  const [cosine, sine] = [Math.cos(turned), Math.sin(turned)];
  return {
    x: x + ahead * tx - aside * ty,
    y: y + ahead * ty + aside * tx,
    tx: cosine * tx - sine * ty,
    ty: cosine * ty + sine * tx,
  };
}
