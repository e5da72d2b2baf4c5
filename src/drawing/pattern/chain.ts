import {
  add,
  directionAt,
  type Edge,
  leftOf,
  lengthOf,
  pointAt,
  scale,
  type Vec,
} from '../../geometry/index.ts';

/** Edges that follow each other, and their length, mm. */
export interface Chain {
  readonly edges: readonly Edge[];
  readonly length: number;
}

export function chainOf(edges: readonly Edge[]): Chain {
  return { edges, length: edges.reduce((sum, edge) => sum + lengthOf(edge), 0) };
}

/** Place and direction at a distance along a chain; beyond its ends, the ends. */
export function onChain(chain: Chain, distance: number): { readonly at: Vec; readonly direction: Vec } {
  let left = Math.max(0, distance);
  for (const [i, edge] of chain.edges.entries()) {
    const length = lengthOf(edge);
    if (left <= length || i === chain.edges.length - 1) {
      const t = length === 0 ? 0 : Math.min(1, left / length);
      return { at: pointAt(edge, t), direction: directionAt(edge, t) };
    }
    left -= length;
  }
  throw new RangeError('a chain has at least one edge');
}

/**
 * The stretch of a chain between two distances, moved sideways: `left` mm to the left of travel (negative: right).
 * Undefined where an arc would shrink to nothing.
 */
export function besideChain(
  chain: Chain,
  start: number,
  end: number,
  left: number,
): readonly Edge[] | undefined {
  const beside: Edge[] = [];
  let passed = 0;
  for (const edge of chain.edges) {
    const length = lengthOf(edge);
    const from = Math.max(0, start - passed);
    const to = Math.min(length, end - passed);
    passed += length;
    if (to - from <= 1e-6) continue;
    const moved = moveAside(edge, from / length, to / length, left);
    if (moved === undefined) return undefined;
    beside.push(moved);
  }
  return beside;
}

function moveAside(edge: Edge, t0: number, t1: number, left: number): Edge | undefined {
  const shifted = (t: number): Vec => add(pointAt(edge, t), scale(leftOf(directionAt(edge, t)), left));
  const from = shifted(t0);
  const to = shifted(t1);
  if (edge.kind === 'line') return { ...edge, from, to };
  const radius = edge.radius - edge.turn * left;
  return radius < 0.5 ? undefined : { ...edge, from, to, radius };
}
