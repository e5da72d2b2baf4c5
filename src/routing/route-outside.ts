import { offsetRegions, type Region, subtractRegions } from '../geometry/index.ts';
import { beyondGaps, type ExtendedOutline } from './outline/extend-outline.ts';
import { trimRunOns } from './outline/offset-routed-edges.ts';

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
 * The wood left is that of a template run on without end, so that an end which runs on too little is not felt here.
 */
export function routeOutside(extended: ExtendedOutline, { guide, cutter }: Radii): OutsideCut {
  const offset = guide - cutter;
  if (!extended.isRouted) return { template: extended.drawn, left: extended.drawn };
  const moved = offset === 0 ? extended.long : offsetRegions(extended.long, -offset);
  const kept = offsetRegions(moved, guide);
  const filled = kept.map(({ outer }) => ({ outer, holes: [] }));
  const left = offsetRegions(filled, -cutter);
  const beyond = beyondGaps(extended);
  return {
    template: trimRunOns(extended, moved, -offset),
    left: beyond.length === 0 ? left : subtractRegions(left, beyond),
  };
}
