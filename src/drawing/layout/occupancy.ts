import { type Edge, norm, type Vec } from '../../geometry/index.ts';
import { flattenEdge } from './flatten.ts';
import {
  type OrientedBox,
  pieceMeets,
  shapesOverlap,
  type TurnedBox,
  type TurnedShape,
  turnedBox,
  turnedShape,
} from './oriented-box.ts';

/**
 * What is drawn already on a sheet of any size, so that lettering can be placed clear of it: straight pieces of lines
 * and boxes of text, in cells of a grid. Filled while one drawing is laid out, then thrown away.
 */
export interface Occupancy {
  readonly addEdges: (edges: readonly Edge[]) => void;
  readonly addBox: (box: OrientedBox) => void;
  /** Is the box clear of everything added so far? */
  readonly isFree: (box: OrientedBox) => boolean;
  /** The same of a shape about a middle, for those that are tried in hundreds of places. */
  readonly isFreeAt: (shape: TurnedShape, middle: Vec) => boolean;
  /** Is the straight piece clear of the boxes added so far? (Lines may cross lines, never lettering.) */
  readonly isClearOfBoxes: (from: Vec, to: Vec) => boolean;
  /** How many of the lines added so far touch the box. */
  readonly linesIn: (box: OrientedBox) => number;
}

interface Cell {
  /** Straight pieces, each as the x and y of its ends: bare numbers, because there are thousands of them. */
  readonly pieces: number[];
  readonly boxes: TurnedBox[];
}

/** mm; about the size of a word, so that a query looks into a handful of cells. */
const LEAST_CELL = 12;
/** Cells along the span of a drawing at most: a wild coordinate must not take all memory. */
const MOST_CELLS = 400;
/** mm; how far the straight pieces that stand for arcs may lie from them: hidden in the clearance round lettering. */
const CHORD = 0.05;

/** `span`: about how far the drawing will reach, mm; it sets the size of the cells. */
export function createOccupancy(span: number): Occupancy {
  const size = Math.max(LEAST_CELL, span / MOST_CELLS);
  const cells = new Map<number, Cell>();
  /** Filled cells found by one search: used again by the next. */
  const found: Cell[] = [];

  const cellAt = (column: number, row: number): Cell => {
    const key = keyOf(column, row);
    let cell = cells.get(key);
    if (cell === undefined) {
      cell = { pieces: [], boxes: [] };
      cells.set(key, cell);
    }
    return cell;
  };

  /** The filled cells that an upright box touches. */
  const cellsIn = (minX: number, minY: number, maxX: number, maxY: number): readonly Cell[] => {
    found.length = 0;
    const right = Math.floor(maxX / size);
    const bottom = Math.floor(minY / size);
    const top = Math.floor(maxY / size);
    for (let column = Math.floor(minX / size); column <= right; column++) {
      for (let row = bottom; row <= top; row++) {
        const cell = cells.get(keyOf(column, row));
        if (cell !== undefined) found.push(cell);
      }
    }
    return found;
  };

  const cellsRound = ({ reachX, reachY }: TurnedShape, { x, y }: Vec): readonly Cell[] =>
    cellsIn(x - reachX, y - reachY, x + reachX, y + reachY);

  const isFreeAt = (shape: TurnedShape, middle: Vec): boolean => {
    const { x, y } = middle;
    for (const { boxes, pieces } of cellsRound(shape, middle)) {
      for (const box of boxes) {
        if (shapesOverlap(shape, box, box.centre.x - x, box.centre.y - y)) return false;
      }
      for (let i = 0; i < pieces.length; i += 4) {
        if (pieceMeets(pieces[i]! - x, pieces[i + 1]! - y, pieces[i + 2]! - x, pieces[i + 3]! - y, shape)) {
          return false;
        }
      }
    }
    return true;
  };

  const addPiece = (ax: number, ay: number, bx: number, by: number): void => {
    const right = Math.floor(Math.max(ax, bx) / size);
    const bottom = Math.floor(Math.min(ay, by) / size);
    const top = Math.floor(Math.max(ay, by) / size);
    for (let column = Math.floor(Math.min(ax, bx) / size); column <= right; column++) {
      for (let row = bottom; row <= top; row++) cellAt(column, row).pieces.push(ax, ay, bx, by);
    }
  };

  /** In pieces no longer than a cell, so that a slanting line fills no more cells than it passes. */
  const addStraight = (from: Vec, to: Vec): void => {
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const count = Math.max(1, Math.ceil(norm(dx, dy) / size));
    for (let i = 0; i < count; i++) {
      addPiece(
        from.x + (dx * i) / count,
        from.y + (dy * i) / count,
        from.x + (dx * (i + 1)) / count,
        from.y + (dy * (i + 1)) / count,
      );
    }
  };

  return {
    addEdges: (edges) => {
      for (const edge of edges) {
        if (edge.kind === 'line') {
          addStraight(edge.from, edge.to);
          continue;
        }
        const points = flattenEdge(edge, CHORD);
        for (let i = 0; i + 1 < points.length; i++) addStraight(points[i]!, points[i + 1]!);
      }
    },
    addBox: (box) => {
      const turned = turnedBox(box);
      const { centre, reachX, reachY } = turned;
      const right = Math.floor((centre.x + reachX) / size);
      const bottom = Math.floor((centre.y - reachY) / size);
      const top = Math.floor((centre.y + reachY) / size);
      for (let column = Math.floor((centre.x - reachX) / size); column <= right; column++) {
        for (let row = bottom; row <= top; row++) cellAt(column, row).boxes.push(turned);
      }
    },
    isFree: ({ centre, halfWidth, halfHeight, angle }) =>
      isFreeAt(turnedShape(halfWidth, halfHeight, angle), centre),
    isFreeAt,
    isClearOfBoxes: (from, to) => {
      const near = cellsIn(
        Math.min(from.x, to.x),
        Math.min(from.y, to.y),
        Math.max(from.x, to.x),
        Math.max(from.y, to.y),
      );
      for (const { boxes } of near) {
        for (const box of boxes) {
          const { x, y } = box.centre;
          if (pieceMeets(from.x - x, from.y - y, to.x - x, to.y - y, box)) return false;
        }
      }
      return true;
    },
    linesIn: ({ centre, halfWidth, halfHeight, angle }) => {
      let count = 0;
      const shape = turnedShape(halfWidth, halfHeight, angle);
      const { x, y } = centre;
      for (const { pieces } of cellsRound(shape, centre)) {
        for (let i = 0; i < pieces.length; i += 4) {
          if (pieceMeets(pieces[i]! - x, pieces[i + 1]! - y, pieces[i + 2]! - x, pieces[i + 3]! - y, shape)) {
            count++;
          }
        }
      }
      return count;
    },
  };
}

/**
 * One number for a cell, small enough for the engine to keep it as a whole number while rows and columns stay below 2^14.
 * Two cells beyond that may share a number, and then what stands in them: more to look at, nothing that is missed.
 */
function keyOf(column: number, row: number): number {
  return column * 2 ** 15 + row;
}
