import type { Finding } from '../core/index.ts';
import { guideDiameter, type RoutedOpening } from '../routing/index.ts';
import type { PartWords } from './part-words.ts';
import type { Rule } from './rule.ts';

/** Can every opening be entered where the form says? */
export const plunge: Rule = (part, { openings, tooling }, say) =>
  openings.flatMap((opening) => {
    const found = describe(opening, guideDiameter(tooling.guide), say);
    const shared = { part: part.name, edges: opening.edges, at: opening.at };
    if (found !== undefined) return [{ ...shared, ...found }];
    const { guide } = tooling;
    if (guide.kind !== 'bearing') return [];
    const hole = Math.max(guide.diameter, tooling.cutter.diameter);
    return [
      {
        ...shared,
        code: 'routing.start-hole',
        severity: 'note',
        message: `Drill a start hole of at least ${say.length(hole)} for ${say.opening(opening.name)}: the bearing must be on the template before the cutter meets wood.`,
        measured: { value: hole, unit: 'mm' },
      },
    ];
  });

function describe(
  { name, plunge: state, room }: RoutedOpening,
  guide: number,
  say: PartWords,
): Pick<Finding, 'code' | 'severity' | 'message' | 'cure' | 'measured' | 'limit'> | undefined {
  const limit = { value: guide / 2, unit: 'mm' } as const;
  const measured = { value: room, unit: 'mm' } as const;
  switch (state) {
    case 'free':
      return undefined;
    case 'missing':
      return {
        code: 'routing.no-plunge',
        severity: 'stop',
        message: `No plunge is given for ${say.opening(name)}, so nothing of it can be routed.`,
        cure: `Give a plunge at least ${say.length(guide / 2)} inside the template's opening.`,
      };
    case 'outside':
      return {
        code: 'routing.plunge-outside-waste',
        severity: 'stop',
        message: `The plunge of ${say.opening(name)} does not lie in its waste: it would spoil the part.`,
        measured,
        limit,
        cure: 'Move the plunge into the opening.',
      };
    case 'tight':
      return {
        code: 'routing.plunge-too-near',
        severity: 'stop',
        message: `At the plunge of ${say.opening(name)} the guide of ${say.length(guide)} does not fit into the template's opening.`,
        measured,
        limit,
        cure: `Move the plunge away from the edge, or use a smaller guide.`,
      };
    default:
      throw new RangeError(`no such plunge: ${state satisfies never}`);
  }
}
