import { angleOf, type Edge, type Line, subtract } from '../../geometry/index.ts';
import type { Content } from './content.ts';
import { longestLines } from './longest-lines.ts';

/** At most so many of a pattern's straight directions are tried, the longest first. */
const MOST = 6;
/** So many of its lines are looked at. */
const LOOKED_AT = 200;
/** Directions closer than this, rad, count as one. */
const ALIKE = 1e-4;

/**
 * Turns, in [0, π), that lay one of the pattern's longest straight lines along or across the paper: those at which a
 * long part fits exactly. Longest line first; 0 and a quarter turn are left out.
 */
export function straightTurns(content: Content): number[] {
  const lines = longestLines(content.edges.filter(isLine), LOOKED_AT);
  const turns: number[] = [];
  for (const edge of lines) {
    const level = wrapped(-angleOf(subtract(edge.to, edge.from)));
    const upright = wrapped(level + Math.PI / 2);
    if ([0, Math.PI / 2, Math.PI, ...turns].some((known) => Math.abs(known - level) < ALIKE)) continue;
    turns.push(level, upright);
    if (turns.length >= 2 * MOST) break;
  }
  return turns;
}

function isLine(edge: Edge): edge is Line {
  return edge.kind === 'line' && (edge.from.x !== edge.to.x || edge.from.y !== edge.to.y);
}

function wrapped(angle: number): number {
  const turn = angle - Math.PI * Math.floor(angle / Math.PI);
  return turn < Math.PI ? turn : 0;
}
