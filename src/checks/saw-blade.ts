import type { Rule } from './rule.ts';

/** Is there a blade that follows the saw line? */
export const sawBlade: Rule = (part, { blade, tightestCurve, tooling }, say) => {
  if (blade !== undefined || tooling.blades.length === 0) return [];
  const radius = tightestCurve?.radius;
  return [
    {
      code: 'routing.no-blade',
      severity: 'caution',
      part: part.name,
      edges: [],
      ...(tightestCurve === undefined ? {} : { at: tightestCurve.at }),
      message:
        radius === undefined
          ? 'No blade of the list is one whose least radius is known.'
          : `No blade of the list follows the hollow of radius ${say.length(radius)} in the saw line: wood is left fat there, and the cutter grabs.`,
      ...(radius === undefined ? {} : { measured: { value: radius, unit: 'mm' } }),
      cure: 'Bore out the hollow first, saw it in several straight cuts, or use a narrower blade.',
    },
  ];
};
