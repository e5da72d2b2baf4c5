import { type Arc, type Box, sweepOf } from '../../geometry/index.ts';
import type { Content } from './content.ts';

/**
 * The content of a pattern, turned about its centre, which is then the origin: parts of lines and arcs on which x and y
 * each only rise or only fall, so that what of one lies between two heights spans exactly from the x at the one to the x
 * at the other. Numbers in a row, since the search for the fewest sheets goes through them a thousand times.
 */
export interface TurnedContent {
  readonly count: number;
  /** Of each piece its least and greatest height, and the x there, mm. */
  readonly ends: Float64Array;
  /** Pieces before this one are straight; of the others `circles` has the centre, the radius, and 1 for the right half, −1 for the left. */
  readonly straight: number;
  readonly circles: Float64Array;
  readonly box: Box;
}

/** Numbers that each piece has in `ends`, and each bent one in `circles`. */
export const STRIDE = 4;
const QUARTER = Math.PI / 2;
/** A circle's right, top, left and bottom. */
const QUARTERS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;
/** An arc passes its circle's quarter points four times at most. */
const MOST_OF_ARC = 5;

export const turnContent = (content: Content, turn: number): TurnedContent => turnerOf(content)(turn);

/** Turns the content by any angle, rad: what is the same at all turns is made ready once. */
export function turnerOf({ edges, centre }: Content): (turn: number) => TurnedContent {
  const bent = edges.filter((edge) => edge.kind === 'arc').map((edge) => ({ edge, sweep: sweepOf(edge) }));
  const straight = edges.length - bent.length;
  const drawn = new Float64Array(STRIDE * straight);
  let at = 0;
  for (const { kind, from, to } of edges) {
    if (kind === 'arc') continue;
    drawn[at++] = from.x;
    drawn[at++] = from.y;
    drawn[at++] = to.x;
    drawn[at++] = to.y;
  }
  return (turn) => {
    const c = Math.cos(turn);
    const s = Math.sin(turn);
    const by = { c, s, x: -(c * centre.x - s * centre.y), y: -(s * centre.x + c * centre.y) };
    const ends = new Float64Array(STRIDE * (straight + MOST_OF_ARC * bent.length));
    turnLines(drawn, by, ends);
    const circles = new Float64Array(STRIDE * MOST_OF_ARC * bent.length);
    let count = straight;
    for (const { edge, sweep } of bent)
      count = cutArc(edge, sweep, turn, by, { ends, circles, straight, count });
    return { count, ends, straight, circles, box: boxOf(ends, count) };
  };
}

/** A turn by its cosine and sine, and a shift, mm. */
interface Move {
  readonly c: number;
  readonly s: number;
  readonly x: number;
  readonly y: number;
}

function turnLines(drawn: Float64Array, { c, s, x, y }: Move, ends: Float64Array): void {
  for (let k = 0; k < drawn.length; k += STRIDE) {
    const ax = c * drawn[k]! - s * drawn[k + 1]! + x;
    const ay = s * drawn[k]! + c * drawn[k + 1]! + y;
    const bx = c * drawn[k + 2]! - s * drawn[k + 3]! + x;
    const by = s * drawn[k + 2]! + c * drawn[k + 3]! + y;
    const rises = ay <= by;
    ends[k] = rises ? ay : by;
    ends[k + 1] = rises ? by : ay;
    ends[k + 2] = rises ? ax : bx;
    ends[k + 3] = rises ? bx : ax;
  }
}

/** Writes the parts of an arc between the quarter points of its circle; gives the count of pieces with them. */
function cutArc(
  { from, to, centre, radius, turn: way }: Arc,
  sweep: number,
  turn: number,
  { c, s, x, y }: Move,
  { ends, circles, straight, count }: Omit<TurnedContent, 'box'>,
): number {
  const middleX = c * centre.x - s * centre.y + x;
  const middleY = s * centre.x + c * centre.y + y;
  const start = Math.atan2(from.y - centre.y, from.x - centre.x) + turn;
  const end = start + way * sweep;
  let angle = start;
  let px = c * from.x - s * from.y + x;
  let py = s * from.x + c * from.y + y;
  let piece = count;
  let quarter = way > 0 ? Math.floor(start / QUARTER) + 1 : Math.ceil(start / QUARTER) - 1;
  for (let isLast = false; !isLast; piece++, quarter += way) {
    isLast = way * (quarter * QUARTER - end) >= 0;
    const next = isLast ? end : quarter * QUARTER;
    const [along, up] = QUARTERS[((quarter % 4) + 4) % 4]!;
    const qx = isLast ? c * to.x - s * to.y + x : middleX + along * radius;
    const qy = isLast ? s * to.x + c * to.y + y : middleY + up * radius;
    const rises = py <= qy;
    const at = STRIDE * piece;
    ends[at] = rises ? py : qy;
    ends[at + 1] = rises ? qy : py;
    ends[at + 2] = rises ? px : qx;
    ends[at + 3] = rises ? qx : px;
    const own = at - STRIDE * straight;
    circles[own] = middleX;
    circles[own + 1] = middleY;
    circles[own + 2] = radius;
    circles[own + 3] = Math.cos((angle + next) / 2) >= 0 ? 1 : -1;
    [angle, px, py] = [next, qx, qy];
  }
  return piece;
}

function boxOf(ends: Float64Array, count: number): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let at = 0; at < STRIDE * count; at += STRIDE) {
    const a = ends[at + 2]!;
    const b = ends[at + 3]!;
    if (ends[at]! < minY) minY = ends[at]!;
    if (ends[at + 1]! > maxY) maxY = ends[at + 1]!;
    if (a < minX) minX = a;
    if (b < minX) minX = b;
    if (a > maxX) maxX = a;
    if (b > maxX) maxX = b;
  }
  return { minX, minY, maxX, maxY };
}

/** Heights at which a piece begins or ends: where a band's content can change its kind. */
export function criticalHeights({ ends, count }: TurnedContent): number[] {
  const heights = new Set<number>();
  for (let at = 0; at < STRIDE * count; at += STRIDE) heights.add(ends[at]!).add(ends[at + 1]!);
  return [...heights];
}
