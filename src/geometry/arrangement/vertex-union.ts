import { unfilled } from '../memory/lists.ts';

/** Vertices found to be one place. The lowest number of each set stands for it, so that given ends outlive computed crossings. */
export interface VertexUnion {
  /** Of each vertex up to the highest joined so far: the next one on the way to the one that stands for it. */
  parent: Int32Array;
  count: number;
  /** Whether any two were joined. */
  joined: boolean;
  /** Square of how far apart those lay that were joined, at most, mm². */
  widest: number;
}

const NONE = new Int32Array(0);

export function newVertexUnion(): VertexUnion {
  return { parent: NONE, count: 0, joined: false, widest: 0 };
}

export function findVertex(union: VertexUnion, vertex: number): number {
  const { parent, count } = union;
  if (vertex >= count) return vertex;
  let root = vertex;
  while (parent[root] !== root) root = parent[root]!;
  let v = vertex;
  while (parent[v] !== root) {
    const next = parent[v]!;
    parent[v] = root;
    v = next;
  }
  return root;
}

/** Makes one of two vertices; `square` is that of their distance, mm². */
export function joinVertices(union: VertexUnion, a: number, b: number, square: number): void {
  if (a >= union.count || b >= union.count) include(union, Math.max(a, b));
  const p = findVertex(union, a);
  const q = findVertex(union, b);
  if (p === q) return;
  union.joined = true;
  if (square > union.widest) union.widest = square;
  if (p < q) union.parent[q] = p;
  else union.parent[p] = q;
}

/** Every vertex up to `last` stands for itself at first. */
function include(union: VertexUnion, last: number): void {
  if (last >= union.parent.length) {
    const larger = unfilled(2 * last + 64);
    larger.set(union.parent.subarray(0, union.count));
    union.parent = larger;
  }
  for (let v = union.count; v <= last; v++) union.parent[v] = v;
  union.count = last + 1;
}
