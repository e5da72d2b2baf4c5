import { POSITION_TOLERANCE } from '../tolerance.ts';
import { doubles } from './lists.ts';
import { type Pieces, SHAPE } from './pieces.ts';

/** Wider arcs (rad) get several boxes in the tree: those of concentric half circles would all lie upon each other. */
const WIDEST = 0.3;

/** Boxes that cover the pieces, wide arcs by several, and the piece that each belongs to, in order. */
export function narrowBoxes({ boxes, shape, turn, count }: Pieces): {
  boxes: readonly number[];
  owners: number[];
} {
  const narrow = doubles();
  const owners: number[] = [];
  for (let i = 0; i < count; i++) {
    const at = SHAPE * i;
    const radius = shape[at + 6]!;
    const chord = Math.hypot(shape[at + 2]! - shape[at]!, shape[at + 3]! - shape[at + 1]!);
    if (turn[i] === 0 || chord < WIDEST * radius) {
      owners.push(i);
      narrow.push(boxes[4 * i]!, boxes[4 * i + 1]!, boxes[4 * i + 2]!, boxes[4 * i + 3]!);
      continue;
    }
    const cx = shape[at + 4]!;
    const cy = shape[at + 5]!;
    const from = Math.atan2(shape[at + 1]! - cy, shape[at]! - cx);
    const sweep = 2 * Math.asin(Math.min(1, chord / (2 * radius)));
    const parts = Math.ceil(sweep / WIDEST);
    const step = (turn[i]! * sweep) / parts;
    // How far an arc stands off its chord, what its ends may lie beside it, and a hair for the rounding of angles.
    const bulge = radius * (1 - Math.cos(step / 2)) + 2 * POSITION_TOLERANCE + radius * 1e-9;
    for (let part = 0; part < parts; part++) {
      const x0 = cx + radius * Math.cos(from + part * step);
      const y0 = cy + radius * Math.sin(from + part * step);
      const x1 = cx + radius * Math.cos(from + (part + 1) * step);
      const y1 = cy + radius * Math.sin(from + (part + 1) * step);
      owners.push(i);
      narrow.push(
        Math.min(x0, x1) - bulge,
        Math.min(y0, y1) - bulge,
        Math.max(x0, x1) + bulge,
        Math.max(y0, y1) + bulge,
      );
    }
  }
  return { boxes: narrow, owners };
}
