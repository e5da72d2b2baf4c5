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

/** A joint laid out, with its bores in either part. */
interface Bored {
  readonly layout: JointLayout;
  readonly bores: readonly [readonly Bore[], readonly Bore[]];
}

/** Loose tenons or dowels from the maker's list, their mortises or holes drilled square to the contact into both parts. */
export function insertJoint(pair: JointPair, shop: Shop): MadeJoint {
  const isDowel = pair.sketch.kind === 'dowels';
  const rules = isDowel ? shop.dowelRules : shop.tenonRules;
  const [a, b] = sidesOf(pair);
  const { place: start, behindMiddle, back } = jointPlace(pair, shop);
  const bored = (layout: JointLayout): Bored => {
    const bores = (side: Side, depth: number) =>
      layout.places.map((each) => boreOf(pair, side, back(each), depth));
    return { layout, bores: [bores(a, layout.mortise[0]), bores(b, layout.mortise[1])] };
  };
  const layOut = (place: JointPlace): JointOutcome =>
    isDowel ? layOutDowels(place, shop.dowels, rules) : layOutLooseTenons(place, shop.looseTenons, rules);
  const isDeepEnough = ({
    layout,
    bores,
  }: Bored): { readonly each: readonly boolean[]; readonly behind: Behind } => {
    const reach = bores.map((own, at) =>
      own.map((bore) => bore.depth + (shop.walls([a, b][at]!.part, bore).bottom?.wood ?? Infinity)),
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
  const settle = (first: JointLayout): Bored | undefined => {
    let now = bored(first);
    for (let k = 0; k < MOST_TRIES; k++) {
      const { each, behind } = isDeepEnough(now);
      if (each.every(Boolean)) return now;
      const again = layOut({ ...start, behind });
      if (!again.fits) return withPlaces(now, each, start, rules.leastCount);
      now = bored(again.layout);
    }
    return withPlaces(now, isDeepEnough(now).each, start, rules.leastCount);
  };
  const first = layOut(start);
  const settledFrom = (outcome: JointOutcome) => (outcome.fits ? settle(outcome.layout) : undefined);
  // On a slant the wood is shallow at one end of a contact: in its middle there may be enough.
  const settled = settledFrom(first) ?? settledFrom(layOut({ ...start, behind: behindMiddle() }));
  const made = settled ?? (first.fits ? bored(first.layout) : noneFits(pair, first.fault, shop));
  if ('code' in made) return withoutWork(pair, [made]);
  const { layout, bores } = made;
  const { thickness, width, length } = layout.size;
  const count = layout.places.length;
  return {
    sides: [
      { part: pair.a.id, work: bores[0] },
      { part: pair.b.id, work: bores[1] },
    ],
    loose: isDowel
      ? { kind: 'dowel', size: { diameter: thickness, length }, count }
      : { kind: 'tenon', size: { thickness, width, length }, count },
    glue: weaker(layout),
    findings: [
      ...findingsOfBores(pair, a, bores[0], rules, shop),
      ...findingsOfBores(pair, b, bores[1], rules, shop),
    ],
  };
}

/** A joint with those of its places that are wanted; nothing where they are too few. */
function withPlaces(
  { layout, bores }: Bored,
  wanted: readonly boolean[],
  { grain }: JointPlace,
  least: number,
): Bored | undefined {
  const places = layout.places.filter((_, k) => wanted[k]);
  if (places.length < Math.max(1, least)) return undefined;
  const glue = [
    glueArea(places, layout.into[0], grain[0]),
    glueArea(places, layout.into[1], grain[1]),
  ] as const;
  const left = (own: readonly Bore[]) => own.filter((_, k) => wanted[k]);
  return { layout: { ...layout, places, glue }, bores: [left(bores[0]), left(bores[1])] };
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
