import { RESIDUE_TOLERANCE } from '../../geometry/index.ts';
import {
  glueArea,
  type JointLayout,
  type JointOutcome,
  type JointPlace,
  layOutDowels,
  layOutLooseTenons,
} from '../joint-rules/index.ts';
import type { Bore, GlueFacts } from './api.ts';
import { findingsOfBores } from './findings-of-bores.ts';
import { boreOf, type JointPair, type MadeJoint, type Side, sidesOf } from './joint-pair.ts';
import { jointPlace } from './joint-place.ts';
import { noneFits } from './none-fits.ts';
import type { Shop } from './shop.ts';

type Behind = JointPlace['behind'];

/** Times that a joint is laid out anew with the wood that is behind its places. */
const MOST_TRIES = 4;

/** Loose tenons or dowels from the maker's list, their mortises or holes drilled square to the contact into both parts. */
export function insertJoint(pair: JointPair, shop: Shop): MadeJoint {
  const isDowel = pair.sketch.kind === 'dowels';
  const rules = isDowel ? shop.dowelRules : shop.tenonRules;
  const [a, b] = sidesOf(pair);
  const { place: start, behindMiddle, key, back } = jointPlace(pair, shop);
  const boresAt = ({ places, mortise }: JointLayout): readonly [readonly Bore[], readonly Bore[]] => {
    const bores = (side: Side, depth: number) => places.map((each) => boreOf(pair, side, back(each), depth));
    return [bores(a, mortise[0]), bores(b, mortise[1])];
  };
  const layOut = (place: JointPlace): JointOutcome =>
    shop.laidOut(
      `${pair.sketch.kind} ${key} ${place.behind.map((wood) => Math.round(wood * 1e5)).join(' ')}`,
      () =>
        isDowel ? layOutDowels(place, shop.dowels, rules) : layOutLooseTenons(place, shop.looseTenons, rules),
    );
  const isDeepEnough = (
    layout: JointLayout,
  ): { readonly each: readonly boolean[]; readonly behind: Behind } => {
    const reach = boresAt(layout).map((bores, at) =>
      bores.map((bore) => bore.depth + (shop.walls([a, b][at]!.part, bore).bottom?.wood ?? Infinity)),
    );
    const need = layout.mortise.map((depth) => depth + rules.bottomWall - RESIDUE_TOLERANCE);
    return {
      each: layout.places.map((_, k) => reach.every((each, at) => each[k]! >= need[at]!)),
      behind: [Math.min(...reach[0]!), Math.min(...reach[1]!)],
    };
  };
  /**
   * Behind a place there may be less wood than behind the middle of the contact: then laid out once more with that, as often as it takes, or without
   * the places that are too shallow. Nothing where too few are left.
   */
  const settle = (first: JointLayout): JointLayout | undefined => {
    let layout = first;
    for (let k = 0; k < MOST_TRIES; k++) {
      const { each, behind } = isDeepEnough(layout);
      if (each.every(Boolean)) return layout;
      const again = layOut({ ...start, behind });
      if (!again.fits) return withPlaces(layout, each, start, rules.leastCount);
      layout = again.layout;
    }
    return withPlaces(layout, isDeepEnough(layout).each, start, rules.leastCount);
  };
  const first = layOut(start);
  const settledFrom = (outcome: JointOutcome) => (outcome.fits ? settle(outcome.layout) : undefined);
  // On a slant the wood is shallow at one end of a contact: in its middle there may be enough.
  const settled = settledFrom(first) ?? settledFrom(layOut({ ...start, behind: behindMiddle }));
  const layout = settled ?? (first.fits ? first.layout : noneFits(pair, first.fault, shop));
  if ('code' in layout) return withoutWork(pair, [layout]);
  const works = boresAt(layout);
  const { places } = layout;
  const { thickness, width, length } = layout.size;
  const count = places.length;
  return {
    sides: [
      { part: pair.a.id, work: works[0] },
      { part: pair.b.id, work: works[1] },
    ],
    loose: isDowel
      ? { kind: 'dowel', size: { diameter: thickness, length }, count }
      : { kind: 'tenon', size: { thickness, width, length }, count },
    glue: weaker(layout),
    findings: [
      ...findingsOfBores(pair, a, works[0], rules, shop),
      ...findingsOfBores(pair, b, works[1], rules, shop),
    ],
  };
}

/** A layout with those of its places that are wanted; nothing where they are too few. */
function withPlaces(
  layout: JointLayout,
  wanted: readonly boolean[],
  { grain }: JointPlace,
  least: number,
): JointLayout | undefined {
  const places = layout.places.filter((_, k) => wanted[k]);
  if (places.length < Math.max(1, least)) return undefined;
  const glue = [
    glueArea(places, layout.into[0], grain[0]),
    glueArea(places, layout.into[1], grain[1]),
  ] as const;
  return { ...layout, places, glue };
}

/** A joint that asks nothing of its parts. */
export const withoutWork = (pair: JointPair, findings: MadeJoint['findings']): MadeJoint => ({
  sides: [
    { part: pair.a.id, work: [] },
    { part: pair.b.id, work: [] },
  ],
  glue: { area: 0, longGrain: 0 },
  findings,
});

/** The glue of that part in which less of it is long grain. */
function weaker({ glue: [a, b] }: JointLayout): GlueFacts {
  const { total, longGrain } = b.longGrain < a.longGrain ? b : a;
  return { area: total, longGrain: longGrain / total };
}
