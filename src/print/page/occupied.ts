import type { Pattern } from '../../drawing/index.ts';
import {
  type Box,
  boundsOfEdge,
  clipEdges,
  type Edge,
  type Similarity,
  transformEdge,
} from '../../geometry/index.ts';
import { contentOf } from '../grid/content.ts';

/** Linework and boxes of texts, against which room is sought. */
export interface Occupied {
  readonly edges: readonly { readonly edge: Edge; readonly bounds: Box }[];
}

/** What a pattern has drawn, moved. */
export function occupiedBy(pattern: Pattern, by: Similarity): Occupied {
  return {
    edges: contentOf(pattern).edges.map((raw) => {
      const edge = transformEdge(raw, by);
      return { edge, bounds: boundsOfEdge(edge) };
    }),
  };
}

/** Only what comes into a box: for many questions about the same neighbourhood. */
export function occupiedNear(occupied: Occupied, box: Box): Occupied {
  return { edges: occupied.edges.filter(({ bounds }) => touches(bounds, box)) };
}

/** How many lines pass through a box; 0 when it is free. */
export function linesThrough(occupied: Occupied, box: Box): number {
  let count = 0;
  for (const { edge, bounds } of occupied.edges) {
    if (touches(bounds, box) && clipEdges([edge], box).length > 0) count++;
  }
  return count;
}

export function touches(a: Box, b: Box): boolean {
  return a.minX <= b.maxX && a.maxX >= b.minX && a.minY <= b.maxY && a.maxY >= b.minY;
}

/** An occupied place of its own. */
export function withBoxes(occupied: Occupied, boxes: readonly Box[]): Occupied {
  const sides = boxes.flatMap((box) => {
    const { minX, minY, maxX, maxY } = box;
    const tag = { id: 'box', role: 'left' } as const;
    const corners = [
      { x: minX, y: minY },
      { x: maxX, y: minY },
      { x: maxX, y: maxY },
      { x: minX, y: maxY },
    ];
    return corners.map((from, i) => {
      const edge: Edge = { kind: 'line', from, to: corners[(i + 1) % 4]!, tag };
      return { edge, bounds: boundsOfEdge(edge) };
    });
  });
  return { edges: [...occupied.edges, ...sides] };
}
