import { mm, mm2 } from '../routing/index.ts';
import { OUTLINE_TOLERANCE, type Rule } from './rule.ts';

/** Wood cut away inside the line, which nothing puts back. */
export const woodLost: Rule = (part, { differences, offset }) =>
  differences
    .filter(({ kind }) => kind === 'lost')
    .map(({ at, reach, area, edges }) => ({
      code: 'routing.wood-lost',
      severity: reach < OUTLINE_TOLERANCE ? 'caution' : 'stop',
      part: part.name,
      edges,
      at,
      message: `The cutter takes wood away inside the line at ${edges.join(', ')}: ${mm(reach)} deep, ${mm2(area)}.`,
      measured: { value: reach, unit: 'mm' },
      limit: { value: OUTLINE_TOLERANCE, unit: 'mm' },
      cure:
        offset > 0
          ? `Use a bearing as large as the cutter, or round the corner by at least ${mm(offset)}.`
          : 'Use a bearing as large as the cutter.',
    }));
