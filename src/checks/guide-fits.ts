import { BUSHING } from '../materials/index.ts';
import { mm } from '../routing/index.ts';
import type { Rule } from './rule.ts';

/** Does the cutter pass through the bushing, and does the guide keep it off the template? */
export const guideFits: Rule = (part, { tooling, offset }) => {
  const { guide, cutter } = tooling;
  const shared = { part: part.name, edges: [] };
  if (guide.kind === 'bearing') {
    if (offset >= 0) return [];
    return [
      {
        ...shared,
        code: 'routing.guide-smaller-than-cutter',
        severity: 'caution',
        message:
          `The bearing of ${mm(guide.diameter)} is smaller than the cutter of ${mm(cutter.diameter)}: the template stands ` +
          `${mm(-offset)} outside the line, and a cutter set too high cuts it.`,
        measured: { value: guide.diameter, unit: 'mm' },
        limit: { value: cutter.diameter, unit: 'mm' },
        cure: `Use a bearing of ${mm(cutter.diameter)}, or keep the cutter clear of the template.`,
      },
    ];
  }
  const bore = guide.outsideDiameter - 2 * BUSHING.wall;
  const clear = (bore - cutter.diameter) / 2;
  if (clear >= BUSHING.boreClearance) return [];
  const least = cutter.diameter + 2 * (BUSHING.wall + BUSHING.boreClearance);
  const isBlocked = offset <= 0;
  return [
    {
      ...shared,
      code: isBlocked ? 'routing.guide-smaller-than-cutter' : 'routing.bushing-close',
      severity: isBlocked ? 'stop' : 'caution',
      message: isBlocked
        ? `A cutter of ${mm(cutter.diameter)} does not pass through a bushing of ${mm(guide.outsideDiameter)}.`
        : `A bushing of ${mm(guide.outsideDiameter)} leaves about ${mm(Math.max(0, clear))} round a cutter of ${mm(cutter.diameter)}.`,
      measured: { value: guide.outsideDiameter, unit: 'mm' },
      limit: { value: least, unit: 'mm' },
      cure: `Use a bushing of at least ${mm(least)}, or measure its bore and see that the cutter runs free.`,
    },
  ];
};
