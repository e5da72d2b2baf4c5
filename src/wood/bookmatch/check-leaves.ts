import type { Finding } from '../../core/index.ts';
import type { LengthWords } from '../../routing/index.ts';
import type { ResawStack } from '../resaw/api.ts';
import type { LeafMap } from './api.ts';
import { leavesCounted } from './leaves-counted.ts';
import { framesDiffer, turnedWrong } from './leaves-turned.ts';
import { matchDrift } from './match-drift.ts';
import { leafWords, pieceOf } from './words.ts';

/** mm: what rounding makes of the distance of two faces. */
const TRIFLE = 1e-6;

/**
 * What is wrong with a leaf map, whether it follows from the arrangement or was made by hand: a leaf used twice or that the board does not
 * give, a face without its leaf, a leaf turned wrong, frames that do not agree, leaves that match poorly because they lay far apart.
 */
export function checkLeaves(map: LeafMap, stack: ResawStack, say: LengthWords): readonly Finding[] {
  return [
    ...leavesCounted(map, stack),
    ...turnedWrong(map),
    ...framesDiffer(map),
    ...farApart(map, stack, say),
  ];
}

function farApart(map: LeafMap, stack: ResawStack, say: LengthWords): readonly Finding[] {
  const { plan } = stack;
  if (map.match.arrangement === 'radial') return [];
  const nameOf = (id: string): string => pieceOf(map, id).name;
  const least = plan.kerf + 2 * (plan.planing.sawn + plan.drying / 2 + plan.lastPlaning.show);
  const slip = map.match.arrangement === 'slip';
  return matchDrift(map, stack)
    .filter(({ kind }) => kind === 'mates')
    .flatMap(({ a, b, apart }): readonly Finding[] => {
      if (a.board === undefined || b.board === undefined) return [];
      const both = `${leafWords(a)} on ${nameOf(a.piece)} and ${leafWords(b)} on ${nameOf(b.piece)}`;
      if (apart === undefined)
        return a.board === b.board
          ? []
          : [
              {
                code: 'wood.match-from-two-boards',
                severity: 'caution',
                edges: [],
                message: `${map.match.name}: ${both} come from different boards and cannot match.`,
                cure: 'Take both leaves of a frame from one board.',
              },
            ];
      if (slip || apart <= least + TRIFLE) return [];
      return [
        {
          code: 'wood.match-apart',
          severity: 'caution',
          edges: [],
          message: `${map.match.name}: the faces that show of ${both} lay ${say.length(apart)} apart in the board; where two leaves met they would lie ${say.length(least)} apart.`,
          measured: { value: apart, unit: 'mm' },
          limit: { value: least, unit: 'mm' },
          cure: 'Take two neighbouring leaves, and show the faces that met at the saw.',
        },
      ];
    });
}
