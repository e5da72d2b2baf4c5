import {
  type Edge,
  type Outline,
  pointAt,
  type Region,
  type Stroke,
  type StrokeLoop,
  sweepOf,
} from '../../geometry/index.ts';
import type { OwnShape } from './api.ts';

/** An arc that runs farther round than this (rad) is drawn as two: its middle would tell too little of it. */
const LONGEST = (3 / 2) * Math.PI;

/** The strokes of a region as read from a file, its openings with it, each edge with its own role. */
export function loopsOfRegion({ outer, holes }: Region): OwnShape['loops'] {
  return [outer, ...holes].map(loopOfOutline);
}

function loopOfOutline({ edges }: Outline): StrokeLoop {
  return { start: edges[0]!.from, strokes: edges.flatMap(strokesOfEdge) };
}

function strokesOfEdge(edge: Edge): readonly Stroke[] {
  const { role } = edge.tag;
  if (edge.kind === 'line') return [{ kind: 'line', to: edge.to, role }];
  if (sweepOf(edge) <= LONGEST) return [{ kind: 'arc', through: pointAt(edge, 0.5), to: edge.to, role }];
  return [
    { kind: 'arc', through: pointAt(edge, 0.25), to: pointAt(edge, 0.5), role },
    { kind: 'arc', through: pointAt(edge, 0.75), to: edge.to, role },
  ];
}
