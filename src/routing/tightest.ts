import {
  cross,
  directionAt,
  dot,
  type Edge,
  type Outline,
  pointAt,
  type Region,
  SMOOTH_TURN,
} from '../geometry/index.ts';
import type { Routing } from './api.ts';
import { isRouted } from './outline/find-runs.ts';

type Tightest = NonNullable<Routing['tightest']>;

/**
 * The tightest hollow of the routed edges, seen from the waste: the smallest arc that turns away from the wood, or a sharp
 * inside corner between two routed edges, of radius 0. Openings count from their inside. Nothing where every routed edge
 * is straight or bulges.
 */
export function tightestHollow(region: Region): Tightest | undefined {
  let best: Tightest | undefined;
  for (const loop of [region.outer, ...region.holes]) {
    for (const found of hollows(loop)) {
      if (best === undefined || found.radius < best.radius) best = found;
    }
  }
  return best;
}

function* hollows({ edges }: Outline): Generator<Tightest> {
  for (const [at, edge] of edges.entries()) {
    if (!isRouted(edge)) continue;
    if (edge.kind === 'arc' && edge.turn === -1) {
      yield { radius: edge.radius, at: pointAt(edge, 0.5), edge: edge.tag.id };
    }
    const next = edges[(at + 1) % edges.length]!;
    if (isRouted(next) && turnsIn(edge, next)) yield { radius: 0, at: edge.to, edge: next.tag.id };
  }
}

/** Outlines keep the wood on their left: a turn to the right is an inside corner. */
function turnsIn(edge: Edge, next: Edge): boolean {
  const arriving = directionAt(edge, 1);
  const leaving = directionAt(next, 0);
  const turn = cross(arriving, leaving);
  return turn < -SMOOTH_TURN || (turn < 0 && dot(arriving, leaving) < 0);
}
