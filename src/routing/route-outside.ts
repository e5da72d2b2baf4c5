import { offsetRegions, type Region, subtractRegions } from '../geometry/index.ts';
import { beyondGaps, type ExtendedOutline } from './outline/extend-outline.ts';
import { offsetRoutedEdges } from './outline/offset-routed-edges.ts';

/** Radii of what runs on the template and of the cutter, mm. */
export interface Radii {
  readonly guide: number;
  readonly cutter: number;
}

export interface OutsideCut {
  /** Board for the guide, without openings. */
  readonly template: readonly Region[];
  /** What the cutter leaves, without openings; unrouted edges as drawn. */
  readonly left: readonly Region[];
}

/**
 * The template for an outside cut and what the cutter leaves when the guide runs all round it: with guide radius g and
 * cutter radius c the template is the part shrunk by g − c, and the wood left is the template grown by g and shrunk by c.
 * Where growing closes a mouth narrower than the guide, the pocket behind it counts as wood: the guide cannot enter.
 */
export function routeOutside(extended: ExtendedOutline, { guide, cutter }: Radii): OutsideCut {
  const template = offsetRoutedEdges(extended, cutter - guide);
  if (!extended.isRouted) return { template, left: extended.drawn };
  const kept = offsetRegions(template, guide);
  const filled = kept.map(({ outer }) => ({ outer, holes: [] }));
  const left = offsetRegions(filled, -cutter);
  const beyond = beyondGaps(extended);
  return { template, left: beyond.length === 0 ? left : subtractRegions(left, beyond) };
}
