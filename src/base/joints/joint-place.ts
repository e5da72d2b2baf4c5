import { centroidOfRegions, type Region, STAY, transformRegion } from '../../geometry/index.ts';
import { grainAt } from '../../sketch/index.ts';
import { frameInPart } from '../contact/frame-in-part.ts';
import type { InsertPlace, JointPlace } from '../joint-rules/index.ts';
import { fibresIn, type JointPair, type Side, sidesOf } from './joint-pair.ts';
import type { Shop } from './shop.ts';
import { woodBehind } from './wood-behind.ts';

/** A contact as the rules of the trade lay it out, and the way back from there. */
export interface PlaceAndBack {
  readonly place: JointPlace;
  readonly back: (place: InsertPlace) => InsertPlace;
}

/** The middle of a contact that is this near (mm) to the middle of its box lies in it. */
const EVEN = 1e-6;

/**
 * What the rules are asked of. A lopsided contact is turned over along its long axis so that its heavier side lies up: so contacts that are
 * mirror images of each other get joints that are.
 */
export function jointPlace(pair: JointPair, { pocketsOf }: Pick<Shop, 'pocketsOf'>): PlaceAndBack {
  const { contact } = pair;
  const [a, b] = sidesOf(pair);
  const isOver = centroidOfRegions(contact.regions).y < -EVEN;
  const place: JointPlace = {
    contact: isOver ? contact.regions.map(turnOver) : contact.regions,
    behind: [woodBehind(contact, a, pocketsOf(a.part.id)), woodBehind(contact, b, pocketsOf(b.part.id))],
    grain: [fibresOf(pair, a), fibresOf(pair, b)],
  };
  const back = ({ from, to, radius }: InsertPlace): InsertPlace => ({
    from: { x: from.x, y: -from.y },
    to: { x: to.x, y: -to.y },
    radius,
  });
  return { place, back: isOver ? back : (each) => each };
}

const turnOver = (region: Region): Region =>
  transformRegion(region, { ...STAY, mirrored: true, turn: Math.PI });

/** Direction of a part's fibres where the joint lies, in the joint's frame. */
export function fibresOf({ contact }: JointPair, { part }: Side) {
  const at = frameInPart(part, contact.frame).origin;
  return fibresIn(contact.frame, part, grainAt(part.drawn, at));
}
