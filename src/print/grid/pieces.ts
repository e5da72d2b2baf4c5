import { type Arc, type Box, type Edge, pointAt, sweepOf, transformEdge } from '../../geometry/index.ts';
import type { Content } from './content.ts';

/**
 * A part of a line or arc on which x and y each only rise or only fall, so that the part of it between two heights
 * spans exactly from the x at the one to the x at the other.
 */
interface Piece {
  readonly low: number;
  readonly high: number;
  readonly xLow: number;
  readonly xHigh: number;
  /** The circle it lies on and which half of it (1 right, −1 left); a straight piece has none. */
  readonly circle?: {
    readonly x: number;
    readonly y: number;
    readonly radius: number;
    readonly side: 1 | -1;
  };
}

/** The content of a pattern, turned about its centre, which is then the origin. */
export interface TurnedContent {
  readonly pieces: readonly Piece[];
  readonly box: Box;
}

export function turnContent(content: Content, turn: number): TurnedContent {
  const { centre } = content;
  const c = Math.cos(turn);
  const s = Math.sin(turn);
  const by = {
    turn,
    scale: 1,
    mirrored: false,
    shift: { x: -(c * centre.x - s * centre.y), y: -(s * centre.x + c * centre.y) },
  };
  const pieces = content.edges.flatMap((edge) => piecesOf(transformEdge(edge, by)));
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const piece of pieces) {
    box.minX = Math.min(box.minX, piece.xLow, piece.xHigh);
    box.maxX = Math.max(box.maxX, piece.xLow, piece.xHigh);
    box.minY = Math.min(box.minY, piece.low);
    box.maxY = Math.max(box.maxY, piece.high);
  }
  return { pieces, box };
}

function piecesOf(edge: Edge): Piece[] {
  if (edge.kind === 'line') {
    const [a, b] = edge.from.y <= edge.to.y ? [edge.from, edge.to] : [edge.to, edge.from];
    return [{ low: a.y, high: b.y, xLow: a.x, xHigh: b.x }];
  }
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

function pieceOfArc(edge: Arc, from: number, to: number): Piece {
  const ends = [pointAt(edge, from), pointAt(edge, to)] as const;
  const [a, b] = ends[0].y <= ends[1].y ? ends : [ends[1], ends[0]];
  const middle = pointAt(edge, (from + to) / 2);
  const { centre, radius } = edge;
  const side = middle.x >= centre.x ? 1 : -1;
  return { low: a.y, high: b.y, xLow: a.x, xHigh: b.x, circle: { x: centre.x, y: centre.y, radius, side } };
}

function xAt(piece: Piece, y: number): number {
  if (y <= piece.low) return piece.xLow;
  if (y >= piece.high) return piece.xHigh;
  const { circle } = piece;
  if (circle === undefined) {
    return piece.xLow + ((y - piece.low) / (piece.high - piece.low)) * (piece.xHigh - piece.xLow);
  }
  const rise = y - circle.y;
  return circle.x + circle.side * Math.sqrt(Math.max(0, circle.radius * circle.radius - rise * rise));
}

/**
 * The x-spans of all content strictly between two heights: least and greatest in turn, rising. Spans less than
 * `gap` apart are joined. A level line on the border of the band is outside it.
 */
export function spansBetween(content: TurnedContent, low: number, high: number, gap: number): number[] {
  const found: [number, number][] = [];
  for (const piece of content.pieces) {
    if (piece.high <= low || piece.low >= high) continue;
    const isLevel = piece.high === piece.low;
    const a = isLevel ? piece.xLow : xAt(piece, low);
    const b = isLevel ? piece.xHigh : xAt(piece, high);
    found.push(a < b ? [a, b] : [b, a]);
  }
  found.sort((a, b) => a[0] - b[0]);
  const spans: number[] = [];
  for (const [from, to] of found) {
    const last = spans.length - 1;
    if (last > 0 && from - spans[last]! < gap) spans[last] = Math.max(spans[last]!, to);
    else spans.push(from, to);
  }
  return spans;
}

/** Heights at which a piece begins or ends: where a band's content can change its kind. */
export function criticalHeights(content: TurnedContent): number[] {
  return [...new Set(content.pieces.flatMap((piece) => [piece.low, piece.high]))];
}
