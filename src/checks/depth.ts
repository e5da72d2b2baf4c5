import { planDepth } from '../routing/index.ts';
import type { Rule } from './rule.ts';

/** What the depth plan has to say, planned anew in the maker's unit. */
export const depth: Rule = (part, routing, say) =>
  planDepth(part.thickness, routing.tooling, say).remarks.map(
    ({ code, severity, words, measured, limit, cure }) => ({
      code,
      severity,
      part: part.name,
      edges: [],
      message: words,
      measured: { value: measured, unit: 'mm' },
      limit: { value: limit, unit: 'mm' },
      ...(cure === undefined ? {} : { cure }),
    }),
  );
