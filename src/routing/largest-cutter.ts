import type { SketchedPart } from '../sketch/index.ts';
import type { Cutter, Tooling } from './api.ts';
import { findDifferences } from './find-differences.ts';
import { guideDiameter, guideFor } from './guide.ts';
import type { ExtendedOutline } from './outline/extend-outline.ts';
import { routeShape } from './route-shape.ts';

/**
 * The largest cutter of the maker's list, the one in hand included, that leaves the part as drawn and its template whole,
 * with the same kind of guide: a bearing as much larger than its cutter as the one in hand, or the same bushing. Nothing when none does.
 */
export function largestCutter(
  part: SketchedPart,
  extended: ExtendedOutline,
  tooling: Tooling,
): Cutter | undefined {
  const byDiameter = new Map<number, Cutter>();
  for (const cutter of [tooling.cutter, ...tooling.cutters]) {
    const known = byDiameter.get(cutter.diameter);
    if (known === undefined || cutter.cuttingLength > known.cuttingLength)
      byDiameter.set(cutter.diameter, cutter);
  }
  return [...byDiameter.values()]
    .filter(({ diameter }) => passesThrough(diameter, tooling))
    .sort((a, b) => b.diameter - a.diameter)
    .find(({ diameter }) => reachesEverywhere(part, extended, diameter, tooling));
}

function passesThrough(diameter: number, tooling: Tooling): boolean {
  const guide = guideFor(diameter, tooling);
  return guideDiameter(guide) > 0 && (guide.kind === 'bearing' || guide.outsideDiameter > diameter);
}

function reachesEverywhere(
  part: SketchedPart,
  extended: ExtendedOutline,
  diameter: number,
  tooling: Tooling,
): boolean {
  const radii = { guide: guideDiameter(guideFor(diameter, tooling)) / 2, cutter: diameter / 2 };
  const { asRouted, template, openings } = routeShape(part, extended, radii);
  // As the check has it: one board, every opening in it still an opening of its own.
  const holes = template.reduce((sum, region) => sum + region.holes.length, 0);
  const wanted = openings.reduce((sum, opening) => sum + opening.template.length, 0);
  if (template.length !== 1 || holes !== wanted) return false;
  return findDifferences([part.region], asRouted).length === 0;
}
