import type { Box, Edge, Outline, Region, Vec } from '../api.ts';
import { boundsOfEdges } from '../bounds.ts';
import { lengthOf, pointAt } from '../edge.ts';
import { areaOfOutline } from '../measure/area.ts';
import { perimeterOfOutline } from '../measure/perimeter.ts';
import { VERTEX_SNAP } from '../tolerance.ts';
import { windingNumber } from './winding-number.ts';

interface Loop {
  readonly outline: Outline;
  readonly area: number;
  readonly box: Box;
}

/**
 * Regions from loops that do not cross, anticlockwise round material and clockwise round holes: each hole goes to the smallest
 * outer loop that holds it. Slivers (on average thinner than the snap) are dropped, and holes in nothing.
 */
export function nestLoops(outlines: readonly Outline[]): Region[] {
  const outers: Loop[] = [];
  const holes: Loop[] = [];
  for (const outline of outlines) {
    const area = areaOfOutline(outline);
    if (Math.abs(area) <= VERTEX_SNAP * perimeterOfOutline(outline)) continue;
    (area > 0 ? outers : holes).push({ outline, area, box: boundsOfEdges(outline.edges) });
  }
  outers.sort((a, b) => a.area - b.area);
  const held: Outline[][] = outers.map(() => []);
  for (const hole of holes) {
    const at = outers.length === 1 ? 0 : outers.findIndex((outer) => holds(outer, hole));
    held[at]?.push(hole.outline);
  }
  return outers.map(({ outline }, i) => ({ outer: outline, holes: held[i]! })).reverse();
}

function holds(outer: Loop, hole: Loop): boolean {
  if (outer.area < -hole.area) return false;
  const { minX, minY, maxX, maxY } = outer.box;
  const { box } = hole;
  const slack = VERTEX_SNAP;
  if (box.minX < minX - slack || box.minY < minY - slack) return false;
  if (box.maxX > maxX + slack || box.maxY > maxY + slack) return false;
  return windingNumber(outer.outline.edges, placeClearOfCorners(hole.outline.edges)) > 0;
}

/** A place inside the longest edge of a loop, away from corners where it might touch another. */
export function placeClearOfCorners(edges: readonly Edge[]): Vec {
  let longest = edges[0]!;
  for (const edge of edges) if (lengthOf(edge) > lengthOf(longest)) longest = edge;
  return pointAt(longest, 0.4142);
}
