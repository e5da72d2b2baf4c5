import { mm, mm2 } from '../routing/index.ts';
import { OUTLINE_TOLERANCE, type Rule } from './rule.ts';

/** Wood that the cutter leaves standing outside the line: handwork, with how much. */
export const woodLeft: Rule = (part, { differences, largestCutter, tooling }) =>
  differences
    .filter(({ kind }) => kind === 'left')
    .map(({ at, reach, area, edges }) => {
      const isSmaller = largestCutter !== undefined && largestCutter.diameter < tooling.cutter.diameter;
      const better = isSmaller ? `A cutter of ${mm(largestCutter.diameter)} would reach; or take` : 'Take';
      return {
        code: 'routing.wood-left',
        severity: reach < OUTLINE_TOLERANCE ? 'note' : 'caution',
        part: part.name,
        edges,
        at,
        message: `The cutter leaves wood standing at ${edges.join(', ')}: ${mm(reach)} deep, ${mm2(area)}.`,
        measured: { value: reach, unit: 'mm' },
        limit: { value: OUTLINE_TOLERANCE, unit: 'mm' },
        cure: `${better} it down by hand, the template off first.`,
      };
    });
