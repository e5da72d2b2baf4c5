import type { Rule } from './rule.ts';

/** An opening with a routed edge is routed all round: a cutter inside it cannot leave one side alone. */
export const mixedOpening: Rule = (part, _, say) =>
  part.region.holes.flatMap(({ edges }) => {
    const others = edges.filter(({ tag }) => tag.role !== 'routed');
    if (others.length === 0 || others.length === edges.length) return [];
    const names = [...new Set(others.map(({ tag }) => tag.id))];
    return [
      {
        code: 'routing.mixed-opening',
        severity: 'caution',
        part: part.name,
        edges: names,
        at: others[0]!.from,
        message: `The opening is routed all round, ${say.edges(names)} too, although the form does not call them routed.`,
        cure: 'Give all its edges one role, or make those edges by hand and leave them out of the template.',
      },
    ];
  });
