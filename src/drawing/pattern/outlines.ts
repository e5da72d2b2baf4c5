import {
  add,
  directionAt,
  type Edge,
  leftOf,
  lengthOf,
  type Outline,
  pointAt,
  type Region,
  scale,
} from '../../geometry/index.ts';
import type { LineRole, Mark, PathMark } from '../api.ts';
import { pathMark } from '../layout/drawing.ts';
import { stroke } from '../layout/strokes.ts';
import { type PatternSource, showsDifferences, showsPart, showsTemplate } from './source.ts';

/** The closed outlines of a view, each loop a mark of its own. */
export function outlineMarks(source: PatternSource): readonly Mark[] {
  const { part, routing, options } = source;
  return [
    ...(showsPart(source) ? loops('saw-line', routing.blank) : []),
    ...(options.view === 'as-routed' ? loops('as-routed', routing.asRouted) : []),
    ...(showsDifferences(source)
      ? loops('as-routed', options.view === 'all' ? routing.differences.map(({ region }) => region) : [])
      : []),
    ...(showsPart(source) ? loops('part', [part.region]) : []),
    ...(showsTemplate(source) ? loops('template', routing.template) : []),
  ];
}

function loops(role: LineRole, regions: readonly Region[]): readonly PathMark[] {
  return regions.flatMap(({ outer, holes }) =>
    [outer, ...holes].map(({ edges }) => pathMark(role, edges, true)),
  );
}

/** mm between the ticks that stand in the waste, and their length. */
const TICK_PITCH = 6;
const TICK = 1.3;
const MOST_TICKS = 10_000;

/**
 * Short ticks square to the line on the side that is cut away, all round every loop: the other side is kept. Material
 * lies on the left of every loop, outer and hole alike, so that the waste is on the right.
 */
export function keepSideTicks(regions: readonly Region[], reach: number): readonly Mark[] {
  const size = Math.min(TICK, reach);
  return regions.flatMap(({ outer, holes }) =>
    [outer, ...holes].map((loop) => pathMark('keep-side', ticksAlong(loop, size))),
  );
}

function ticksAlong(loop: Outline, size: number): readonly Edge[] {
  const total = loop.edges.reduce((sum, edge) => sum + lengthOf(edge), 0);
  const count = Math.min(MOST_TICKS, Math.max(3, Math.round(total / TICK_PITCH)));
  const ticks: Edge[] = [];
  let passed = 0;
  let next = 0.5;
  for (const edge of loop.edges) {
    const length = lengthOf(edge);
    while (next < count && (next * total) / count < passed + length) {
      const t = ((next * total) / count - passed) / length;
      const foot = pointAt(edge, t);
      ticks.push(stroke(foot, add(foot, scale(leftOf(directionAt(edge, t)), -size))));
      next++;
    }
    passed += length;
  }
  return ticks;
}
