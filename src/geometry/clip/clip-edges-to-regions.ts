import type { Edge, Region, Vec } from '../api.ts';
import { lengthOf, pointAt } from '../edge.ts';
import { intersectEdges } from '../intersect/intersect-edges.ts';
import type { Meeting } from '../intersect/outcome.ts';
import { POSITION_TOLERANCE } from '../tolerance.ts';
import { bordersOf } from './borders.ts';
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
  const borders = bordersOf(regions, edges.length);
  const stops = edges.map((edge) => stopsOf(edge, borders.near(edge)));
  const held = borders.hold(edges.flatMap((edge, k) => samplesOf(edge, stops[k]!)));
  let from = 0;
  const pieces = edges.flatMap((edge, k) => {
    const isIn: boolean[] = [];
    for (let i = 0; i + 1 < stops[k]!.length; i++, from += SAMPLES.length)
      isIn.push(SAMPLES.every((_, sample) => held[from + sample]!));
    return piecesWithin(edge, stops[k]!, isIn);
  });
  return joinPieces(pieces, edges);
}

/** Where an edge meets borders, its ends included. */
function stopsOf(edge: Edge, borders: Iterable<Edge>): Cut[] {
  const meetings = [...borders].flatMap((border) => meetingsOf(edge, border));
  const least = POSITION_TOLERANCE / lengthOf(edge);
  const stops: Cut[] = [{ t: 0, at: edge.from }];
  for (const { onA, point } of meetings.sort((a, b) => a.onA - b.onA)) {
    if (onA - stops.at(-1)!.t > least && onA < 1 - least) stops.push({ t: onA, at: point });
  }
  stops.push({ t: 1, at: edge.to });
  return stops;
}

/** The places between each two stops that are asked for their side. */
function samplesOf(edge: Edge, stops: readonly Cut[]): Vec[] {
  return stops
    .slice(1)
    .flatMap((next, i) =>
      SAMPLES.map((share) => pointAt(edge, stops[i]!.t + share * (next.t - stops[i]!.t))),
    );
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

/** The parts of an edge between stops that are in. */
function piecesWithin(edge: Edge, stops: readonly Cut[], isInside: readonly boolean[]): Edge[] {
  const pieces: Edge[] = [];
  let start: Cut | undefined;
  for (let i = 0; i + 1 < stops.length; i++) {
    const here = stops[i]!;
    const next = stops[i + 1]!;
    const isIn = isInside[i]!;
    if (isIn) start ??= here;
    if (start !== undefined && (!isIn || i + 2 === stops.length)) {
      const end = isIn ? next : here;
      pieces.push(start.t === 0 && end.t === 1 ? edge : { ...edge, from: start.at, to: end.at });
      start = undefined;
    }
  }
  return pieces;
}
