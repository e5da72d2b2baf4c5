/** Vertices found to be one place. The lowest number of each set stands for it, so that given ends outlive computed crossings. */
export interface VertexUnion {
  /** Of each vertex up to the highest joined so far: the next one on the way to the one that stands for it. */
  readonly parent: number[];
  /** Whether any two were joined. */
  joined: boolean;
}

export function newVertexUnion(): VertexUnion {
  return { parent: [], joined: false };
}

export function findVertex(union: VertexUnion, vertex: number): number {
  const { parent } = union;
  if (vertex >= parent.length) return vertex;
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
  for (let v = union.parent.length; v <= a || v <= b; v++) union.parent.push(v);
  const p = findVertex(union, a);
  const q = findVertex(union, b);
  if (p === q) return;
  union.joined = true;
  if (p < q) union.parent[q] = p;
  else union.parent[p] = q;
}
