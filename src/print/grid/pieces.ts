import { type Arc, type Box, pointAt, sweepOf, transformEdge } from '../../geometry/index.ts';
import type { Content } from './content.ts';

/**
 * The content of a pattern, turned about its centre, which is then the origin: parts of lines and arcs on which x and y each only rise or
 * only fall, so that what of one lies between two heights spans exactly from the x at the one to the x at the other. Numbers in a row, since the
 * search for the fewest sheets goes through them a million times.
 */
export interface TurnedContent {
  readonly count: number;
  /** Of each piece its least and greatest height, and the x there, mm. */
  readonly ends: Float64Array;
  /** Of each piece the circle that it lies on; none where it is straight. */
  readonly circles: readonly (Circle | undefined)[];
  readonly box: Box;
}

/** A circle and which half of it a piece lies on: 1 right, −1 left. */
interface Circle {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly side: 1 | -1;
}

interface ArcPiece {
  readonly low: number;
  readonly high: number;
  readonly xLow: number;
  readonly xHigh: number;
  readonly circle: Circle;
}

/** Numbers that each piece has in `ends`. */
const STRIDE = 4;

export const turnContent = (content: Content, turn: number): TurnedContent => turnerOf(content)(turn);

/** Turns the content by any angle, rad: what is the same at all turns is made ready once. */
export function turnerOf({ edges, centre }: Content): (turn: number) => TurnedContent {
  const drawn = Float64Array.from(edges.flatMap(({ from, to }) => [from.x, from.y, to.x, to.y]));
  const arcs = edges.flatMap((edge, at) => (edge.kind === 'arc' ? [{ edge, at }] : []));
  return (turn) => {
    const c = Math.cos(turn);
    const s = Math.sin(turn);
    const shift = { x: -(c * centre.x - s * centre.y), y: -(s * centre.x + c * centre.y) };
    const by = { turn, scale: 1, mirrored: false, shift };
    const bent = arcs.map(({ edge, at }) => ({ at, pieces: piecesOfArc(transformEdge(edge, by) as Arc) }));
    const count = bent.reduce((sum, { pieces }) => sum + pieces.length - 1, edges.length);
    const ends = new Float64Array(STRIDE * count);
    const circles: (Circle | undefined)[] = [];
    let line = 0;
    let to = 0;
    const addLines = (before: number): void => {
      for (; line < before; line++) {
        const from = STRIDE * line;
        const ax = c * drawn[from]! - s * drawn[from + 1]! + shift.x;
        const ay = s * drawn[from]! + c * drawn[from + 1]! + shift.y;
        const bx = c * drawn[from + 2]! - s * drawn[from + 3]! + shift.x;
        const by = s * drawn[from + 2]! + c * drawn[from + 3]! + shift.y;
        const rises = ay <= by;
        ends[to++] = rises ? ay : by;
        ends[to++] = rises ? by : ay;
        ends[to++] = rises ? ax : bx;
        ends[to++] = rises ? bx : ax;
        circles.push(undefined);
      }
    };
    for (const { at, pieces } of bent) {
      addLines(at);
      line++;
      for (const { low, high, xLow, xHigh, circle } of pieces) {
        ends[to++] = low;
        ends[to++] = high;
        ends[to++] = xLow;
        ends[to++] = xHigh;
        circles.push(circle);
      }
    }
    addLines(edges.length);
    return { count, ends, circles, box: boxOf(ends) };
  };
}

function boxOf(ends: Float64Array): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let at = 0; at < ends.length; at += STRIDE) {
    minY = Math.min(minY, ends[at]!);
    maxY = Math.max(maxY, ends[at + 1]!);
    minX = Math.min(minX, ends[at + 2]!, ends[at + 3]!);
    maxX = Math.max(maxX, ends[at + 2]!, ends[at + 3]!);
  }
  return { minX, minY, maxX, maxY };
}

function piecesOfArc(edge: Arc): ArcPiece[] {
  const stops = [0, ...quarterPointsOf(edge), 1];
  return stops.slice(1).map((stop, i) => pieceOfArc(edge, stops[i]!, stop));
}

/** Shares of the arc's length at which it passes the right, top, left and bottom of its circle, in order. */
function quarterPointsOf(edge: Arc): number[] {
  const start = Math.atan2(edge.from.y - edge.centre.y, edge.from.x - edge.centre.x);
  const sweep = sweepOf(edge);
  const shares: number[] = [];
  for (let quarter = 0; quarter < 4; quarter++) {
    const ahead = edge.turn * ((quarter * Math.PI) / 2 - start);
    const share = (ahead - 2 * Math.PI * Math.floor(ahead / (2 * Math.PI))) / sweep;
    if (share > 0 && share < 1) shares.push(share);
  }
  return shares.sort((a, b) => a - b);
}

function pieceOfArc(edge: Arc, from: number, to: number): ArcPiece {
  const ends = [pointAt(edge, from), pointAt(edge, to)] as const;
  const [a, b] = ends[0].y <= ends[1].y ? ends : [ends[1], ends[0]];
  const middle = pointAt(edge, (from + to) / 2);
  const { centre, radius } = edge;
  const side = middle.x >= centre.x ? 1 : -1;
  return { low: a.y, high: b.y, xLow: a.x, xHigh: b.x, circle: { x: centre.x, y: centre.y, radius, side } };
}

/** The x of a piece at a height between its ends, mm. */
function xAt({ ends, circles }: TurnedContent, piece: number, y: number): number {
  const circle = circles[piece];
  if (circle === undefined) {
    const at = STRIDE * piece;
    const [low, high, xLow, xHigh] = [ends[at]!, ends[at + 1]!, ends[at + 2]!, ends[at + 3]!];
    return xLow + ((y - low) / (high - low)) * (xHigh - xLow);
  }
  const rise = y - circle.y;
  return circle.x + circle.side * Math.sqrt(Math.max(0, circle.radius * circle.radius - rise * rise));
}

/**
 * The x-spans of all content strictly between two heights: least and greatest in turn, rising. Spans less than
 * `gap` apart are joined. A level line on the border of the band is outside it.
 */
export function spansBetween(content: TurnedContent, low: number, high: number, gap: number): number[] {
  const spans: number[] = [];
  const { count, ends } = content;
  for (let piece = 0; piece < count; piece++) {
    const from = ends[STRIDE * piece]!;
    const to = ends[STRIDE * piece + 1]!;
    if (to <= low || from >= high) continue;
    const a = low <= from ? ends[STRIDE * piece + 2]! : xAt(content, piece, low);
    const b = high >= to ? ends[STRIDE * piece + 3]! : xAt(content, piece, high);
    if (a < b) addSpan(spans, a, b, gap);
    else addSpan(spans, b, a, gap);
  }
  return spans;
}

/** Puts one more span among those that there are: with all that lie less than `gap` from it they become one. */
function addSpan(spans: number[], from: number, to: number, gap: number): void {
  let first = 0;
  while (first < spans.length && from - spans[first + 1]! >= gap) first += 2;
  let after = first;
  while (after < spans.length && spans[after]! - to < gap) after += 2;
  if (after === first) {
    spans.splice(first, 0, from, to);
    return;
  }
  spans[first] = Math.min(spans[first]!, from);
  spans[first + 1] = Math.max(spans[after - 1]!, to);
  if (after > first + 2) spans.splice(first + 2, after - first - 2);
}

/** Heights at which a piece begins or ends: where a band's content can change its kind. */
export function criticalHeights({ ends }: TurnedContent): number[] {
  return [...new Set(ends.filter((_, at) => at % STRIDE < 2))];
}
