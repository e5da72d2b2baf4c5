import type { Edge, Outline, Region } from '../api.ts';
import { lengthOf } from '../edge.ts';
import { areaOfOutline } from '../measure/area.ts';
import { perimeterOfOutline } from '../measure/perimeter.ts';
import { CARRIER_TOLERANCE, POSITION_TOLERANCE } from '../tolerance.ts';
import { distance, dot, subtract } from '../vec.ts';
import { addToRun, goesStraightTo, newStraightRun, type StraightRun } from './straight-run.ts';

/**
 * The same regions with fewer edges: neighbours of one tag that lie on one line or one circle become one edge, edges shorter
 * than POSITION_TOLERANCE are dropped (their neighbours meet), and loops that are nothing but slivers go.
 */
export function simplifyRegions(regions: readonly Region[]): Region[] {
  const result: Region[] = [];
  for (const { outer, holes } of regions) {
    const simple = simplifyOutline(outer);
    if (simple === undefined) continue;
    result.push({ outer: simple, holes: holes.map(simplifyOutline).filter((hole) => hole !== undefined) });
  }
  return result;
}

function simplifyOutline(outline: Outline): Outline | undefined {
  const kept = dropShort(outline.edges);
  if (kept.length === 0) return undefined;
  const simple = { edges: joinRuns(kept) };
  const area = Math.abs(areaOfOutline(simple));
  return area <= POSITION_TOLERANCE * perimeterOfOutline(simple) ? undefined : simple;
}

function dropShort(edges: readonly Edge[]): Edge[] {
  const long = edges.filter((edge) => lengthOf(edge) > POSITION_TOLERANCE);
  if (long.length === edges.length) return long;
  return long.map((edge, i) => ({ ...edge, to: long[(i + 1) % long.length]!.from }));
}

function joinRuns(edges: readonly Edge[]): Edge[] {
  const count = edges.length;
  // Begin where the run of the first edge begins, which may be before it.
  let begin = 0;
  while (begin > -count && goOn(newRun(edgeAt(edges, begin - 1)), edgeAt(edges, begin))) begin--;
  const joined: Edge[] = [];
  for (let k = 0; k < count; ) {
    const run = newRun(edgeAt(edges, begin + k));
    for (k++; k < count && goOn(run, edgeAt(edges, begin + k)); k++) extend(run, edgeAt(edges, begin + k));
    joined.push(run.last === run.first ? run.first : { ...run.first, to: run.last.to });
  }
  return joined;
}

function edgeAt(edges: readonly Edge[], i: number): Edge {
  return edges[((i % edges.length) + edges.length) % edges.length]!;
}

/** Edges of one tag, one after another on one line or circle. */
interface Run {
  readonly first: Edge;
  last: Edge;
  /** Of lines. */
  readonly straight: StraightRun | undefined;
}

function newRun(first: Edge): Run {
  return { first, last: first, straight: first.kind === 'line' ? newStraightRun(first) : undefined };
}

function extend(run: Run, edge: Edge): void {
  run.last = edge;
  if (run.straight !== undefined) addToRun(run.straight, edge);
}

/** Does an edge go on along the line or circle of a run? */
function goOn({ first, straight }: Run, next: Edge): boolean {
  if (first.tag.id !== next.tag.id || first.tag.role !== next.tag.role) return false;
  if (first.kind === 'arc') {
    if (next.kind !== 'arc' || next.turn !== first.turn) return false;
    const apart = distance(first.centre, next.centre) + Math.abs(first.radius - next.radius);
    return apart <= CARRIER_TOLERANCE;
  }
  if (straight === undefined || next.kind !== 'line') return false;
  return dot(straight.along, subtract(next.to, next.from)) > 0 && goesStraightTo(straight, next.to);
}
