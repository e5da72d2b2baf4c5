import {
  areaOfRegions,
  type Edge,
  nearestOnEdges,
  POSITION_TOLERANCE,
  pointAt,
  RESIDUE_TOLERANCE,
  type Region,
  subtractRegions,
  type Vec,
} from '../geometry/index.ts';
import type { Difference } from './api.ts';
import { deepestPoint } from './outline/deepest-point.ts';

/**
 * Where what the cutter leaves differs from the part drawn: wood left outside the line and wood lost inside it, each
 * connected piece on its own. Pieces that reach less than RESIDUE_TOLERANCE are none. The reach is the farthest that the
 * two lines, drawn and routed, stand from each other there; for a corner that is from the corner drawn to the cutter's arc.
 */
export function findDifferences(drawn: readonly Region[], asRouted: readonly Region[]): Difference[] {
  const line = edgesOf(drawn);
  const left = subtractRegions(asRouted, drawn).map((region) => describe('left', region, line));
  const lost = subtractRegions(drawn, asRouted).map((region) => describe('lost', region, line));
  return [...left, ...lost].filter(({ reach }) => reach >= RESIDUE_TOLERANCE);
}

function describe(kind: Difference['kind'], region: Region, line: readonly Edge[]): Difference {
  const edges = edgesOf([region]);
  const onLine = edges.filter((edge) => nearestOnEdges(line, pointAt(edge, 0.5)).distance <= ON_LINE);
  const routed = edges.filter((edge) => !onLine.includes(edge));
  // Nothing was cut at all: what stands there reaches as deep as it is wide.
  const { at, reach } =
    routed.length === 0 || onLine.length === 0 ? deepestPoint(region) : farthestApart(onLine, routed);
  const names = (onLine.length === 0 ? edges : onLine).map((edge) => edge.tag.id);
  return { kind, region, at, reach, area: areaOfRegions([region]), edges: [...new Set(names)] };
}

/** mm: rounding through two offsets and a boolean, far below a residue. */
const ON_LINE = 10 * POSITION_TOLERANCE;

/** The place of one line that lies farthest from the other, whichever way it is found. */
function farthestApart(drawn: readonly Edge[], routed: readonly Edge[]): { at: Vec; reach: number } {
  const fromDrawn = farthestFrom(routed, drawn);
  const fromRouted = farthestFrom(drawn, routed);
  return fromRouted.reach > fromDrawn.reach + POSITION_TOLERANCE ? fromRouted : fromDrawn;
}

/** Shares of each edge looked at first; corners, where the farthest place mostly is, are among them. */
const LOOKS = 12;

function farthestFrom(others: readonly Edge[], edges: readonly Edge[]): { at: Vec; reach: number } {
  let best = { at: edges[0]!.from, reach: -1, edge: edges[0]!, t: 0 };
  for (const edge of edges) {
    for (let look = 0; look <= LOOKS; look++) {
      const t = look / LOOKS;
      const at = pointAt(edge, t);
      const reach = nearestOnEdges(others, at).distance;
      if (reach > best.reach) best = { at, reach, edge, t };
    }
  }
  return refine(others, best);
}

/** Halves the steps beside the best place until they no longer matter. */
function refine(
  others: readonly Edge[],
  start: { at: Vec; reach: number; edge: Edge; t: number },
): { at: Vec; reach: number } {
  let best = start;
  for (let step = 1 / LOOKS; step > 1e-7; step /= 2) {
    for (const t of [best.t - step, best.t + step]) {
      if (t < 0 || t > 1) continue;
      const at = pointAt(best.edge, t);
      const reach = nearestOnEdges(others, at).distance;
      if (reach > best.reach) best = { ...best, at, reach, t };
    }
  }
  return { at: best.at, reach: best.reach };
}

function edgesOf(regions: readonly Region[]): Edge[] {
  return regions.flatMap(({ outer, holes }) => [outer, ...holes].flatMap((loop) => loop.edges));
}
