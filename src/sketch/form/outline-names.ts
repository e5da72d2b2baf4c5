import type { EdgeSpec, OutlineSpec } from '../schema/construction.ts';
import type { Expression } from '../schema/expression.ts';
import type { Scalar } from '../source/place.ts';

/** The name of an edge, as the form gives it. */
export function edgeName(edge: EdgeSpec): Scalar {
  if ('line' in edge) return edge.line;
  return 'arc' in edge ? edge.arc : edge.batten;
}

/** The name of the corner at the end of an edge; nothing when it has none. */
export function cornerName(edge: EdgeSpec): string | undefined {
  return edge.corner?.text ?? plainName(edge.to);
}

/** The name of the corner at which an outline starts; nothing when it has none. */
export function startName(outline: OutlineSpec): string | undefined {
  return outline.corner?.text ?? plainName(outline.start);
}

/** Names of all corners of an outline as drawn, present or not. */
export function cornerNames(outline: OutlineSpec): readonly string[] {
  const names = [startName(outline), ...outline.edges.map(cornerName)];
  return [...new Set(names.filter((name) => name !== undefined))];
}

function plainName(point: Expression<'point'>): string | undefined {
  return point.node.type === 'name' ? point.node.name : undefined;
}
