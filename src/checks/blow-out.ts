import { type BlowOut, blowOuts } from '../routing/index.ts';
import type { Rule } from './rule.ts';

/** Corners where the cutter leaves across the grain: which edges to cut first, and where a backing block goes. */
export const blowOut: Rule = (part, { feed, tooling }, say) =>
  blowOuts(part, feed, tooling.machine).map(({ edge, next, at, cure }) => ({
    code: cure === 'first' ? 'routing.cut-first' : 'routing.backing-block',
    severity: cure === 'first' ? 'note' : 'caution',
    part: part.name,
    edges: [edge, next],
    at,
    message: `Where ${say.edges([edge])} ends at ${say.edges([next])}, the cutter leaves across the grain and wood breaks out.`,
    cure: CURES[cure](say.edges([edge]), say.edges([next])),
  }));

const CURES: Readonly<Record<BlowOut['cure'], (edge: string, next: string) => string>> = {
  first: (edge, next) =>
    `Cut ${edge} first, shallow passes last: the cut along ${next} then takes off what broke out.`,
  block: (_, next) =>
    `Clamp a backing block, at least as thick as the work, against ${next} at that corner, or leave the wood longer there and saw it off afterwards.`,
};
