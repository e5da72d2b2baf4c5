import { type Similarity, STAY, transformRegion, type Vec, type Vec3 } from '../../geometry/index.ts';
import { grainAt } from '../../sketch/index.ts';
import { frameInPart } from '../contact/frame-in-part.ts';
import type { InsertPlace, JointPlace } from '../joint-rules/index.ts';
import { fibresIn, type JointPair, type Side, sidesOf } from './joint-pair.ts';
import { keyOfRegions } from './key-of-regions.ts';
import type { Shop } from './shop.ts';
import { woodBehind } from './wood-behind.ts';

/** A contact as the rules of the trade lay it out, and the way back from there. */
export interface PlaceAndBack {
  readonly place: JointPlace;
  /** Wood behind the middle of the contact alone, mm, in each part. */
  readonly behindMiddle: () => JointPlace['behind'];
  readonly back: (place: InsertPlace) => InsertPlace;
}

/** The four ways in which a contact can be turned over within its frame. */
const WAYS: readonly { readonly x: 1 | -1; readonly y: 1 | -1; readonly by: Similarity }[] = [
  { x: 1, y: 1, by: STAY },
  { x: -1, y: 1, by: { ...STAY, mirrored: true } },
  { x: 1, y: -1, by: { ...STAY, mirrored: true, turn: Math.PI } },
  { x: -1, y: -1, by: { ...STAY, turn: Math.PI } },
];

/**
 * What the rules are asked of. Of a contact and its mirror images always the same one is laid out, so that mirrored copies get
 * mirrored joints.
 */
export function jointPlace(pair: JointPair, { pocketsOf }: Pick<Shop, 'pocketsOf'>): PlaceAndBack {
  const { contact } = pair;
  const [a, b] = sidesOf(pair);
  const turned = WAYS.map(({ by, ...way }) => {
    const regions = contact.regions.map((region) => transformRegion(region, by));
    return { ...way, regions, key: keyOfRegions(regions) };
  });
  const { x, y, regions } = turned.reduce((first, each) => (each.key < first.key ? each : first));
  const flip = (p: Vec): Vec => ({ x: x * p.x, y: y * p.y });
  const behind = (shares?: readonly number[]): JointPlace['behind'] => [
    woodBehind(contact, a, pocketsOf(a.part.id), shares),
    woodBehind(contact, b, pocketsOf(b.part.id), shares),
  ];
  const place: JointPlace = {
    contact: regions,
    behind: behind(),
    grain: [fibresOf(pair, a), fibresOf(pair, b)],
  };
  return {
    place,
    behindMiddle: () => behind([0]),
    back: ({ from, to, radius }) => ({ from: flip(from), to: flip(to), radius }),
  };
}

/** Direction of a part's fibres where the joint lies, in the joint's frame. */
export function fibresOf({ contact }: JointPair, { part }: Side): Vec3 {
  const at = frameInPart(part, contact.frame).origin;
  return fibresIn(contact.frame, part, grainAt(part.drawn, at));
}
