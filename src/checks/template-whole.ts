import type { Finding } from '../core/index.ts';

import type { Rule } from './rule.ts';

/** Does the template hold together once it is offset and its openings are cut? */
export const templateWhole: Rule = (part, { template, openings, offset }, say) => {
  const shared = { severity: 'stop', part: part.name } as const;
  const cure = 'Use a smaller guide, or a bearing as large as the cutter.';
  const outside: Finding[] =
    template.length === 1
      ? []
      : [
          {
            ...shared,
            code: 'routing.template-apart',
            edges: [],
            message:
              template.length === 0
                ? `Nothing is left of the template once it is ${say.length(offset)} smaller all round.`
                : `The template falls into ${template.length} pieces: the part, or a web beside an opening, is too narrow.`,
            measured: { value: template.length, unit: 'none' },
            limit: { value: 1, unit: 'none' },
            cure,
          },
        ];
  const holes = template.reduce((sum, region) => sum + region.holes.length, 0);
  const wanted = openings.reduce((sum, opening) => sum + opening.template.length, 0);
  if (outside.length > 0 || holes === wanted) return outside;
  return [
    {
      ...shared,
      code: 'routing.opening-breaks-template',
      edges: openings.flatMap(({ edges }) => edges),
      message: `An opening, ${say.length(offset)} larger all round in the template, breaks into its edge or into another opening.`,
      measured: { value: holes, unit: 'none' },
      limit: { value: wanted, unit: 'none' },
      cure,
    },
  ];
};
