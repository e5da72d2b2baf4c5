import { type Similarity, transformEdge } from '../../geometry/index.ts';
import type { PathMark } from '../api.ts';
import type { View } from './api.ts';

/** A view on paper: visible edges continuous and wide, hidden ones dashed and narrow (ISO 128-2), hidden ones first. */
export function marksOfView(view: View, toPaper: Similarity): readonly PathMark[] {
  return view.lines
    .toSorted((a, b) => Number(a.visible) - Number(b.visible))
    .map(({ part, edges, visible }) => ({
      kind: 'path',
      role: visible ? 'visible' : 'hidden',
      edges: edges.map((edge) => transformEdge(edge, toPaper)),
      closed: false,
      part,
    }));
}
