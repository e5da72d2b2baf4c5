import { OUTLINE_TOLERANCE, type Rule, TRIFLE } from './rule.ts';

/** Wood that the cutter leaves standing outside the line: handwork, with how much. */
export const woodLeft: Rule = (part, { differences, largestCutter, tooling }, say) =>
  differences
    .filter(({ kind, reach }) => kind === 'left' && reach >= TRIFLE)
    .map(({ at, reach, area, edges }) => {
      const isSmaller = largestCutter !== undefined && largestCutter.diameter < tooling.cutter.diameter;
      const better = isSmaller
        ? `A cutter of ${say.length(largestCutter.diameter)} would reach; or take`
        : 'Take';
      return {
        code: 'routing.wood-left',
        severity: reach < OUTLINE_TOLERANCE ? 'note' : 'caution',
        part: part.name,
        edges,
        at,
        message: `The cutter leaves wood standing at ${say.edges(edges)}: ${say.length(reach)} deep, ${say.area(area)}.`,
        measured: { value: reach, unit: 'mm' },
        limit: { value: OUTLINE_TOLERANCE, unit: 'mm' },
        cure: `${better} it down by hand, the template off first.`,
      };
    });
