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

/** Loose tenons or dowels from the maker's list, their mortises or holes drilled square to the contact into both parts. */
export function insertJoint(pair: JointPair, shop: Shop): MadeJoint {
  const isDowel = pair.sketch.kind === 'dowels';
  const rules = isDowel ? shop.dowelRules : shop.tenonRules;
  const [a, b] = sidesOf(pair);
  const { place: start, key, back } = jointPlace(pair, shop);
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
  /** Behind a place there may be less wood than behind the middle of the contact: then laid out once more with that, or without the place. */
  const withWoodBehind = (layout: JointLayout): JointLayout => {
    const tried = boresAt(layout);
    const reach = tried.map((bores, at) =>
      bores.map((bore) => bore.depth + (shop.walls([a, b][at]!.part, bore).bottom?.wood ?? Infinity)),
    );
    const need = layout.mortise.map((depth) => depth + rules.bottomWall - RESIDUE_TOLERANCE);
    const isDeepEnough = layout.places.map((_, k) => reach.every((each, at) => each[k]! >= need[at]!));
    if (isDeepEnough.every(Boolean)) return layout;
    const behind = [Math.min(...reach[0]!), Math.min(...reach[1]!)] as const;
    const again = layOut({ ...start, behind });
    if (again.fits) return again.layout;
    const places = layout.places.filter((_, k) => isDeepEnough[k]);
    if (places.length < rules.leastCount) return layout;
    const glue = [
      glueArea(places, layout.into[0], start.grain[0]),
      glueArea(places, layout.into[1], start.grain[1]),
    ] as const;
    return { ...layout, places, glue };
  };
  const first = layOut(start);
  if (!first.fits) return withoutWork(pair, [noneFits(pair, first.fault, shop)]);
  const layout = withWoodBehind(first.layout);
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
