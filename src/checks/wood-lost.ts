import { OUTLINE_TOLERANCE, type Rule, TRIFLE } from './rule.ts';

/** Wood cut away inside the line, which nothing puts back. */
export const woodLost: Rule = (part, { differences, offset }, say) =>
  differences
    .filter(({ kind, reach }) => kind === 'lost' && reach >= TRIFLE)
    .map(({ at, reach, area, edges }) => ({
      code: 'routing.wood-lost',
      severity: reach < OUTLINE_TOLERANCE ? 'caution' : 'stop',
      part: part.name,
      edges,
      at,
      message: `The cutter takes wood away inside the line at ${say.edges(edges)}: ${say.length(reach)} deep, ${say.area(area)}.`,
      measured: { value: reach, unit: 'mm' },
      limit: { value: OUTLINE_TOLERANCE, unit: 'mm' },
      cure:
        offset > 0
          ? `Use a bearing as large as the cutter, or round the corner by at least ${say.length(offset)}.`
          : 'Use a bearing as large as the cutter.',
    }));
