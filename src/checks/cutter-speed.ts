import { highestSpeed } from '../materials/index.ts';

import type { Rule } from './rule.ts';

/** Highest speed for the cutter by published charts. */
export const cutterSpeed: Rule = (part, { tooling }, say) => {
  const { diameter } = tooling.cutter;
  const speed = highestSpeed(diameter);
  const shared = {
    code: 'routing.speed',
    part: part.name,
    edges: [],
    measured: { value: diameter, unit: 'mm' },
  } as const;
  if (speed === undefined) {
    return [
      {
        ...shared,
        severity: 'caution',
        message: `A cutter of ${say.length(diameter)} is larger than any in the published charts of speeds: go by its maker's figure alone.`,
      },
    ];
  }
  return [
    {
      ...shared,
      severity: 'note',
      message: `Run a cutter of ${say.length(diameter)} at no more than ${speed} turns a minute, and no faster than the figure on its shank.`,
      limit: { value: speed, unit: 'none' },
    },
  ];
};
