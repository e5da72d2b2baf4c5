import { boundsOfRegions } from '../geometry/index.ts';

import type { Rule } from './rule.ts';

/** mm: shorter work is not held by hand near a cutter (common practice, from memory). */
const SMALL_PART = 300;

/** Can the template be held to the work, and the work be held at all? */
export const holding: Rule = (part, { fixings }, say) => {
  const shared = { part: part.name, edges: [] };
  const holds = fixings.some(({ kind }) => kind !== 'waste');
  const box = boundsOfRegions([part.region]);
  const long = Math.max(box.maxX - box.minX, box.maxY - box.minY);
  return [
    ...(holds
      ? []
      : [
          {
            ...shared,
            code: 'routing.no-fixing',
            severity: 'caution',
            message: 'There is no room clear of the cutter to screw or tape the template to the work.',
            cure: 'Build a sled with fences and toggle clamps, or leave more waste beyond the ends.',
          } as const,
        ]),
    ...(long >= SMALL_PART
      ? []
      : [
          {
            ...shared,
            code: 'routing.small-part',
            severity: 'caution',
            message: `The part is only ${say.length(long)} long: too small to be held by hand near a cutter.`,
            measured: { value: long, unit: 'mm' },
            limit: { value: SMALL_PART, unit: 'mm' },
            cure: 'Rout it while it is part of a larger piece, or hold it in a fixture with handles.',
          } as const,
        ]),
  ];
};
