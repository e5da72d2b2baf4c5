import type { Edge, Outline, Vec } from '../api.ts';
import { filled, unfilled } from '../memory/lists.ts';
import type { Arrangement } from './arrangement.ts';
import { centreOf, tagOf } from './edge-numbers.ts';
import { leftmostOf } from './leftmost.ts';
import { SHAPE } from './pieces.ts';

/** Loops with the interior to their left, and whether every kept chain found its place in one. */
export interface Stitched {
  readonly loops: Outline[];
  readonly closed: boolean;
}

/**
 * Loops from kept chains (`keep`: 1 as travelled, −1 reversed, 0 dropped). At a vertex where several go out, the walk takes
 * the leftmost, so that a loop bounds one connected interior; a loop that comes back to a vertex is parted there. Slices
 * of one source edge that follow each other become one edge again.
 */
export function stitch(arrangement: Arrangement, keep: Int32Array): Stitched {
  const { pieces, chains } = arrangement;
  const head = filled(pieces.vertexCount, -1);
  const next = filled(chains.count, -1);
  // Whether several chains go out of any vertex: only then do walks need choosing and parting.
  let forks = false;
  for (let c = chains.count - 1; c >= 0; c--) {
    if (keep[c] === 0) continue;
    const v = startOf(arrangement, c, keep[c]!);
    if (head[v] !== -1) forks = true;
    next[c] = head[v]!;
    head[v] = c;
  }
  const used = filled(chains.count);
  const loops: Outline[] = [];
  let closed = true;
  for (let c = 0; c < chains.count; c++) {
    if (keep[c] === 0 || used[c] === 1) continue;
    const walk = [c];
    used[c] = 1;
    const begin = startOf(arrangement, c, keep[c]!);
    let at = startOf(arrangement, c, -keep[c]!);
    let last = c;
    let whole = true;
    while (at !== begin || hasUnused(head, next, used, at)) {
      const ways: number[] = [];
      for (let k = head[at]!; k !== -1; k = next[k]!) if (used[k] === 0) ways.push(k);
      if (ways.length === 0) {
        whole = false;
        break;
      }
      // Back at the beginning, the walk is done unless a way further to the left leads on.
      const onward = at === begin ? [...ways, c] : ways;
      const chosen = onward.length === 1 ? onward[0]! : leftmostOf(arrangement, last, keep, onward);
      if (chosen === c) break;
      used[chosen] = 1;
      walk.push(chosen);
      last = chosen;
      at = startOf(arrangement, chosen, -keep[chosen]!);
    }
    if (!whole) {
      closed = false;
      continue;
    }
    const parts = forks ? partAtVertices(arrangement, keep, walk) : [walk];
    for (const part of parts) loops.push(outlineOf(arrangement, keep, part));
  }
  return { loops, closed };
}

function hasUnused(head: Int32Array, next: Int32Array, used: Int32Array, v: number): boolean {
  for (let k = head[v]!; k !== -1; k = next[k]!) if (used[k] === 0) return true;
  return false;
}

/** First vertex of a chain travelled in the given sense. */
function startOf({ slices, chains }: Arrangement, c: number, sense: number): number {
  const step = sense > 0 ? chains.steps[chains.offsets[c]!]! : chains.steps[chains.offsets[c + 1]! - 1]!;
  const forward = step >= 0 === sense > 0;
  const s = step >= 0 ? step : -1 - step;
  return forward ? slices.start[s]! : slices.end[s]!;
}

/** A walk over chains as walks that pass no vertex twice. */
function partAtVertices(arrangement: Arrangement, keep: Int32Array, walk: readonly number[]): number[][] {
  if (walk.length === 1) return [[...walk]];
  const parts: number[][] = [];
  const stack: number[] = [];
  const seen = new Map<number, number>();
  for (const c of walk) {
    const v = startOf(arrangement, c, keep[c]!);
    const before = seen.get(v);
    if (before !== undefined) {
      const part = stack.splice(before);
      for (const k of part) seen.delete(startOf(arrangement, k, keep[k]!));
      parts.push(part);
    }
    seen.set(v, stack.length);
    stack.push(c);
  }
  parts.push(stack);
  return parts;
}

/** Edges of a walk, those of one source edge joined. */
function outlineOf(arrangement: Arrangement, keep: Int32Array, walk: readonly number[]): Outline {
  const { chains } = arrangement;
  let count = 0;
  for (const c of walk) count += chains.offsets[c + 1]! - chains.offsets[c]!;
  const steps = unfilled(count);
  count = 0;
  for (const c of walk) {
    const from = chains.offsets[c]!;
    const to = chains.offsets[c + 1]!;
    if (keep[c]! > 0) for (let k = from; k < to; k++) steps[count++] = chains.steps[k]!;
    else for (let k = to - 1; k >= from; k--) steps[count++] = -1 - chains.steps[k]!;
  }
  return { edges: edgesOf(arrangement, steps) };
}

function edgesOf(arrangement: Arrangement, steps: Int32Array): Edge[] {
  const { pieces, slices } = arrangement;
  const count = steps.length;
  // Begin where the source edge changes, at the first of the source edges; a loop of one source edge begins at its lowest vertex.
  let begin = 0;
  let lowest = Infinity;
  let changes = false;
  for (let k = 0; k < count; k++) {
    const change = !follows(arrangement, steps[(k + count - 1) % count]!, steps[k]!);
    if (changes && !change) continue;
    const step = steps[k]!;
    const rank = change
      ? pieces.source[slices.piece[step >= 0 ? step : -1 - step]!]!
      : startVertex(slices, step);
    if (rank < lowest || change !== changes) {
      lowest = rank;
      begin = k;
      changes = change;
    }
  }
  const edges: Edge[] = [];
  const first = startVertex(slices, steps[begin]!);
  const start = placeOf(pieces, first);
  let from = start;
  for (let k = 0; k < count; ) {
    const step = steps[(begin + k) % count]!;
    let last = step;
    for (k++; k < count; k++) {
      const after = steps[(begin + k) % count]!;
      if (!follows(arrangement, last, after)) break;
      last = after;
    }
    const piece = slices.piece[step >= 0 ? step : -1 - step]!;
    const end = startVertex(slices, -1 - last);
    const to = end === first ? start : placeOf(pieces, end);
    const number = pieces.source[piece]!;
    const tag = tagOf(pieces, number);
    const turn = pieces.turn[piece]!;
    if (turn === 0) {
      edges.push({ kind: 'line', from, to, tag });
      from = to;
      continue;
    }
    const centre = centreOf(pieces, piece, number);
    const way = step >= 0 === turn > 0 ? 1 : -1;
    edges.push({ kind: 'arc', from, to, centre, radius: pieces.shape[SHAPE * piece + 6]!, turn: way, tag });
    from = to;
  }
  return edges;
}

function placeOf({ vertices }: Arrangement['pieces'], v: number): Vec {
  return { x: vertices[2 * v]!, y: vertices[2 * v + 1]! };
}

function startVertex(slices: Arrangement['slices'], step: number): number {
  return step >= 0 ? slices.start[step]! : slices.end[-1 - step]!;
}

/** Do two steps go on along one source edge? */
function follows({ pieces, slices }: Arrangement, a: number, b: number): boolean {
  const p = slices.piece[a >= 0 ? a : -1 - a]!;
  const q = slices.piece[b >= 0 ? b : -1 - b]!;
  return a >= 0 === b >= 0 && pieces.source[p] === pieces.source[q];
}
