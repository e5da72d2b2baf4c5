import { addArc, addLine, addVertex, type Pieces } from '../arrangement/pieces.ts';
import { TRIM_MARGIN } from '../tolerance.ts';
import { FREED, freedOfArc, freedOfLine } from './freed-stretch.ts';
import { type Nearness, NOBODY } from './nearness.ts';

/** How raw pieces are rid of what lies too near the source. */
export interface Trimming {
  /** Takes what is left. */
  readonly result: Pieces;
  readonly source: Pieces;
  readonly nearness: Nearness;
  /** Size of the offset, mm. */
  readonly reach: number;
  /** A part no longer than this (mm) is kept without looking closer. */
  readonly finest: number;
  /** The same for a part whose middle is far enough. */
  readonly coarse: number;
}

/** What all parts of a piece share; the carrier of a line is its ends. */
export interface Carrier {
  readonly cx: number;
  readonly cy: number;
  readonly radius: number;
  readonly turn: number;
  readonly source: number;
  readonly side: number;
}

const NONE = -1;

/** Adds what of a piece between two vertices of the result is not surely too near the source. */
export function trimPiece(trimming: Trimming, piece: Carrier, v0: number, v1: number): void {
  const open = trimPart(trimming, piece, v0, v1, NONE);
  if (open !== NONE) addRun(trimming.result, piece, open, v1);
}

/**
 * Goes along a part from v0 to v1 and adds the runs in it that are far enough. Where its middle lies too near some piece of the source,
 * all that lies too near the same is cut out at once; what is left on either side is looked at in turn. `open` is the vertex at which
 * a run up to v0 began, or NONE; given back is the same for v1.
 */
function trimPart(trimming: Trimming, piece: Carrier, v0: number, v1: number, open: number): number {
  const { result, source, nearness, reach, finest, coarse } = trimming;
  const { vertices } = result;
  const { cx, cy, radius, turn } = piece;
  const x0 = vertices[2 * v0]!;
  const y0 = vertices[2 * v0 + 1]!;
  const x1 = vertices[2 * v1]!;
  const y1 = vertices[2 * v1 + 1]!;
  let mx = (x0 + x1) / 2;
  let my = (y0 + y1) / 2;
  const half = Math.sqrt((x0 - mx) * (x0 - mx) + (y0 - my) * (y0 - my));
  if (turn !== 0) {
    const size = radius / Math.sqrt((mx - cx) * (mx - cx) + (my - cy) * (my - cy));
    mx = cx + (mx - cx) * size;
    my = cy + (my - cy) * size;
  }
  if (2 * half <= finest) {
    // Too short to be cut any more; but not kept where the whole of it lies too near.
    if (nearness.nearerPiece(mx, my, reach - half - TRIM_MARGIN) === NOBODY) return open === NONE ? v0 : open;
    if (open !== NONE) addRun(result, piece, open, v0);
    return NONE;
  }
  const far = reach - TRIM_MARGIN;
  const near = nearness.nearerPiece(mx, my, far);
  if (near === NOBODY) {
    // The middle is far enough, or nearly.
    if (2 * half <= coarse) return open === NONE ? v0 : open;
    const middle = addVertex(result, mx, my);
    return trimPart(trimming, piece, middle, v1, trimPart(trimming, piece, v0, middle, open));
  }
  if (turn === 0) freedOfLine(source, near, mx, my, (x1 - x0) / (2 * half), (y1 - y0) / (2 * half), far);
  else freedOfArc(source, near, mx, my, piece, far);
  const { from, to } = FREED;
  // From the middle of the part to either end, along it.
  const side = turn === 0 ? half : radius * Math.asin(Math.min(1, half / radius));
  let begun = open;
  if (from <= TRIM_MARGIN / 2 - side) {
    if (begun !== NONE) addRun(result, piece, begun, v0);
  } else {
    const before = vertexAlong(trimming, piece, v0, v1, mx, my, half, from);
    begun = trimPart(trimming, piece, v0, before, begun);
    if (begun !== NONE) addRun(result, piece, begun, before);
  }
  if (to >= side - TRIM_MARGIN / 2) return NONE;
  return trimPart(trimming, piece, vertexAlong(trimming, piece, v0, v1, mx, my, half, to), v1, NONE);
}

/** A new vertex so far (mm) along the part from its middle. */
function vertexAlong(
  { result }: Trimming,
  { cx, cy, radius, turn }: Carrier,
  v0: number,
  v1: number,
  mx: number,
  my: number,
  half: number,
  along: number,
): number {
  if (turn === 0) {
    const { vertices } = result;
    const ux = (vertices[2 * v1]! - vertices[2 * v0]!) / (2 * half);
    const uy = (vertices[2 * v1 + 1]! - vertices[2 * v0 + 1]!) / (2 * half);
    return addVertex(result, mx + along * ux, my + along * uy);
  }
  const angle = (turn * along) / radius;
  const cosine = Math.cos(angle);
  const sine = Math.sin(angle);
  const qx = mx - cx;
  const qy = my - cy;
  return addVertex(result, cx + cosine * qx - sine * qy, cy + sine * qx + cosine * qy);
}

export function addRun(result: Pieces, piece: Carrier, v0: number, v1: number): void {
  const { cx, cy, radius, turn, source, side } = piece;
  if (turn === 0) addLine(result, v0, v1, source, side);
  else addArc(result, v0, v1, cx, cy, radius, turn, source, side);
}
