import type { Edge, Outline, Vec } from '../../api.ts';
import { reverseEdge } from '../../edge.ts';
import type { Workspace } from './workspace.ts';

const WALKED = 2;

/**
 * Loops of the kept stretches, the interior to their left. Edges that nothing crosses come back as they were given. Undefined
 * when at some crossing not just one stretch comes in and one goes out.
 */
export function walkStretches(w: Workspace, known: readonly Outline[]): Outline[] | undefined {
  const { entryStart, keep, keepLoop, loopCount } = w;
  const loops: Outline[] = [];
  const points: (Vec | undefined)[] = [];
  for (let loop = 0; loop < loopCount; loop++) {
    const from = entryStart[loop]!;
    const to = entryStart[loop + 1]!;
    if (from === to) {
      if (keepLoop[loop] === 1) loops.push(known[loop]!);
      else if (keepLoop[loop] === -1) loops.push(reverseLoop(known[loop]!));
      continue;
    }
    // The stretch through the loop's start first: loops of the result begin as near to it as they can.
    for (let k = 0; k < to - from; k++) {
      const at = k === 0 ? to - 1 : from + k - 1;
      if (keep[at] !== 1 && keep[at] !== -1) continue;
      const edges = walk(w, known, points, at);
      if (edges === undefined) return undefined;
      loops.push({ edges });
    }
  }
  return loops;
}

function walk(
  w: Workspace,
  known: readonly Outline[],
  points: (Vec | undefined)[],
  first: number,
): Edge[] | undefined {
  const { keep } = w;
  const edges: Edge[] = [];
  let at = first;
  do {
    const sense = keep[at]!;
    keep[at] = WALKED * sense;
    const ahead = nextOf(w, at);
    if (sense > 0) addForward(w, known, points, at, ahead, edges);
    else addBackward(w, known, points, at, ahead, edges);
    at = onward(w, sense > 0 ? ahead : at);
    if (at < 0) return undefined;
  } while (at !== first);
  return fromLowest(w, edges);
}

/** Begun at the edge of the lowest number. */
function fromLowest({ numbers }: Workspace, edges: Edge[]): Edge[] {
  let begin = 0;
  for (let k = 1; k < edges.length; k++) if (numbers[k]! < numbers[begin]!) begin = k;
  return begin === 0 ? edges : [...edges.slice(begin), ...edges.slice(0, begin)];
}

/** The one stretch that goes out where a walk arrives at an entry; −1 when it is not the only one, or not the only one that comes in. */
function onward({ rank, order, keep, entryStart, loopOf, entryPiece }: Workspace, arrived: number): number {
  const own = order[arrived]!;
  let out = -1;
  let ins = 0;
  let outs = 0;
  for (let side = 0; side < 2; side++) {
    const k = own ^ side;
    const at = rank[k]!;
    const loop = loopOf[entryPiece[k]!]!;
    const before = at > entryStart[loop]! ? at - 1 : entryStart[loop + 1]! - 1;
    if (keep[at]! > 0) {
      out = at;
      outs++;
    } else if (keep[at]! < 0) ins++;
    if (keep[before]! < 0) {
      out = before;
      outs++;
    } else if (keep[before]! > 0) ins++;
  }
  return ins === 1 && outs === 1 ? out : -1;
}

/** The entry after one in order, round its loop. */
function nextOf({ entryStart, loopOf, entryPiece, order }: Workspace, at: number): number {
  const loop = loopOf[entryPiece[order[at]!]!]!;
  return at + 1 < entryStart[loop + 1]! ? at + 1 : entryStart[loop]!;
}

function addForward(
  w: Workspace,
  known: readonly Outline[],
  points: (Vec | undefined)[],
  at: number,
  ahead: number,
  edges: Edge[],
): void {
  const { order, entryPiece, edgeOf, numbers } = w;
  const loop = w.loopOf[entryPiece[order[at]!]!]!;
  const all = known[loop]!.edges;
  const base = w.edgeStart[loop]!;
  const count = all.length;
  const from = pointOf(w, points, order[at]!);
  const to = pointOf(w, points, order[ahead]!);
  const first = edgeOf[entryPiece[order[at]!]!]! - base;
  const last = edgeOf[entryPiece[order[ahead]!]!]! - base;
  // Inside one edge; the whole circle of a loop of one edge is joined over its seam.
  if (first === last && (ahead > at || count === 1)) {
    numbers[edges.length] = base + first;
    edges.push(part(all[first]!, from, to));
    return;
  }
  numbers[edges.length] = base + first;
  edges.push(part(all[first]!, from, all[first]!.to));
  for (let e = first + 1 < count ? first + 1 : 0; e !== last; e = e + 1 < count ? e + 1 : 0) {
    numbers[edges.length] = base + e;
    edges.push(all[e]!);
  }
  numbers[edges.length] = base + last;
  edges.push(part(all[last]!, all[last]!.from, to));
}

function addBackward(
  w: Workspace,
  known: readonly Outline[],
  points: (Vec | undefined)[],
  at: number,
  ahead: number,
  edges: Edge[],
): void {
  const { order, entryPiece, edgeOf, numbers } = w;
  const loop = w.loopOf[entryPiece[order[at]!]!]!;
  const all = known[loop]!.edges;
  const base = w.edgeStart[loop]!;
  const count = all.length;
  const from = pointOf(w, points, order[at]!);
  const to = pointOf(w, points, order[ahead]!);
  const first = edgeOf[entryPiece[order[at]!]!]! - base;
  const last = edgeOf[entryPiece[order[ahead]!]!]! - base;
  // Inside one edge; the whole circle of a loop of one edge is joined over its seam.
  if (first === last && (ahead > at || count === 1)) {
    numbers[edges.length] = base + first;
    edges.push(reversePart(all[first]!, from, to));
    return;
  }
  numbers[edges.length] = base + last;
  edges.push(reversePart(all[last]!, all[last]!.from, to));
  for (let e = last > 0 ? last - 1 : count - 1; e !== first; e = e > 0 ? e - 1 : count - 1) {
    numbers[edges.length] = base + e;
    edges.push(reverseEdge(all[e]!));
  }
  numbers[edges.length] = base + first;
  edges.push(reversePart(all[first]!, from, all[first]!.to));
}

/** One point for both entries of a crossing. */
function pointOf({ places }: Workspace, points: (Vec | undefined)[], entry: number): Vec {
  const k = entry >> 1;
  for (let m = points.length; m <= k; m++) points.push(undefined);
  points[k] ??= { x: places[2 * k]!, y: places[2 * k + 1]! };
  return points[k];
}

function part(edge: Edge, from: Vec, to: Vec): Edge {
  if (edge.kind === 'line') return { kind: 'line', from, to, tag: edge.tag };
  const { centre, radius, turn, tag } = edge;
  return { kind: 'arc', from, to, centre, radius, turn, tag };
}

function reversePart(edge: Edge, from: Vec, to: Vec): Edge {
  if (edge.kind === 'line') return { kind: 'line', from: to, to: from, tag: edge.tag };
  const { centre, radius, turn, tag } = edge;
  return { kind: 'arc', from: to, to: from, centre, radius, turn: turn === 1 ? -1 : 1, tag };
}

/** Travelled the other way, begun with the same edge. */
function reverseLoop({ edges }: Outline): Outline {
  const turned: Edge[] = [reverseEdge(edges[0]!)];
  for (let k = edges.length - 1; k > 0; k--) turned.push(reverseEdge(edges[k]!));
  return { edges: turned };
}
