import { angleOf, type Edge, type Line, lengthOf, subtract } from '../../geometry/index.ts';
import type { Content } from './content.ts';

/** At most so many of a pattern's straight directions are tried, the longest first. */
const MOST = 6;
/** Directions closer than this, rad, count as one. */
const ALIKE = 1e-4;

/**
 * Turns, in [0, π), that lay one of the pattern's longest straight lines along or across the paper: those at which a
 * long part fits exactly. Longest line first; 0 and a quarter turn are left out.
 */
export function straightTurns(content: Content): number[] {
  const longest = longestFirst(content.edges.filter(isLine)).slice(0, 200);
  const turns: number[] = [];
  for (const edge of longest) {
    const level = wrapped(-angleOf(subtract(edge.to, edge.from)));
    const upright = wrapped(level + Math.PI / 2);
    if ([0, Math.PI / 2, Math.PI, ...turns].some((known) => Math.abs(known - level) < ALIKE)) continue;
    turns.push(level, upright);
    if (turns.length >= 2 * MOST) break;
  }
  return turns;
}

/** Edges as long as others stay in their order. */
export function longestFirst<E extends Edge>(edges: readonly E[]): readonly E[] {
  return edges
    .map((edge) => ({ edge, length: lengthOf(edge) }))
    .sort((a, b) => b.length - a.length)
    .map(({ edge }) => edge);
}

function isLine(edge: Edge): edge is Line {
  return edge.kind === 'line' && lengthOf(edge) > 0;
}

function wrapped(angle: number): number {
  const turn = angle - Math.PI * Math.floor(angle / Math.PI);
  return turn < Math.PI ? turn : 0;
}
