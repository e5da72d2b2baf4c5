import type { Edge, Outline } from '../../geometry/index.ts';

/** A maximal run of edges that are not routed, between two that are. */
export interface UnroutedRun {
  readonly before: Edge;
  readonly edges: readonly Edge[];
  readonly after: Edge;
}

/** Routed edges one after another, and what lies between the last of them and the next stretch. */
export interface RoutedStretch {
  readonly edges: readonly Edge[];
  /** Absent when every edge of the loop is routed. */
  readonly gap?: UnroutedRun;
}

/**
 * The loop as stretches of routed edges with the runs between them, in its own order, wherever it starts. None when no
 * edge is routed.
 */
export function findRuns({ edges }: Outline): RoutedStretch[] {
  if (edges.every(isRouted)) return [{ edges }];
  const count = edges.length;
  const first = edges.findIndex((edge, at) => isRouted(edge) && !isRouted(edges[(at + count - 1) % count]!));
  if (first < 0) return [];
  const turned = [...edges.slice(first), ...edges.slice(0, first)];
  const stretches: RoutedStretch[] = [];
  let at = 0;
  while (at < count) {
    const start = at;
    while (at < count && isRouted(turned[at]!)) at++;
    const from = at;
    while (at < count && !isRouted(turned[at]!)) at++;
    const gap = {
      before: turned[from - 1]!,
      edges: turned.slice(from, at),
      after: turned[at % count]!,
    };
    stretches.push({ edges: turned.slice(start, from), gap });
  }
  return stretches;
}

export function isRouted(edge: Edge): boolean {
  return edge.tag.role === 'routed';
}
