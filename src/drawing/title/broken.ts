import type { Box, Vec } from '../../geometry/index.ts';
import type { Mark, PathMark } from '../api.ts';
import type { Dimension } from '../dimension/api.ts';
import { measuredLength } from '../dimension/figure-of.ts';
import { pathMark } from '../layout/drawing.ts';
import { strokes } from '../layout/strokes.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';
import { clipScene } from '../scene/clip-scene.ts';
import { transformMark } from '../scene/transform-scene.ts';

/** What of a picture is shown, by its y in mm of the world; whole where it is infinite. */
export interface Piece {
  readonly from: number;
  readonly to: number;
}

/** On paper between two pieces, how far a break line runs past the part, and how high its zigzag is, mm. */
const GAP = 6;
const PAST = 3;
const ZIGZAG = { half: 1, high: 2 } as const;
const FAR = 1e6;

/** Where a height of the picture comes to stand, in mm of the world at this scale: what lies between pieces is left out but for a gap. */
function closedUp(pieces: readonly Piece[], scale: number): (y: number) => number {
  return (y) => {
    let out = 0;
    for (const [at, { to }] of pieces.entries()) {
      const next = pieces[at + 1];
      if (next === undefined || y <= to) break;
      // Within what is left out nothing should be asked for: it would come to stand in the gap.
      out += Math.min(y, next.from) - to - (GAP / scale) * Math.min(1, (y - to) / (next.from - to));
    }
    return y - out;
  };
}

/** Lines on paper with what lies between pieces taken out, and break lines (ISO 128-2, thin with zigzags) where something is broken off. */
export function breakMarks(
  marks: readonly PathMark[],
  pieces: readonly Piece[],
  scale: number,
): readonly PathMark[] {
  const move = closedUp(pieces, scale);
  return pieces.flatMap(({ from, to }) => {
    const [low, high] = [Math.max(from * scale, -FAR), Math.min(to * scale, FAR)];
    const start = Number.isFinite(from) ? from : to;
    const shift = { x: 0, y: scale * (move(start) - start) };
    const kept = clipScene(
      { marks, box: boundsOfMarks(marks) },
      { minX: -FAR, maxX: FAR, minY: low, maxY: high },
    );
    const own = kept.marks.map((mark) => transformMark(mark, { turn: 0, scale: 1, mirrored: false, shift }));
    const borders = [from, to].filter((y) => Number.isFinite(y));
    return [
      ...own.filter((mark): mark is PathMark => mark.kind === 'path'),
      ...borders.flatMap((y) => breakLine(acrossAt(marks, y * scale), y * scale + shift.y)),
    ];
  });
}

/** How far the part reaches at a height, on paper. */
function acrossAt(marks: readonly Mark[], y: number): Box {
  const wide = marks.filter(({ role }) => role === 'visible' || role === 'part');
  const band = { minX: -FAR, maxX: FAR, minY: y - 0.01, maxY: y + 0.01 };
  return boundsOfMarks(clipScene({ marks: wide, box: band }, band).marks);
}

function breakLine({ minX, maxX }: Box, y: number): readonly PathMark[] {
  if (minX > maxX) return [];
  const middle = (minX + maxX) / 2;
  const points: readonly Vec[] = [
    { x: minX - PAST, y },
    { x: middle - 2 * ZIGZAG.half, y },
    { x: middle - ZIGZAG.half, y: y + ZIGZAG.high },
    { x: middle + ZIGZAG.half, y: y - ZIGZAG.high },
    { x: middle + 2 * ZIGZAG.half, y },
    { x: maxX + PAST, y },
  ];
  return [pathMark('thin', strokes(points))];
}

/** Dimensions as they stand in a broken picture: what is said of them stays, and lengths say by how much they are drawn too short. */
export function breakDimensions(
  dimensions: readonly Dimension[],
  pieces: readonly Piece[],
  scale: number,
): readonly Dimension[] {
  const move = closedUp(pieces, scale);
  const at = ({ x, y }: Vec): Vec => ({ x, y: move(y) });
  return dimensions
    .filter((dimension) => pointsOf(dimension).every(({ y }) => pieces.some((piece) => isIn(piece, y))))
    .map((dimension): Dimension => {
      switch (dimension.kind) {
        case 'length': {
          const drawn = { ...dimension, from: at(dimension.from), to: at(dimension.to) };
          const shortened = measuredLength(dimension) - measuredLength(drawn);
          return shortened === 0 ? drawn : { ...drawn, shortened };
        }
        case 'radius': {
          const moved = at(dimension.at);
          const { x, y } = dimension.centre;
          return { ...dimension, at: moved, centre: { x, y: y + moved.y - dimension.at.y } };
        }
        case 'angle':
        case 'note':
          return { ...dimension, at: at(dimension.at) };
        default:
          return dimension satisfies never;
      }
    });
}

/** What of a picture's dimensions lies within a piece altogether. */
export const isWithin = (dimension: Dimension, piece: Piece): boolean =>
  pointsOf(dimension).every(({ y }) => isIn(piece, y));

const isIn = ({ from, to }: Piece, y: number): boolean => y >= from && y <= to;

function pointsOf(dimension: Dimension): readonly Vec[] {
  return dimension.kind === 'length' ? [dimension.from, dimension.to] : [dimension.at];
}
