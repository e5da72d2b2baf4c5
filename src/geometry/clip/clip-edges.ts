import type { Arc, Box, Edge, Vec } from '../api.ts';
import { boundsOfEdge } from '../bounds.ts';
import { lengthOf, pointAt, sweepOf } from '../edge.ts';
import { POSITION_TOLERANCE } from '../tolerance.ts';
import { distance } from '../vec.ts';
import { joinPieces, SAMPLES } from './chains.ts';

interface Cut {
  /** Share of the edge's length. */
  readonly t: number;
  readonly at: Vec;
}

/**
 * The parts of edges that lie in an upright box, its border included, as chains each of whose edges begins where
 * the one before ends. Lines and arcs are cut exactly and keep their tags. A chain breaks where the edges leave
 * the box or do not meet; when the edges close a loop whose start lies in the box, the chain runs on through it.
 * A mere touch of the border from outside gives nothing.
 */
export function clipEdges(edges: readonly Edge[], box: Box): Edge[][] {
  return joinPieces(
    edges.flatMap((edge) => clipEdge(edge, box)),
    edges,
  );
}

/** The pieces of one edge inside the box, in order of travel. */
function clipEdge(edge: Edge, box: Box): Edge[] {
  const reach = boundsOfEdge(edge);
  if (isOutside(reach, box)) return [];
  if (reach.minX >= box.minX && reach.maxX <= box.maxX && reach.minY >= box.minY && reach.maxY <= box.maxY) {
    return [edge];
  }
  const cuts = cutsOf(edge, box);
  const stops: Cut[] = [{ t: 0, at: edge.from }, ...cuts, { t: 1, at: edge.to }];
  const pieces: Edge[] = [];
  let start: Cut | undefined;
  for (let i = 0; i + 1 < stops.length; i++) {
    const here = stops[i]!;
    const ahead = stops[i + 1]!.t - here.t;
    const isIn = SAMPLES.every((share) => holds(box, pointAt(edge, here.t + share * ahead)));
    if (isIn) start ??= here;
    else if (start !== undefined) {
      pieces.push({ ...edge, from: start.at, to: here.at });
      start = undefined;
    }
  }
  if (start !== undefined) pieces.push(start.t === 0 ? edge : { ...edge, from: start.at, to: edge.to });
  return pieces;
}

/** Where the edge meets the lines of the box's border, between its ends, in order of travel. */
function cutsOf(edge: Edge, box: Box): Cut[] {
  const cuts: Cut[] = [];
  const addCut = (t: number, at: Vec): void => {
    if (!(t > 0 && t < 1)) return;
    if (distance(at, edge.from) <= POSITION_TOLERANCE || distance(at, edge.to) <= POSITION_TOLERANCE) return;
    cuts.push({ t, at });
  };
  for (const x of [box.minX, box.maxX]) {
    if (edge.kind === 'line') {
      const t = (x - edge.from.x) / (edge.to.x - edge.from.x);
      addCut(t, { x, y: edge.from.y + t * (edge.to.y - edge.from.y) });
    } else {
      for (const y of across(edge.radius, x - edge.centre.x)) {
        const at = { x, y: edge.centre.y + y };
        addCut(shareOf(edge, at), at);
      }
    }
  }
  for (const y of [box.minY, box.maxY]) {
    if (edge.kind === 'line') {
      const t = (y - edge.from.y) / (edge.to.y - edge.from.y);
      addCut(t, { x: edge.from.x + t * (edge.to.x - edge.from.x), y });
    } else {
      for (const x of across(edge.radius, y - edge.centre.y)) {
        const at = { x: edge.centre.x + x, y };
        addCut(shareOf(edge, at), at);
      }
    }
  }
  cuts.sort((a, b) => a.t - b.t);
  // Through a corner of the box both borders cut at one place.
  const least = POSITION_TOLERANCE / lengthOf(edge);
  return cuts.filter((cut, i) => i === 0 || cut.t - cuts[i - 1]!.t > least);
}

/** The two half chords of a circle at a distance from its centre; none when it only touches. */
function across(radius: number, off: number): readonly number[] {
  const squared = (radius - off) * (radius + off);
  if (!(squared > 0)) return [];
  const half = Math.sqrt(squared);
  return [-half, half];
}

/** Share of the arc's length at which it passes a point of its circle; above 1 when it does not. */
function shareOf(edge: Arc, p: Vec): number {
  const { from, centre, turn } = edge;
  const ax = from.x - centre.x;
  const ay = from.y - centre.y;
  const bx = p.x - centre.x;
  const by = p.y - centre.y;
  const turned = turn * Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  return (turned < 0 ? turned + 2 * Math.PI : turned) / sweepOf(edge);
}

function isOutside(a: Box, b: Box): boolean {
  const reach = POSITION_TOLERANCE;
  return (
    a.maxX < b.minX - reach || a.minX > b.maxX + reach || a.maxY < b.minY - reach || a.minY > b.maxY + reach
  );
}

function holds(box: Box, p: Vec): boolean {
  const reach = POSITION_TOLERANCE;
  return (
    p.x >= box.minX - reach && p.x <= box.maxX + reach && p.y >= box.minY - reach && p.y <= box.maxY + reach
  );
}
