import type { Finding } from '../core/index.ts';
import { lengthOf, pointAt } from '../geometry/index.ts';
import type { FeedRun } from '../routing/index.ts';
import type { SketchedPart } from '../sketch/index.ts';
import type { PartWords } from './part-words.ts';
import type { Rule } from './rule.ts';

/** Edges that are cut against the grain, and end grain outside: inside an opening there is no corner to break out. */
export const grainOfCuts: Rule = (part, { feed }, say) => [
  ...describe(part.name, feed, 'against', say, {
    code: 'routing.against-grain',
    severity: 'caution',
    words: 'run against the grain and may tear out',
    cure: 'Turn the work over and cut them with the bearing at the other end of a cutter, or take very light passes.',
  }),
  ...describe(part.name, outside(part, feed), 'end', say, {
    code: 'routing.end-grain',
    severity: 'note',
    words: 'are end grain, where wood breaks out at the far corner',
    cure: 'Cut them first, with a backing block at least as thick as the work at the exit corner.',
  }),
];

function outside({ region }: SketchedPart, feed: readonly FeedRun[]): readonly FeedRun[] {
  const names = new Set(region.outer.edges.map(({ tag }) => tag.id));
  return feed.filter(({ edge }) => names.has(edge));
}

function describe(
  part: string,
  feed: readonly FeedRun[],
  grain: FeedRun['grain'],
  say: PartWords,
  about: { code: string; severity: Finding['severity']; words: string; cure: string },
): Finding[] {
  const runs = feed.filter((run) => run.grain === grain);
  if (runs.length === 0) return [];
  const longest = runs.reduce((best, run) => (lengthOf(run.path) > lengthOf(best.path) ? run : best));
  const total = runs.reduce((sum, run) => sum + lengthOf(run.path), 0);
  const edges = [...new Set(runs.map(({ edge }) => edge))];
  return [
    {
      code: about.code,
      severity: about.severity,
      part,
      edges,
      at: pointAt(longest.path, 0.5),
      message: `${say.length(total)} of ${say.edges(edges)} ${about.words}.`,
      measured: { value: total, unit: 'mm' },
      cure: about.cure,
    },
  ];
}
