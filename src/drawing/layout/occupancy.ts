import type { Box, Edge, Vec } from '../../geometry/index.ts';
import { flattenEdge } from './flatten.ts';
import {
  type OrientedBox,
  segmentMeetsTurned,
  type TurnedBox,
  turnedBox,
  turnedOverlap,
  uprightBounds,
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
  /** Is the straight piece clear of the boxes added so far? (Lines may cross lines, never lettering.) */
  readonly isClearOfBoxes: (from: Vec, to: Vec) => boolean;
  /** How many of the lines added so far touch the box. */
  readonly linesIn: (box: OrientedBox) => number;
}

interface Cell {
  readonly segments: { readonly from: Vec; readonly to: Vec }[];
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

  const cellAt = (column: number, row: number): Cell => {
    const key = keyOf(column, row);
    let cell = cells.get(key);
    if (cell === undefined) {
      cell = { segments: [], boxes: [] };
      cells.set(key, cell);
    }
    return cell;
  };

  const addSegment = (from: Vec, to: Vec): void => {
    const pieces = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / size));
    for (let i = 0; i < pieces; i++) {
      const a = { x: from.x + ((to.x - from.x) * i) / pieces, y: from.y + ((to.y - from.y) * i) / pieces };
      const b = {
        x: from.x + ((to.x - from.x) * (i + 1)) / pieces,
        y: from.y + ((to.y - from.y) * (i + 1)) / pieces,
      };
      const bounds: Box = {
        minX: Math.min(a.x, b.x),
        minY: Math.min(a.y, b.y),
        maxX: Math.max(a.x, b.x),
        maxY: Math.max(a.y, b.y),
      };
      forCells(bounds, size, (column, row) => {
        cellAt(column, row).segments.push({ from: a, to: b });
        return true;
      });
    }
  };

  /** Is the test true in every filled cell that the bounds touch? */
  const everyCell = (bounds: Box, test: (cell: Cell) => boolean): boolean =>
    forCells(bounds, size, (column, row) => {
      const cell = cells.get(keyOf(column, row));
      return cell === undefined || test(cell);
    });

  return {
    addEdges: (edges) => {
      for (const edge of edges) {
        const points = flattenEdge(edge, CHORD);
        for (let i = 0; i + 1 < points.length; i++) addSegment(points[i]!, points[i + 1]!);
      }
    },
    addBox: (box) => {
      const turned = turnedBox(box);
      forCells(uprightBounds(box), size, (column, row) => {
        cellAt(column, row).boxes.push(turned);
        return true;
      });
    },
    isFree: (box) => {
      const turned = turnedBox(box);
      return everyCell(uprightBounds(box), ({ boxes, segments }) => {
        for (const other of boxes) if (turnedOverlap(turned, other)) return false;
        for (const { from, to } of segments) if (segmentMeetsTurned(from, to, turned)) return false;
        return true;
      });
    },
    isClearOfBoxes: (from, to) =>
      everyCell(
        {
          minX: Math.min(from.x, to.x),
          minY: Math.min(from.y, to.y),
          maxX: Math.max(from.x, to.x),
          maxY: Math.max(from.y, to.y),
        },
        (cell) => !cell.boxes.some((box) => segmentMeetsTurned(from, to, box)),
      ),
    linesIn: (box) => {
      let count = 0;
      const turned = turnedBox(box);
      everyCell(uprightBounds(box), (cell) => {
        for (const { from, to } of cell.segments) if (segmentMeetsTurned(from, to, turned)) count++;
        return true;
      });
      return count;
    },
  };
}

/** One number for a cell: rows and columns stay far below 2^25. */
function keyOf(column: number, row: number): number {
  return column * 2 ** 26 + row;
}

/** Visits the cells that the bounds touch until one answers no. */
function forCells(bounds: Box, size: number, visit: (column: number, row: number) => boolean): boolean {
  const left = Math.floor(bounds.minX / size);
  const right = Math.floor(bounds.maxX / size);
  const bottom = Math.floor(bounds.minY / size);
  const top = Math.floor(bounds.maxY / size);
  for (let column = left; column <= right; column++) {
    for (let row = bottom; row <= top; row++) if (!visit(column, row)) return false;
  }
  return true;
}
