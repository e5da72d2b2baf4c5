import type { Finding } from '../core/index.ts';
import { RUN_ON } from '../materials/index.ts';

import type { Rule } from './rule.ts';

/** Is the guide on the template before the cutter meets the wood, at every end? */
export const runOn: Rule = (part, { gaps, tooling, endAllowance }, say) => {
  const least = tooling.cutter.diameter / 2 + endAllowance;
  const short: Finding[] = gaps
    .filter((gap) => gap.kind !== 'bridge' && gap.runOn < least)
    .map((gap) => ({
      code: 'routing.run-on-short',
      severity: 'caution',
      part: part.name,
      edges: gap.edges,
      at: gap.at,
      message:
        gap.runOn === 0
          ? `The template cannot run on past ${say.edges(gap.edges)}: start and stop the cut inside the wood there with care.`
          : `The template runs on ${say.length(gap.runOn)} past ${say.edges(gap.edges)}, where the blank stands out ${say.length(endAllowance)}: the cutter meets the wood before the guide is on the template.`,
      measured: { value: gap.runOn, unit: 'mm' },
      limit: { value: least, unit: 'mm' },
      cure: `Let the template run on at least ${say.length(least)} past the end, or leave less wood there.`,
    }));
  const isUsual = tooling.runOn >= RUN_ON.least && tooling.runOn <= RUN_ON.most;
  if (isUsual || gaps.length === 0) return short;
  const note: Finding = {
    code: 'routing.run-on-unusual',
    severity: 'note',
    part: part.name,
    edges: [],
    message: `A run-on of ${say.length(tooling.runOn)} is unusual: ${say.about(RUN_ON.least)} to ${say.about(RUN_ON.most)} is common practice.`,
    measured: { value: tooling.runOn, unit: 'mm' },
    limit: { value: tooling.runOn < RUN_ON.least ? RUN_ON.least : RUN_ON.most, unit: 'mm' },
  };
  return [...short, note];
};
