import type { Pieces } from './pieces.ts';

/** Vertices found to be one place. The lowest number of each set stands for it, so that given ends outlive computed crossings. */
export interface VertexUnion {
  parent: Int32Array;
  /** Vertices below this number have a parent entry. */
  known: number;
  /** Whether any two were joined. */
  joined: boolean;
}

export function newVertexUnion(pieces: Pieces): VertexUnion {
  return { parent: new Int32Array(pieces.vertexCount + 64), known: 0, joined: false };
}

export function findVertex(union: VertexUnion, vertex: number): number {
  if (vertex >= union.known) return vertex;
  const { parent } = union;
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

export function joinVertices(union: VertexUnion, a: number, b: number): void {
  const highest = Math.max(a, b);
  if (highest >= union.known) know(union, highest + 1);
  const p = findVertex(union, a);
  const q = findVertex(union, b);
  if (p === q) return;
  union.joined = true;
  if (p < q) union.parent[q] = p;
  else union.parent[p] = q;
}

function know(union: VertexUnion, count: number): void {
  if (count > union.parent.length) {
    const old = union.parent;
    union.parent = new Int32Array(Math.max(count, 2 * old.length));
    union.parent.set(old);
  }
  for (let i = union.known; i < count; i++) union.parent[i] = i;
  union.known = count;
}
