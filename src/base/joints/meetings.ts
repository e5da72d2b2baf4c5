import type { Finding } from '../../core/index.ts';
import { RESIDUE_TOLERANCE } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import { holeDistance, surelyLeave } from '../joint-rules/index.ts';
import type { Bore, Joint } from './api.ts';
import { holeOfBore } from './hole-of-bore.ts';
import type { Shop } from './shop.ts';

/** The share of a bore's depth to which shortening is tried. */
const LEAST_SHARE = 0.4;

/** Where bores of two joints meet in one part, or leave less wood between them than a wall: the nearest pair of each two joints. */
export function meetingsOfJoints(
  parts: readonly PlacedPart[],
  joints: readonly Joint[],
  shop: Shop,
): readonly Finding[] {
  return parts.flatMap((part) => {
    const bores = joints.flatMap((joint) => {
      const own = boresIn(joint, part.id);
      return own.length === 0 ? [] : [{ joint, bores: own }];
    });
    return bores.flatMap(({ joint, bores: own }, at) =>
      bores.slice(at + 1).flatMap(({ joint: other, bores: others }) => {
        const found = nearestPair(own, others, shop.tenonRules.wall);
        return found === undefined ? [] : [said(part, joint, other, found, shop)];
      }),
    );
  });
}

const boresIn = ({ sides }: Joint, part: string): readonly Bore[] =>
  sides
    .filter((side) => side.part === part)
    .flatMap(({ work }) => work)
    .filter((work): work is Bore => work.kind === 'mortise' || work.kind === 'hole');

interface Meeting {
  readonly a: Bore;
  readonly b: Bore;
  readonly distance: number;
}

/** Of two joints' bores those that leave the least wood between them, where that is less than the limit. */
function nearestPair(own: readonly Bore[], others: readonly Bore[], limit: number): Meeting | undefined {
  let best: Meeting | undefined;
  for (const a of own) {
    for (const b of others) {
      const [hole, other] = [holeOfBore(a), holeOfBore(b)];
      if (surelyLeave(hole, other, limit - RESIDUE_TOLERANCE)) continue;
      const { distance } = holeDistance(hole, other);
      if (distance < limit - RESIDUE_TOLERANCE && distance < (best?.distance ?? Infinity))
        best = { a, b, distance };
    }
  }
  return best;
}

function said(
  part: PlacedPart,
  joint: Joint,
  other: Joint,
  { a, b, distance }: Meeting,
  shop: Shop,
): Finding {
  const { say, tenonRules } = shop;
  const meet = distance <= RESIDUE_TOLERANCE;
  const what = a.kind === 'hole' && b.kind === 'hole' ? 'holes' : 'mortises';
  const share = shareThatClears(a, b, tenonRules.wall);
  const shorter =
    share === undefined
      ? ''
      : `${capital(what)} ${say(a.depth * share)} and ${say(b.depth * share)} deep would leave ${say(tenonRules.wall)} between them; or `;
  const aside = (a.width + b.width) / 2 + tenonRules.wall;
  const hasHole = a.kind === 'hole' || b.kind === 'hole';
  // Tenons that meet at their ends are mitred; a dowel cannot be, nor a tenon that another runs across.
  const cutsThrough = meet && (hasHole || !leaves(a, b, LEAST_SHARE, RESIDUE_TOLERANCE));
  const mitre =
    hasHole || cutsThrough
      ? `set the ${what} of one joint ${say(aside)} aside from those of the other.`
      : `mitre the ends of both tenons where they meet, so that each keeps its length of ${say(a.depth)} on its outer side.`;
  return {
    code: 'joint.meets-other',
    severity: cutsThrough ? 'stop' : 'caution',
    part: part.drawn.name,
    joint: `${joint.name} ${other.name}`,
    edges: [],
    at: { x: a.own.origin.x, y: a.own.origin.y },
    message: cutsThrough
      ? `Cutting the ${what} of ${other.label} would cut through those of ${joint.label} in ${part.label}.`
      : meet
        ? `The ${what} of ${joint.label} and ${other.label} run into each other in ${part.label}.`
        : `The ${what} of ${joint.label} and ${other.label} leave ${say(distance)} of wood between them in ${part.label}.`,
    measured: { value: distance, unit: 'mm' },
    limit: { value: tenonRules.wall, unit: 'mm' },
    cure: shorter === '' ? capital(mitre) : `${shorter}${mitre}`,
  };
}

/** The largest share of both depths that leaves a wall between; nothing where even short bores meet. */
function shareThatClears(a: Bore, b: Bore, wall: number): number | undefined {
  const clears = (share: number): boolean => leaves(a, b, share, wall);
  if (!clears(LEAST_SHARE)) return undefined;
  let [low, high] = [LEAST_SHARE, 1];
  for (let step = 0; step < 20; step++) {
    const middle = (low + high) / 2;
    if (clears(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** Do two bores, to a share of their depths, leave so much wood between them? */
const leaves = (a: Bore, b: Bore, share: number, wall: number): boolean =>
  holeDistance(holeOfBore({ ...a, depth: a.depth * share }), holeOfBore({ ...b, depth: b.depth * share }))
    .distance >= wall;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
