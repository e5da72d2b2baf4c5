import { type Box, boundsOfEdges, joinBoxes } from '../../geometry/index.ts';
import type { Mark } from '../api.ts';
import { boxOfText, uprightBounds } from '../layout/oriented-box.ts';

const EMPTY: Box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };

/** Smallest upright box round one mark: lines by their middle, text by its letters' box. */
export function boundsOfMark(mark: Mark): Box {
  return mark.kind === 'path' ? boundsOfEdges(mark.edges) : uprightBounds(boxOfText(mark));
}

/** Smallest upright box round marks; none give an empty box (min > max). */
export function boundsOfMarks(marks: readonly Mark[]): Box {
  return marks.map(boundsOfMark).reduce(joinBoxes, EMPTY);
}
