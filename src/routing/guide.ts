import type { Guide, Tooling } from './api.ts';

/** Diameter of what runs on the template, mm. */
export function guideDiameter(guide: Guide): number {
  return guide.kind === 'bearing' ? guide.diameter : guide.outsideDiameter;
}

/** How far the template's edge stands inside the part's edge, mm: (guide − cutter) / 2, negative outside it. */
export function offsetOf({ guide, cutter }: Pick<Tooling, 'guide' | 'cutter'>): number {
  return (guideDiameter(guide) - cutter.diameter) / 2;
}

/** The same kind of guide for another cutter: a bearing as much larger than its cutter, or the same bushing. */
export function guideFor(diameter: number, { guide, cutter }: Pick<Tooling, 'guide' | 'cutter'>): Guide {
  if (guide.kind === 'bushing') return guide;
  return { ...guide, diameter: guide.diameter - cutter.diameter + diameter };
}
