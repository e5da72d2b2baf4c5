import type { Edge } from '../geometry/index.ts';
import type { SketchedPart } from '../sketch/index.ts';
import type { EdgeOffset, Routing, Tooling } from './api.ts';
import { bladeFor } from './blade.ts';
import { blankOf, usualEndAllowance } from './blank.ts';
import { planDepth } from './depth/plan-depth.ts';
import { feedRuns } from './feed.ts';
import { findDifferences } from './find-differences.ts';
import { fixingPlaces } from './fixings.ts';
import { guideDiameter, offsetOf } from './guide.ts';
import { largestCutter } from './largest-cutter.ts';
import { extendOutline } from './outline/extend-outline.ts';
import { isRouted } from './outline/find-runs.ts';
import { routeShape } from './route-shape.ts';
import { sawnOnly } from './sawn-only.ts';
import { templateSideOf } from './template-side.ts';
import { tightestHollow } from './tightest.ts';

/**
 * Everything that follows from a part and the tooling, in the part's own plane, face side up: template, what the cutter
 * leaves and where that differs from the part drawn, blank, feed, depth, fixings. All lengths in mm, diameters positive.
 * What is not possible comes as data (empty templates, differences, a depth plan that says why); nothing throws for it.
 */
export function routePart(part: SketchedPart, tooling: Tooling): Routing {
  if (part.onlySawn === true) return sawnOnly(tooling);
  const { region } = part;
  const radii = { guide: guideDiameter(tooling.guide) / 2, cutter: tooling.cutter.diameter / 2 };
  const most = Math.max(radii.cutter, radii.guide, ...tooling.cutters.map(({ diameter }) => diameter / 2));
  const extended = extendOutline(region.outer, tooling.runOn, 2 * most);
  const shape = routeShape(part, extended, radii);
  const endAllowance = tooling.endAllowance ?? usualEndAllowance(tooling);
  const blank = blankOf(region.outer, tooling.sawAllowance, endAllowance);
  const tightest = tightestHollow(region);
  const largest = tightest?.radius === 0 ? undefined : largestCutter(part, extended, tooling);
  return {
    tooling,
    offset: offsetOf(tooling),
    template: shape.template,
    asRouted: shape.asRouted,
    differences: findDifferences([region], shape.asRouted),
    blank,
    endAllowance,
    offsets: offsetsOf(part, offsetOf(tooling)),
    gaps: extended.gaps,
    openings: shape.openings,
    templateSide: templateSideOf(tooling),
    feed: feedRuns(part, tooling.machine),
    fixings: fixingPlaces(part, shape.template, blank, shape.openings, tooling.cutter.diameter),
    depth: planDepth(part.thickness, tooling),
    ...(tightest === undefined ? {} : { tightest }),
    ...(largest === undefined ? {} : { largestCutter: largest }),
    ...bladeFor(blank, tooling.blades),
  };
}

function offsetsOf({ region }: SketchedPart, offset: number): EdgeOffset[] {
  const named = (edges: readonly Edge[]): string[] => [...new Set(edges.map((edge) => edge.tag.id))];
  const outside = named(region.outer.edges.filter(isRouted)).map((edge) => ({ edge, offset }));
  const inside = region.holes
    .filter(({ edges }) => edges.some(isRouted))
    .flatMap(({ edges }) => named(edges).map((edge) => ({ edge, offset, across: 2 * offset })));
  return [...outside, ...inside];
}
