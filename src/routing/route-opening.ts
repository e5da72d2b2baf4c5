import {
  locate,
  nearestOnEdges,
  type Outline,
  offsetRegions,
  type Region,
  reverseEdge,
  type Vec,
} from '../geometry/index.ts';
import type { Radii } from './route-outside.ts';

export interface OpeningCut {
  /** Opening for the guide to run in. */
  readonly template: readonly Region[];
  /** Wood the cutter takes away. */
  readonly cut: readonly Region[];
  readonly plunge: 'free' | 'tight' | 'outside' | 'missing';
  /** From the plunge to the template's edge, mm; negative on the template, or where it has no opening. 0 without a plunge. */
  readonly room: number;
}

/**
 * An inside cut: with guide radius g and cutter radius c the template's opening is the hole grown by g − c, and the cutter
 * takes away the opening shrunk by g and grown by c, of which it reaches only the piece that holds the plunge.
 */
export function routeOpening(hole: Outline, plunge: Vec | undefined, { guide, cutter }: Radii): OpeningCut {
  const waste = asRegion(hole);
  const template = offsetRegions([waste], guide - cutter);
  if (plunge === undefined) return { template, cut: [], plunge: 'missing', room: 0 };
  const room = template.length === 0 ? -guide : roomAt(template, plunge);
  if (locate([waste], plunge) !== 'inside') return { template, cut: [], plunge: 'outside', room };
  const free = offsetRegions(template, -guide).filter((piece) => locate([piece], plunge) !== 'outside');
  if (free.length === 0) return { template, cut: [], plunge: 'tight', room };
  return { template, cut: offsetRegions(free, cutter), plunge: 'free', room };
}

/** What a clockwise hole encloses, as a region of its own. */
export function asRegion(hole: Outline): Region {
  return { outer: { edges: [...hole.edges].reverse().map(reverseEdge) }, holes: [] };
}

function roomAt(template: readonly Region[], at: Vec): number {
  const edges = template.flatMap(({ outer, holes }) => [outer, ...holes].flatMap((loop) => loop.edges));
  const away = nearestOnEdges(edges, at).distance;
  return locate(template, at) === 'outside' ? -away : away;
}
