import { POSITION_TOLERANCE } from '../tolerance.ts';
import { doubles } from './lists.ts';
import { type Pieces, SHAPE } from './pieces.ts';
import { centreOfPieces, ringOf } from './rings.ts';

/** Wider arcs (rad) get several boxes in the tree: those of concentric half circles would all lie upon each other. */
const WIDEST = 0.3;
/** No more boxes than this for one line: a long line across many others has to meet most of them anyway. */
const MOST_OF_LINE = 8;
/** An arc whose ring is thinner than this share of its chord is told apart by its ring. */
const THIN = 0.05;

/** What a tree over pieces is built from. */
export interface NarrowBoxes {
  /** minX, minY, maxX, maxY of each box. */
  readonly boxes: readonly number[];
  /** The piece that each box belongs to, in order. */
  readonly owners: readonly number[];
  /** Least and greatest distance of each box's piece from the centre. */
  readonly rings: readonly number[];
  /** The place from which rings are measured. */
  readonly x: number;
  readonly y: number;
}

/** Boxes that cover the pieces, long slanting lines and wide arcs by several. */
export function narrowBoxes(pieces: Pieces): NarrowBoxes {
  const { boxes, shape, turn, count } = pieces;
  const { x, y, cell } = centreOfPieces(pieces);
  const narrow = doubles();
  const rings = doubles();
  const owners: number[] = [];
  for (let i = 0; i < count; i++) {
    const at = SHAPE * i;
    const wide = boxes[4 * i + 2]! - boxes[4 * i]!;
    const high = boxes[4 * i + 3]! - boxes[4 * i + 1]!;
    const ring = ringOf(pieces, i, x, y);
    const { least, most } = ring;
    const fat = Math.min(wide, high);
    let parts = 1;
    if (turn[i] === 0) parts = fat > cell ? Math.min(MOST_OF_LINE, Math.ceil(fat / cell)) : 1;
    else if (Math.max(wide, high) > cell) {
      const chord = Math.hypot(shape[at + 2]! - shape[at]!, shape[at + 3]! - shape[at + 1]!);
      if (chord >= WIDEST * shape[at + 6]! && most - least > THIN * chord) {
        parts = Math.ceil((2 * Math.asin(Math.min(1, chord / (2 * shape[at + 6]!)))) / WIDEST);
      }
    }
    for (let part = 0; part < parts; part++) {
      owners.push(i);
      rings.push(least, most);
    }
    if (parts === 1) narrow.push(boxes[4 * i]!, boxes[4 * i + 1]!, boxes[4 * i + 2]!, boxes[4 * i + 3]!);
    else if (turn[i] === 0) addLineBoxes(narrow, pieces, i, parts);
    else addArcBoxes(narrow, pieces, i, parts);
  }
  return { boxes: narrow, owners, rings, x, y };
}

function addLineBoxes(narrow: number[], { shape }: Pieces, i: number, parts: number): void {
  const at = SHAPE * i;
  const x0 = shape[at]!;
  const y0 = shape[at + 1]!;
  const ux = (shape[at + 2]! - x0) / parts;
  const uy = (shape[at + 3]! - y0) / parts;
  const hair = POSITION_TOLERANCE;
  for (let part = 0; part < parts; part++) {
    addBox(narrow, x0 + part * ux, y0 + part * uy, x0 + (part + 1) * ux, y0 + (part + 1) * uy, hair);
  }
}

function addArcBoxes(narrow: number[], { shape, turn }: Pieces, i: number, parts: number): void {
  const at = SHAPE * i;
  const cx = shape[at + 4]!;
  const cy = shape[at + 5]!;
  const radius = shape[at + 6]!;
  const chord = Math.hypot(shape[at + 2]! - shape[at]!, shape[at + 3]! - shape[at + 1]!);
  const from = Math.atan2(shape[at + 1]! - cy, shape[at]! - cx);
  const sweep = 2 * Math.asin(Math.min(1, chord / (2 * radius)));
  const step = (turn[i]! * sweep) / parts;
  // How far an arc stands off its chord, what its ends may lie beside it, and a hair for the rounding of angles.
  const bulge = radius * (1 - Math.cos(step / 2)) + 2 * POSITION_TOLERANCE + radius * 1e-9;
  for (let part = 0; part < parts; part++) {
    addBox(
      narrow,
      cx + radius * Math.cos(from + part * step),
      cy + radius * Math.sin(from + part * step),
      cx + radius * Math.cos(from + (part + 1) * step),
      cy + radius * Math.sin(from + (part + 1) * step),
      bulge,
    );
  }
}

function addBox(boxes: number[], x0: number, y0: number, x1: number, y1: number, round: number): void {
  boxes.push(
    Math.min(x0, x1) - round,
    Math.min(y0, y1) - round,
    Math.max(x0, x1) + round,
    Math.max(y0, y1) + round,
  );
}
