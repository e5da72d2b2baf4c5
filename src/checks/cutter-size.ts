import type { Rule } from './rule.ts';

/** The cutter against the tightest hollow, and whether the maker has a better one. */
export const cutterSize: Rule = (part, { tightest, tooling, largestCutter, differences }, say) => {
  const { diameter } = tooling.cutter;
  const shared = { part: part.name, measured: { value: diameter, unit: 'mm' } } as const;
  if (tightest?.radius === 0) {
    return [
      {
        ...shared,
        code: 'routing.sharp-inside-corner',
        severity: 'note',
        edges: [tightest.edge],
        at: tightest.at,
        message: `The inside corner at ${say.edges([tightest.edge])} is sharp: no cutter reaches into it.`,
        limit: { value: 0, unit: 'mm' },
        cure: `Round it by at least ${say.length(diameter / 2)}, or square it up by chisel.`,
      },
    ];
  }
  if (tightest !== undefined && 2 * tightest.radius < diameter) {
    const own = largestCutter?.diameter;
    return [
      {
        ...shared,
        code: 'routing.cutter-too-large',
        severity: 'caution',
        edges: [tightest.edge],
        at: tightest.at,
        message: `The cutter of ${say.length(diameter)} does not enter the hollow of radius ${say.length(tightest.radius)} at ${say.edges([tightest.edge])}.`,
        limit: { value: 2 * tightest.radius, unit: 'mm' },
        cure:
          own !== undefined && own < diameter
            ? `A cutter of ${say.length(own)} would reach.`
            : `A cutter of ${say.length(2 * tightest.radius)} or less would enter it; none in the list reaches everywhere.`,
      },
    ];
  }
  const isLarger = largestCutter !== undefined && largestCutter.diameter > diameter;
  if (!isLarger || differences.some(({ kind }) => kind === 'left')) return [];
  return [
    {
      ...shared,
      code: 'routing.larger-cutter',
      severity: 'note',
      edges: [],
      message: `A cutter of ${say.length(largestCutter.diameter)} reaches everywhere too, and a larger one cuts cleaner.`,
      limit: { value: largestCutter.diameter, unit: 'mm' },
    },
  ];
};
