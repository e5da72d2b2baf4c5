import { BUSHING } from '../materials/index.ts';

import type { Rule } from './rule.ts';

/** Does the cutter pass through the bushing, and does the guide keep it off the template? */
export const guideFits: Rule = (part, { tooling, offset }, say) => {
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
          `The bearing of ${say.length(guide.diameter)} is smaller than the cutter of ${say.length(cutter.diameter)}: the template stands ` +
          `${say.length(-offset)} outside the line, and a cutter set too high cuts it.`,
        measured: { value: guide.diameter, unit: 'mm' },
        limit: { value: cutter.diameter, unit: 'mm' },
        cure: `Use a bearing of ${say.length(cutter.diameter)}, or keep the cutter clear of the template.`,
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
        ? `A cutter of ${say.length(cutter.diameter)} does not pass through a bushing of ${say.length(guide.outsideDiameter)}.`
        : `A bushing of ${say.length(guide.outsideDiameter)} leaves about ${say.length(Math.max(0, clear))} round a cutter of ${say.length(cutter.diameter)}.`,
      measured: { value: guide.outsideDiameter, unit: 'mm' },
      limit: { value: least, unit: 'mm' },
      cure: `Use a bushing of at least ${say.length(least)}, or measure its bore and see that the cutter runs free.`,
    },
  ];
};
