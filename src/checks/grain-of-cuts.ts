import type { Finding } from '../core/index.ts';
import { lengthOf, pointAt } from '../geometry/index.ts';
import { type FeedRun, mm } from '../routing/index.ts';
import type { Rule } from './rule.ts';

/** Edges that are cut against the grain, and end grain. */
export const grainOfCuts: Rule = (part, { feed }) => [
  ...describe(part.name, feed, 'against', {
    code: 'routing.against-grain',
    severity: 'caution',
    words: 'run against the grain and may tear out',
    cure: 'Turn the work over and cut them with the bearing at the other end of a cutter, or take very light passes.',
  }),
  ...describe(part.name, feed, 'end', {
    code: 'routing.end-grain',
    severity: 'note',
    words: 'are end grain, where wood breaks out at the far corner',
    cure: 'Cut them first, with a backing block at least as thick as the work at the exit corner.',
  }),
];

function describe(
  part: string,
  feed: readonly FeedRun[],
  grain: FeedRun['grain'],
  say: { code: string; severity: Finding['severity']; words: string; cure: string },
): Finding[] {
  const runs = feed.filter((run) => run.grain === grain);
  if (runs.length === 0) return [];
  const longest = runs.reduce((best, run) => (lengthOf(run.path) > lengthOf(best.path) ? run : best));
  const total = runs.reduce((sum, run) => sum + lengthOf(run.path), 0);
  const edges = [...new Set(runs.map(({ edge }) => edge))];
  return [
    {
      code: say.code,
      severity: say.severity,
      part,
      edges,
      at: pointAt(longest.path, 0.5),
      message: `${mm(total)} of ${edges.join(', ')} ${say.words}.`,
      measured: { value: total, unit: 'mm' },
      cure: say.cure,
    },
  ];
}
