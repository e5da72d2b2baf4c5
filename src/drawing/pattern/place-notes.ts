import type { Box } from '../../geometry/index.ts';
import { joinBoxes } from '../../geometry/index.ts';
import type { Drawing } from '../layout/drawing.ts';
import { growBox } from '../layout/oriented-box.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';
import type { NoteBlock } from './note-block.ts';

/** White round a block, and how finely places are tried, mm. */
const AIR = 3;
const PITCH = 6;
/** At most this many places are tried along either side. */
const MOST = 160;

/**
 * Puts each block where the drawing grows least, so that no sheet is needed for notes alone; of equal places the one
 * highest up, then nearest the left.
 */
export function placeNotes(drawing: Drawing, blocks: readonly NoteBlock[]): void {
  for (const block of blocks) {
    const bounds = boundsOfMarks(drawing.marks());
    const places = placesFor(block, bounds);
    const place = places.find(({ left, top }) =>
      drawing.occupancy.isFree(
        growBox(
          {
            centre: { x: left + block.width / 2, y: top - block.height / 2 },
            halfWidth: block.width / 2,
            halfHeight: block.height / 2,
            angle: 0,
          },
          AIR,
        ),
      ),
    );
    // The last places tried lie wholly beside the drawing, where nothing stands.
    const { left, top } = place ?? { left: bounds.maxX + AIR + 1, top: bounds.maxY };
    drawing.draw(block.draw({ x: left, y: top }));
    drawing.occupancy.addBox({
      centre: { x: left + block.width / 2, y: top - block.height / 2 },
      halfWidth: block.width / 2,
      halfHeight: block.height / 2,
      angle: 0,
    });
  }
}

interface Place {
  readonly left: number;
  readonly top: number;
}

/** Places in order of what they cost. */
function placesFor(block: NoteBlock, bounds: Box): readonly Place[] {
  const xs = spread(bounds.minX - block.width - AIR - 1, bounds.maxX + AIR + 1);
  const ys = spread(bounds.minY + block.height, bounds.maxY + block.height + AIR + 1);
  const area = (box: Box): number => (box.maxX - box.minX) * (box.maxY - box.minY);
  const now = area(bounds);
  return xs
    .flatMap((left) =>
      ys.map((top) => {
        const own = { minX: left, maxX: left + block.width, minY: top - block.height, maxY: top };
        const growth = area(joinBoxes(bounds, own)) - now;
        return { left, top, cost: growth / 100 - top * 0.02 + left * 0.001 };
      }),
    )
    .sort((a, b) => a.cost - b.cost);
}

function spread(from: number, to: number): readonly number[] {
  const count = Math.max(1, Math.min(MOST, Math.ceil((to - from) / PITCH)));
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
}
