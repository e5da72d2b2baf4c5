import { reals, unfilled } from '../memory/lists.ts';
import { POSITION_TOLERANCE } from '../tolerance.ts';
import { norm } from '../vec.ts';
import { type Pieces, SHAPE } from './pieces.ts';
import { centreOfPieces, ringOf } from './rings.ts';

/** Wider arcs (rad) get several boxes in the tree: those of concentric half circles would all lie upon each other. */
const WIDEST = 0.3;
/** No more boxes than this for one line: a long line across many others has to meet most of them anyway. */
const MOST_OF_LINE = 8;
/** An arc whose ring is thinner than this share of its chord is told apart by its ring. */
const THIN = 0.05;

/** Rings are worth their cost where a place lies in so many pieces' boxes on average. */
const RINGS_FROM = 1;
const NO_RINGS = new Float64Array(0);

/** What a tree over pieces is built from. */
export interface NarrowBoxes {
  readonly count: number;
  /** minX, minY, maxX, maxY of each box; there may be room left behind the last. */
  readonly boxes: Float64Array;
  /** The piece that each box belongs to, in order. */
  readonly owners: Int32Array;
  /** How many boxes each piece has. */
  readonly parts: Int32Array;
  /** Least and greatest distance of each box's piece from the centre; empty where boxes alone tell the pieces apart. */
  readonly rings: Float64Array;
  /** The place from which rings are measured. */
  readonly x: number;
  readonly y: number;
}

/** Boxes that cover the pieces, long slanting lines and wide arcs by several; in lists that are released with the rest. */
export function narrowBoxes(pieces: Pieces): NarrowBoxes {
  const { x, y, cell, covered } = centreOfPieces(pieces);
  const own = pieces.count;
  const parts = unfilled(own);
  const pieceRings = covered > RINGS_FROM ? ringsOf(pieces, x, y) : NO_RINGS;
  let count = 0;
  for (let i = 0; i < own; i++) {
    parts[i] = partsOf(pieces, i, cell, x, y);
    count += parts[i]!;
  }
  const owners = unfilled(count);
  if (count === own) {
    for (let i = 0; i < own; i++) owners[i] = i;
    return { count, boxes: pieces.boxes, owners, parts, rings: pieceRings, x, y };
  }
  const boxes = reals(4 * count);
  const rings = pieceRings.length === 0 ? NO_RINGS : reals(2 * count);
  for (let i = 0, k = 0; i < own; i++) {
    const some = parts[i]!;
    if (some === 1) for (let n = 0; n < 4; n++) boxes[4 * k + n] = pieces.boxes[4 * i + n]!;
    else if (pieces.turn[i] === 0) writeLineBoxes(boxes, k, pieces, i, some);
    else writeArcBoxes(boxes, k, pieces, i, some);
    for (const end = k + some; k < end; k++) {
      owners[k] = i;
      if (rings.length === 0) continue;
      rings[2 * k] = pieceRings[2 * i]!;
      rings[2 * k + 1] = pieceRings[2 * i + 1]!;
    }
  }
  return { count, boxes, owners, parts, rings, x, y };
}

function ringsOf(pieces: Pieces, x: number, y: number): Float64Array {
  const rings = reals(2 * pieces.count);
  for (let i = 0; i < pieces.count; i++) {
    const { least, most } = ringOf(pieces, i, x, y);
    rings[2 * i] = least;
    rings[2 * i + 1] = most;
  }
  return rings;
}

/** How many boxes a piece gets; (x, y) is the place from which rings are measured. */
function partsOf(pieces: Pieces, i: number, cell: number, x: number, y: number): number {
  const { boxes, shape, turn } = pieces;
  const wide = boxes[4 * i + 2]! - boxes[4 * i]!;
  const high = boxes[4 * i + 3]! - boxes[4 * i + 1]!;
  if (turn[i] === 0) {
    const fat = Math.min(wide, high);
    return fat > cell ? Math.min(MOST_OF_LINE, Math.ceil(fat / cell)) : 1;
  }
  if (!(Math.max(wide, high) > cell)) return 1;
  const at = SHAPE * i;
  const chord = norm(shape[at + 2]! - shape[at]!, shape[at + 3]! - shape[at + 1]!);
  const radius = shape[at + 6]!;
  if (chord < WIDEST * radius) return 1;
  const { least, most } = ringOf(pieces, i, x, y);
  if (most - least <= THIN * chord) return 1;
  return Math.ceil((2 * Math.asin(Math.min(1, chord / (2 * radius)))) / WIDEST);
}

function writeLineBoxes(
  boxes: Float64Array,
  first: number,
  { shape }: Pieces,
  i: number,
  parts: number,
): void {
  const at = SHAPE * i;
  const x0 = shape[at]!;
  const y0 = shape[at + 1]!;
  const ux = (shape[at + 2]! - x0) / parts;
  const uy = (shape[at + 3]! - y0) / parts;
  for (let part = 0; part < parts; part++) {
    const x = x0 + part * ux;
    const y = y0 + part * uy;
    writeBox(boxes, first + part, x, y, x + ux, y + uy, POSITION_TOLERANCE);
  }
}

function writeArcBoxes(
  boxes: Float64Array,
  first: number,
  { shape, turn }: Pieces,
  i: number,
  parts: number,
): void {
  const at = SHAPE * i;
  const cx = shape[at + 4]!;
  const cy = shape[at + 5]!;
  const radius = shape[at + 6]!;
  const chord = norm(shape[at + 2]! - shape[at]!, shape[at + 3]! - shape[at + 1]!);
  const from = Math.atan2(shape[at + 1]! - cy, shape[at]! - cx);
  const sweep = 2 * Math.asin(Math.min(1, chord / (2 * radius)));
  const step = (turn[i]! * sweep) / parts;
  // How far an arc stands off its chord, what its ends may lie beside it, and a hair for the rounding of angles.
  const bulge = radius * (1 - Math.cos(step / 2)) + 2 * POSITION_TOLERANCE + radius * 1e-9;
  for (let part = 0; part < parts; part++) {
    const a = from + part * step;
    const b = a + step;
    const x0 = cx + radius * Math.cos(a);
    const y0 = cy + radius * Math.sin(a);
    writeBox(boxes, first + part, x0, y0, cx + radius * Math.cos(b), cy + radius * Math.sin(b), bulge);
  }
}

function writeBox(
  boxes: Float64Array,
  k: number,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  round: number,
): void {
  boxes[4 * k] = Math.min(x0, x1) - round;
  boxes[4 * k + 1] = Math.min(y0, y1) - round;
  boxes[4 * k + 2] = Math.max(x0, x1) + round;
  boxes[4 * k + 3] = Math.max(y0, y1) + round;
}
