import type { Outline, Region } from '../api.ts';
import { boundsOfEdges } from '../bounds.ts';
import { buildBoxTree, searchBoxTree } from '../index-tree/box-tree.ts';
import { areaOfOutline } from '../measure/area.ts';
import { perimeterOfOutline } from '../measure/perimeter.ts';
import { VERTEX_SNAP } from '../tolerance.ts';
import { homesByWalk, type LoopOfArea } from './homes-by-walk.ts';
import { placeClearOfCorners } from './place-clear-of-corners.ts';
import { windingNumber } from './winding-number.ts';

/**
 * Regions from loops that do not cross, anticlockwise round material and clockwise round holes: each hole goes to the smallest
 * outer loop that holds it. Slivers (on average thinner than the snap) are dropped, and holes in nothing.
 */
export function nestLoops(outlines: readonly Outline[]): Region[] {
  if (outlines.length === 1 && isLarge(outlines[0]!)) return [{ outer: outlines[0]!, holes: [] }];
  const outers: LoopOfArea[] = [];
  const holes: LoopOfArea[] = [];
  for (const outline of outlines) {
    const area = areaOfOutline(outline);
    // No loop of a square millimetre is so long that it is a sliver.
    if (Math.abs(area) < 1 && Math.abs(area) <= VERTEX_SNAP * perimeterOfOutline(outline)) continue;
    (area > 0 ? outers : holes).push({ outline, area });
  }
  if (outers.length === 0) return [];
  if (outers.length === 1) return [{ outer: outers[0]!.outline, holes: holes.map(({ outline }) => outline) }];
  outers.sort((a, b) => a.area - b.area);
  const held: Outline[][] = outers.map(() => []);
  if (holes.length > 0) {
    const homes = homesOf(outers, holes);
    holes.forEach(({ outline }, k) => {
      held[homes[k]!]?.push(outline);
    });
  }
  return outers.map(({ outline }, i) => ({ outer: outline, holes: held[i]! })).reverse();
}

/** Is a lone loop, which cannot be a hole, plainly no sliver: no polygon of its corners of less than a square millimetre? */
function isLarge({ edges }: Outline): boolean {
  const { x, y } = edges[0]!.from;
  let twice = 0;
  for (const { from, to } of edges) twice += (from.x - x) * (to.y - y) - (from.y - y) * (to.x - x);
  return twice > 2;
}

/** Of each hole the number of the smallest outer loop that holds it, or −1; outer loops come in order of area. */
function homesOf(outers: readonly LoopOfArea[], holes: readonly LoopOfArea[]): number[] {
  let edges = 0;
  for (const { outline } of outers) edges += outline.edges.length;
  if (edges * holes.length > WALK_FROM) return homesByWalk(outers, holes);
  const homeOf = homeFinder(outers);
  return holes.map(homeOf);
}

/** Beyond so many edges of outer loops times holes the way from hole to hole is shorter than a ray for each. */
const WALK_FROM = 4_000;

/** Finds for a hole the number of the smallest outer loop that holds it, or −1. */
function homeFinder(outers: readonly LoopOfArea[]): (hole: LoopOfArea) => number {
  const boxes: number[] = [];
  for (const { outline } of outers) {
    const { minX, minY, maxX, maxY } = boundsOfEdges(outline.edges);
    boxes.push(minX, minY, maxX, maxY);
  }
  const tree = buildBoxTree(boxes, outers.length);
  return (hole) => {
    const p = placeClearOfCorners(hole.outline.edges);
    let home = -1;
    searchBoxTree(tree, p.x, p.y, p.x, p.y, (i) => {
      const outer = outers[i]!;
      const smaller = home === -1 || i < home;
      if (smaller && outer.area >= -hole.area && windingNumber(outer.outline.edges, p) > 0) home = i;
      return false;
    });
    return home;
  };
}
