import type { Finding } from '../../core/index.ts';
import { boundsOfRegions, cross3, norm, slotOutline, vec } from '../../geometry/index.ts';
import { GRAIN_SLOPE } from '../../materials/index.ts';
import { frameInPart } from '../contact/frame-in-part.ts';
import { layOutTenon, type TenonLayout } from '../joint-rules/index.ts';
import type { Tenon } from './api.ts';
import { findingsOfBores } from './findings-of-bores.ts';
import { withoutWork } from './insert-joint.ts';
import { boreOf, boreWorld, type JointPair, type MadeJoint, sidesOf } from './joint-pair.ts';
import { fibresOf, jointPlace } from './joint-place.ts';
import { measuresOf } from './measures-of.ts';
import { noneFits } from './none-fits.ts';
import type { Shop } from './shop.ts';

/** A tenon on the first part, square to the contact, and its mortise in the second. */
export function tenonJoint(pair: JointPair, shop: Shop): MadeJoint {
  const { place, back } = jointPlace(pair, shop);
  const tools = [...new Set(shop.looseTenons.map(({ thickness }) => thickness))];
  const outcome = layOutTenon(place, tools, shop.tenonRules);
  if (!outcome.fits) return withoutWork(pair, [noneFits(pair, outcome.fault, shop)]);
  const layout = { ...outcome.layout, place: back(outcome.layout.place) };
  const [, second] = sidesOf(pair);
  const mortise = boreOf(pair, second, layout.place, layout.mortiseDepth);
  const { total, longGrain } = layout.glue;
  return {
    sides: [
      { part: pair.a.id, work: [tenonOf(pair, layout)] },
      { part: pair.b.id, work: [mortise] },
    ],
    glue: { area: total, longGrain: longGrain / total },
    findings: [...findingsOfBores(pair, second, [mortise], shop.tenonRules, shop), ...shortGrain(pair)],
  };
}

function tenonOf(pair: JointPair, { size, place: { from, to, radius } }: TenonLayout): Tenon {
  const [first] = sidesOf(pair);
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  // Out of the wood where a bore would run into it.
  const own = frameInPart(first.part, boreWorld(pair.contact.frame, 1, middle));
  const half = (size.width - size.thickness) / 2;
  const outline = {
    outer: slotOutline(vec(-half, 0), vec(half, 0), radius, { id: pair.id, role: 'joint' }),
    holes: [],
  };
  return {
    kind: 'tenon',
    joint: pair.id,
    face: first.face.name,
    own,
    outline,
    ...size,
    measures: measuresOf(first.part, first.face, own, boundsOfRegions([outline])),
  };
}

/** A tenon square to a slanting shoulder runs across the fibres of its own part. */
function shortGrain(pair: JointPair): readonly Finding[] {
  const [first] = sidesOf(pair);
  const fibres = fibresOf(pair, first);
  const across = cross3(fibres, { x: 0, y: 0, z: 1 });
  const slope = norm(across.x, across.y) / Math.abs(fibres.z);
  if (!(slope > GRAIN_SLOPE.caution)) return [];
  return [
    {
      code: 'joint.short-grain',
      severity: 'caution',
      part: first.part.drawn.name,
      edges: [first.face.name],
      message: `${pair.sketch.label}: square to its shoulder the tenon on ${first.part.label} runs across the grain, 1 in ${(1 / slope).toFixed(1)}.`,
      measured: { value: slope, unit: 'none' },
      limit: { value: GRAIN_SLOPE.caution, unit: 'none' },
      cure: `Loose tenons in both parts keep their own grain straight; or the shoulder is to slant by less than 1 in ${Math.round(1 / GRAIN_SLOPE.caution)}.`,
    },
  ];
}
