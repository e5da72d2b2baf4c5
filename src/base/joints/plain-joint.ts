import type { Finding } from '../../core/index.ts';
import { layOutDowels } from '../joint-rules/index.ts';
import { withoutWork } from './insert-joint.ts';
import { type JointPair, type MadeJoint, type Side, sidesOf } from './joint-pair.ts';
import { fibresOf, jointPlace } from './joint-place.ts';
import type { Shop } from './shop.ts';

/** Glued face to face, or screwed: the first part is screwed down onto the second. */
export function plainJoint(pair: JointPair, shop: Shop): MadeJoint {
  const ends = sidesOf(pair).filter((side) => isEndGrain(pair, side));
  const glue = { area: pair.contact.area, longGrain: ends.length === 0 ? 1 : 0 };
  if (pair.sketch.kind === 'screwed')
    return { ...withoutWork(pair, screwInEnd(pair, ends)), glue, screw: shop.screw };
  return { ...withoutWork(pair, gluedEnd(pair, ends, shop)), glue };
}

/** The fibres of a part come out of a face steeper than 45°, as in glueArea. */
function isEndGrain(pair: JointPair, side: Side): boolean {
  const { z } = fibresOf(pair, side);
  return Math.abs(z) > Math.SQRT1_2 + 1e-9;
}

function gluedEnd(pair: JointPair, ends: readonly Side[], shop: Shop): readonly Finding[] {
  const { sketch, contact, a, b } = pair;
  const [side] = ends;
  if (side === undefined) return [];
  return [
    {
      code: 'joint.end-grain',
      severity: 'caution',
      part: side.part.drawn.name,
      edges: side.face.edges,
      message: `${sketch.label}: ${a.label} and ${b.label} are glued on the end grain of ${side.part.label}, which holds little.`,
      measured: { value: 0, unit: 'mm2' },
      limit: { value: contact.area, unit: 'mm2' },
      cure: dowelsInstead(pair, shop),
    },
  ];
}

/** Which dowels of the maker's would hold instead. */
function dowelsInstead(pair: JointPair, shop: Shop): string {
  const { dowels, dowelRules, say } = shop;
  const outcome = layOutDowels(jointPlace(pair, shop).place, dowels, dowelRules);
  if (!outcome.fits)
    return 'Loose tenons or dowels need more room than there is: let the parts meet along the grain.';
  const { size, places } = outcome.layout;
  return `${places.length} dowels of ${say(size.thickness)} by ${say(size.length)} would give it long grain to hold by.`;
}

/** Screws draw out of end grain at about half the load (common practice). */
function screwInEnd({ sketch }: JointPair, ends: readonly Side[]): readonly Finding[] {
  const side = ends.find(({ into }) => into === 1);
  if (side === undefined) return [];
  return [
    {
      code: 'joint.end-grain',
      severity: 'caution',
      part: side.part.drawn.name,
      edges: side.face.edges,
      message: `${sketch.label}: the screws run into the end grain of ${side.part.label} and draw out of it more easily.`,
      cure: 'Take screws half as long again, or join with a dowel set across the screw for it to bite into.',
    },
  ];
}
