import { type Region, subtractRegions } from '../geometry/index.ts';
import type { SketchedPart } from '../sketch/index.ts';
import type { RoutedOpening } from './api.ts';
import type { ExtendedOutline } from './outline/extend-outline.ts';
import { isRouted } from './outline/find-runs.ts';
import { asRegion, routeOpening } from './route-opening.ts';
import { type Radii, routeOutside } from './route-outside.ts';

export interface RoutedShape {
  readonly template: readonly Region[];
  /** The board before openings are cut in it. */
  readonly board: readonly Region[];
  readonly openings: readonly RoutedOpening[];
  readonly asRouted: readonly Region[];
}

/**
 * Template and what is left of the wood, outside and inside cuts together. A hole with a routed edge is routed all round;
 * other holes are made by other means and stay as drawn: they are not in the template.
 */
export function routeShape(part: SketchedPart, extended: ExtendedOutline, radii: Radii): RoutedShape {
  const outside = routeOutside(extended, radii);
  const openings: RoutedOpening[] = [];
  const otherHoles: Region[] = [];
  for (const [index, hole] of part.region.holes.entries()) {
    if (!hole.edges.some(isRouted)) {
      otherHoles.push(asRegion(hole));
      continue;
    }
    const declared = part.openings.find((opening) => opening.hole === index);
    const cut = routeOpening(hole, declared?.plunge, radii);
    const edges = [...new Set(hole.edges.map((edge) => edge.tag.id))];
    openings.push({
      name: declared?.name ?? edges[0]!,
      edges,
      at: declared?.plunge ?? hole.edges[0]!.from,
      ...cut,
    });
  }
  const cuts = [...openings.flatMap(({ cut }) => cut), ...otherHoles];
  const windows = openings.flatMap(({ template }) => template);
  return {
    board: outside.template,
    template: windows.length === 0 ? outside.template : subtractRegions(outside.template, windows),
    openings,
    asRouted: cuts.length === 0 ? outside.left : subtractRegions(outside.left, cuts),
  };
}
