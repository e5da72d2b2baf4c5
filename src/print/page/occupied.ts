import { type Pattern, type TextMark, transformMark } from '../../drawing/index.ts';
import {
  type Box,
  boundsOfEdge,
  boundsOfEdges,
  clipEdges,
  type Edge,
  type Similarity,
  transformEdge,
} from '../../geometry/index.ts';
import { boxRoundText } from '../grid/content.ts';

/** Linework and boxes of texts, against which room is sought. */
export interface Occupied {
  readonly edges: readonly { readonly edge: Edge; readonly bounds: Box }[];
  readonly texts: readonly Box[];
}

/** Lettering in the way is worse than a line. */
const TEXT_WEIGHT = 3;

/** What a pattern has drawn, moved. */
export function occupiedBy(pattern: Pattern, by: Similarity): Occupied {
  const { edges, texts } = pattern.scene.marks.reduce<{ edges: Edge[]; texts: Box[] }>(
    (all, mark) => {
      if (mark.kind === 'path') all.edges.push(...mark.edges.map((edge) => transformEdge(edge, by)));
      else all.texts.push(boundsOfEdges(boxRoundText(transformMark(mark, by) as TextMark)));
      return all;
    },
    { edges: [], texts: [] },
  );
  return { edges: edges.map((edge) => ({ edge, bounds: boundsOfEdge(edge) })), texts };
}

/** Only what comes into a box: for many questions about the same neighbourhood. */
export function occupiedNear(occupied: Occupied, box: Box): Occupied {
  return {
    edges: occupied.edges.filter(({ bounds }) => touches(bounds, box)),
    texts: occupied.texts.filter((text) => touches(text, box)),
  };
}

/** How many lines pass through a box, and lettering for more; 0 when it is free. */
export function linesThrough(occupied: Occupied, box: Box): number {
  let count = TEXT_WEIGHT * occupied.texts.filter((text) => touches(text, box)).length;
  for (const { edge, bounds } of occupied.edges) {
    if (touches(bounds, box) && clipEdges([edge], box).length > 0) count++;
  }
  return count;
}

export function touches(a: Box, b: Box): boolean {
  return a.minX <= b.maxX && a.maxX >= b.minX && a.minY <= b.maxY && a.maxY >= b.minY;
}
