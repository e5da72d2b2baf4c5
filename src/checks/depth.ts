import type { Rule } from './rule.ts';

/** What the depth plan has to say. */
export const depth: Rule = (part, routing) =>
  routing.depth.remarks.map(({ code, severity, words, measured, limit, cure }) => ({
    code,
    severity,
    part: part.name,
    edges: [],
    message: words,
    measured: { value: measured, unit: 'mm' },
    limit: { value: limit, unit: 'mm' },
    ...(cure === undefined ? {} : { cure }),
  }));
