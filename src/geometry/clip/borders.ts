import type { Edge, Outline, Region, Vec } from '../api.ts';
import { newPieces, releasePieces } from '../arrangement/pieces.ts';
import { PLACE, walkThrough } from '../arrangement/walk.ts';
import { addLoops, wallsOfPieces } from '../arrangement/walls-of-pieces.ts';
import { boundsOfEdge, boundsOfRegions } from '../bounds.ts';
import { type BoxTree, buildBoxTree, searchBoxTree } from '../index-tree/box-tree.ts';
import { locate } from '../measure/locate.ts';
import { nearestOnEdge } from '../measure/nearest.ts';
import { filled, markLists, reals, releaseLists } from '../memory/lists.ts';
import { POSITION_TOLERANCE } from '../tolerance.ts';

/** The borders of regions, to be asked which of them are near an edge, and which places they hold. */
export interface Borders {
  /** In order, those that may meet an edge. */
  readonly near: (edge: Edge) => Iterable<Edge>;
  /** For each place, whether it lies in the regions, their borders included. */
  readonly hold: (places: readonly Vec[]) => boolean[];
}

/** Beyond so many borders times edges a tree over them pays. */
const TREE_FROM = 600;

/** Borders to be asked about so many edges. */
export function bordersOf(regions: readonly Region[], edgeCount: number): Borders {
  const loops = regions.flatMap(({ outer, holes }) => [outer, ...holes]);
  const borders = loops.flatMap(({ edges }) => edges);
  if (borders.length * edgeCount <= TREE_FROM) {
    return {
      near: () => borders,
      hold: (places) => places.map((p) => locate(regions, p) !== 'outside'),
    };
  }
  const boxes: number[] = [];
  for (const border of borders) {
    const { minX, minY, maxX, maxY } = boundsOfEdge(border);
    boxes.push(minX, minY, maxX, maxY);
  }
  const tree = buildBoxTree(boxes, borders.length);
  const { minX, minY, maxX, maxY } = boundsOfRegions(regions);
  const cell = 2 * Math.sqrt(((maxX - minX) * (maxY - minY)) / borders.length);
  const regionOf = regions.flatMap(({ holes }, k) => [k, ...holes.map(() => k)]);
  return {
    near: (edge) => nearIn(tree, edge, cell).map((k) => borders[k]!),
    hold: (places) => {
      const inside = insideOf(loops, regionOf, regions.length, places);
      return places.map((p, k) => inside[k]! || isOn(tree, borders, p));
    },
  };
}

/** More parts of a slanting line are not looked at one by one. */
const MOST_PARTS = 256;
/** So far round an edge (mm) borders are looked for: farther than any touch reaches. */
const REACH = 10 * POSITION_TOLERANCE;

/** Numbers of the borders whose boxes lie near an edge; near each part of it where it is a long slanting line. */
function nearIn(tree: BoxTree, edge: Edge, cell: number): number[] {
  const found = new Set<number>();
  const search = (minX: number, minY: number, maxX: number, maxY: number): void => {
    searchBoxTree(tree, minX - REACH, minY - REACH, maxX + REACH, maxY + REACH, (k) => {
      found.add(k);
      return false;
    });
  };
  const { from, to } = edge;
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const parts = Math.min(MOST_PARTS, Math.ceil(Math.min(Math.abs(dx), Math.abs(dy)) / cell));
  if (edge.kind === 'arc' || !(parts > 1)) {
    const { minX, minY, maxX, maxY } = boundsOfEdge(edge);
    search(minX, minY, maxX, maxY);
  } else {
    for (let part = 0; part < parts; part++) {
      const x0 = from.x + (part / parts) * dx;
      const y0 = from.y + (part / parts) * dy;
      const x1 = x0 + dx / parts;
      const y1 = y0 + dy / parts;
      search(Math.min(x0, x1), Math.min(y0, y1), Math.max(x0, x1), Math.max(y0, y1));
    }
  }
  return [...found].sort((a, b) => a - b);
}

function isOn(tree: BoxTree, borders: readonly Edge[], p: Vec): boolean {
  const near = POSITION_TOLERANCE;
  return searchBoxTree(
    tree,
    p.x - near,
    p.y - near,
    p.x + near,
    p.y + near,
    (k) => nearestOnEdge(borders[k]!, p).distance <= near,
  );
}

/** Whether the loops of any region wind round each of the places, found on one way from place to place. */
function insideOf(
  loops: readonly Outline[],
  regionOf: readonly number[],
  regionCount: number,
  places: readonly Vec[],
): boolean[] {
  const inside = places.map(() => false);
  const mark = markLists();
  const pieces = newPieces();
  const loopOf = addLoops(pieces, loops);
  const windings = filled(regionCount);
  let around = 0;
  const asked = reals(PLACE * places.length);
  places.forEach(({ x, y }, k) => {
    asked[PLACE * k] = x;
    asked[PLACE * k + 1] = y;
    asked[PLACE * k + 2] = 0;
  });
  walkThrough(wallsOfPieces(pieces), asked, {
    begin: () => {
      windings.fill(0);
      around = 0;
    },
    pass: (piece, change) => {
      const region = regionOf[loopOf[piece]!]!;
      const before = windings[region]!;
      windings[region] = before + change;
      if (before > 0 && before + change <= 0) around--;
      if (before <= 0 && before + change > 0) around++;
    },
    arrive: (k) => {
      inside[k] = around > 0;
    },
    isOut: () => around === 0 && windings.every((winding) => winding === 0),
  });
  releasePieces(pieces);
  releaseLists(mark);
  return inside;
}
