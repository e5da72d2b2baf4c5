import { type Design, guideFor, unnamedPaper } from '../../../design/index.ts';

/** A guide of another kind that goes with the bit in hand. */
export function usualGuide(asked: {
  readonly design: Design;
  readonly kind: Design['tooling']['guide']['kind'];
}): Design['tooling']['guide'] {
  const { tooling, units } = asked.design;
  return guideFor(asked.kind, tooling.cutter, units.length);
}

/** Sizes to begin with for paper that is typed. */
export function usualSize(asked: {
  readonly kind: 'sheet' | 'roll';
  readonly unit: 'mm' | 'in';
}): Design['paper']['size'] {
  return unnamedPaper(asked.kind, asked.unit);
}
