import { type Box, joinBoxes, type Vec } from '../../geometry/index.ts';
import type { Drawing } from '../layout/drawing.ts';
import { growBox, type OrientedBox } from '../layout/oriented-box.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';
import type { NoteBlock } from './note-block.ts';

/** White round a block, and between blocks of one column, mm. */
const AIR = 3;
const BETWEEN = 7;
/** How finely places are tried, mm, and at most how many along either side. */
const PITCH = 8;
const MOST = 110;
/** Paper that a row of ordinary sheets shows anyway, mm across: growing up to there costs next to nothing. */
const STRIP = 184;
/** A column may take so much more paper than its blocks set apart, as a share of its own area. */
const WORTH_OF_COLUMN = 0.5;

/** What a millimetre of distance from the part costs, in hundreds of mm² of paper: sheets that are else empty are skipped. */
const FAR = 0.12;

/**
 * Puts the blocks where the drawing grows least and near the part (`outline`: points all round it), so that no sheet is
 * needed for notes alone: all of them in one column where a column has room, otherwise each by itself.
 */
export function placeNotes(drawing: Drawing, blocks: readonly NoteBlock[], outline: readonly Vec[]): void {
  const column = columnOf(blocks);
  const bounds = boundsNow(drawing);
  const place = findPlace(drawing, column, bounds, outline);
  const own = boxAt(column, place);
  const extra = paperOf(joinBoxes(bounds, own)) - paperOf(bounds);
  if (extra <= WORTH_OF_COLUMN * column.width * column.height) {
    put(drawing, column, place);
    return;
  }
  for (const block of blocks) {
    put(drawing, block, findPlace(drawing, block, boundsNow(drawing), outline));
  }
}

/** Box round the marks so far; the origin alone when nothing is drawn. */
function boundsNow(drawing: Drawing): Box {
  const marks = drawing.marks();
  return marks.length === 0 ? { minX: 0, minY: 0, maxX: 0, maxY: 0 } : boundsOfMarks(marks);
}

/** Upper left corner of a block. */
interface Place {
  readonly left: number;
  readonly top: number;
}

function put(drawing: Drawing, block: NoteBlock, { left, top }: Place): void {
  drawing.draw(block.draw({ x: left, y: top }));
  drawing.occupancy.addBox(orientedBox(block, { left, top }));
}

/** Blocks one under the other. */
function columnOf(blocks: readonly NoteBlock[]): NoteBlock {
  return {
    width: blocks.reduce((most, block) => Math.max(most, block.width), 0),
    height: blocks.reduce((sum, block) => sum + block.height, (blocks.length - 1) * BETWEEN),
    draw: (corner) => {
      let y = corner.y;
      return blocks.flatMap((block) => {
        const marks = block.draw({ x: corner.x, y });
        y -= block.height + BETWEEN;
        return marks;
      });
    },
  };
}

/** The free place that costs least; of equal ones the highest. */
function findPlace(drawing: Drawing, block: NoteBlock, bounds: Box, outline: readonly Vec[]): Place {
  const lefts = spread(bounds.minX - block.width - AIR - 1, bounds.maxX + AIR + 1);
  const tops = spread(bounds.minY, bounds.maxY + block.height + AIR + 1);
  const places = lefts
    .flatMap((left) =>
      tops.map((top) => ({ left, top, cost: costOf(bounds, boxAt(block, { left, top })) - top * 0.02 })),
    )
    .sort((a, b) => a.cost - b.cost);
  let best: Place | undefined;
  let least = Infinity;
  for (const place of places) {
    // Distance only adds to the cost: from here on nothing can be better.
    if (place.cost >= least) break;
    const cost = place.cost + FAR * awayFrom(outline, boxAt(block, place));
    if (cost >= least) continue;
    if (!drawing.occupancy.isFree(growBox(orientedBox(block, place), AIR))) continue;
    best = place;
    least = cost;
  }
  // Wholly beside the drawing nothing stands.
  return best ?? { left: bounds.maxX + AIR + 1, top: bounds.maxY };
}

function costOf(bounds: Box, own: Box): number {
  const grown = joinBoxes(bounds, own);
  return paperOf(grown) / 100 + areaOf(grown) / 4000;
}

function boxAt(block: NoteBlock, { left, top }: Place): Box {
  return { minX: left, maxX: left + block.width, minY: top - block.height, maxY: top };
}

function orientedBox(block: NoteBlock, { left, top }: Place): OrientedBox {
  return {
    centre: { x: left + block.width / 2, y: top - block.height / 2 },
    halfWidth: block.width / 2,
    halfHeight: block.height / 2,
    angle: 0,
  };
}

/** Distance from a box to the nearest of the points, mm. */
function awayFrom(points: readonly Vec[], box: Box): number {
  let least = Infinity;
  for (const { x, y } of points) {
    const dx = Math.max(box.minX - x, 0, x - box.maxX);
    const dy = Math.max(box.minY - y, 0, y - box.maxY);
    least = Math.min(least, dx * dx + dy * dy);
  }
  return Number.isFinite(least) ? Math.sqrt(least) : 0;
}

function areaOf({ minX, maxX, minY, maxY }: Box): number {
  return (maxX - minX) * (maxY - minY);
}

/** Area of paper that a drawing takes at least: neither way less than a strip of sheets. */
function paperOf({ minX, maxX, minY, maxY }: Box): number {
  return Math.max(maxX - minX, STRIP) * Math.max(maxY - minY, STRIP);
}

function spread(from: number, to: number): readonly number[] {
  const count = Math.max(1, Math.min(MOST, Math.ceil((to - from) / PITCH)));
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
}
