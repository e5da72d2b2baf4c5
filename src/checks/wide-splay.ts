import { dot, polar, subtract, unit } from '../geometry/index.ts';
import { MOST_SPLAY } from '../materials/index.ts';
import type { Rule } from './rule.ts';

/** rad: a part that leans by more than this is a rail, not a leg. */
const LYING = Math.PI / 4;

/** Does a part that stands lean so far that its grain is short and toes catch on it? */
export const wideSplay: Rule = (part) => {
  const { from, to } = part.centreLine;
  const lean = Math.acos(Math.min(1, Math.abs(dot(unit(subtract(to, from)), polar(part.up)))));
  // A degree typed as 15 comes back with rounding.
  if (!(lean > MOST_SPLAY + 1e-6) || lean > LYING) return [];
  return [
    {
      code: 'part.splay-wide',
      severity: 'caution',
      part: part.name,
      edges: [],
      message: `${part.label} leans ${degrees(lean)} from plumb; past ${degrees(MOST_SPLAY)} grain runs short and toes catch.`,
      measured: { value: lean, unit: 'rad' },
      limit: { value: MOST_SPLAY, unit: 'rad' },
      cure: `A splay of ${degrees(MOST_SPLAY)} or less is common practice.`,
    },
  ];
};

function degrees(angle: number): string {
  return `${((angle * 180) / Math.PI).toFixed(1).replace(/\.0$/, '')}°`;
}
