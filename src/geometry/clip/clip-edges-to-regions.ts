import type { Edge, Region, Vec } from '../api.ts';
import { lengthOf, pointAt } from '../edge.ts';
import { intersectEdges } from '../intersect/intersect-edges.ts';
import type { Meeting } from '../intersect/outcome.ts';
import { locate } from '../measure/locate.ts';
import { POSITION_TOLERANCE } from '../tolerance.ts';
import { joinPieces, SAMPLES } from './chains.ts';

interface Cut {
  readonly t: number;
  readonly at: Vec;
}

/**
 * The parts of edges that lie in regions, their boundaries included, as chains each of whose edges begins where the one before
 * ends; see clipEdges for how chains break and join.
 */
export function clipEdgesToRegions(edges: readonly Edge[], regions: readonly Region[]): Edge[][] {
  const borders = regions.flatMap(({ outer, holes }) => [outer, ...holes].flatMap((loop) => loop.edges));
  const pieces = edges.map((edge) => {
    const meetings = borders.flatMap((border) => meetingsOf(edge, border));
    return piecesWithin(edge, meetings, regions);
  });
  return joinPieces(pieces.flat(), edges);
}

function meetingsOf(edge: Edge, border: Edge): readonly Meeting[] {
  const met = intersectEdges(edge, border);
  switch (met.kind) {
    case 'none':
      return [];
    case 'tangent':
      return [met.at];
    case 'points':
      return met.points;
    case 'overlap':
      return [...met.points, ...met.stretches.flatMap(({ from, to }) => [from, to])];
    default:
      return met satisfies never;
  }
}

function piecesWithin(edge: Edge, meetings: readonly Meeting[], regions: readonly Region[]): Edge[] {
  const least = POSITION_TOLERANCE / lengthOf(edge);
  const stops: Cut[] = [{ t: 0, at: edge.from }];
  for (const { onA, point } of [...meetings].sort((a, b) => a.onA - b.onA)) {
    if (onA - stops.at(-1)!.t > least && onA < 1 - least) stops.push({ t: onA, at: point });
  }
  stops.push({ t: 1, at: edge.to });
  const pieces: Edge[] = [];
  let start: Cut | undefined;
  for (let i = 0; i + 1 < stops.length; i++) {
    const here = stops[i]!;
    const next = stops[i + 1]!;
    const isIn = SAMPLES.every(
      (share) => locate(regions, pointAt(edge, here.t + share * (next.t - here.t))) !== 'outside',
    );
    if (isIn) start ??= here;
    if (start !== undefined && (!isIn || i + 2 === stops.length)) {
      const end = isIn ? next : here;
      pieces.push(start.t === 0 && end.t === 1 ? edge : { ...edge, from: start.at, to: end.at });
      start = undefined;
    }
  }
  return pieces;
}
