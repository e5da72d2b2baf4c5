import { once } from '../../core/index.ts';
import { RESIDUE_TOLERANCE } from '../../geometry/index.ts';
import type { InsertPlace, InsertSize, JointLayout, JointOutcome, JointPlace, RuleName } from './api.ts';
import { type Broken, depthsOfInsert } from './depths-of-insert.ts';
import { glueArea } from './glue-area.ts';
import { madeToMeasure } from './made-to-measure.ts';
import { roomAlong, rowsOfPlaces } from './rows-of-places.ts';
import type { FitRules } from './rules.ts';
import { thicknessOfContact } from './thickness-of-contact.ts';

/**
 * Lays out a joint from a list of sizes: of those that every rule allows, the one nearest to a third of the thickness, then the one with the
 * most long grain to glue; as many of it as fit. Otherwise says which rule the size that comes nearest breaks, and what made to measure
 * would fit.
 */
export function layOutJoint(place: JointPlace, sizes: readonly InsertSize[], rules: FitRules): JointOutcome {
  const thickness = place.thickness ?? thicknessOfContact(place.contact);
  const fromWanted = ({ thickness: own }: InsertSize): number =>
    Math.abs(own - rules.thicknessShare * thickness);
  const refused = new Map<InsertSize, Broken>();
  // Sizes of the best thickness that fits decide: the others need not be tried.
  for (const alike of groupsBy(sizes, fromWanted)) {
    const layouts: Laid[] = [];
    for (const size of alike) {
      const found = tryInsert(place, size, rules, thickness);
      if ('places' in found) layouts.push(found);
      else refused.set(size, found);
    }
    const [best] = layouts.sort((a, b) => glued(b) - glued(a));
    if (best === undefined) continue;
    const limitedBy = once(() => whatLimits(place, best.size, rules, thickness, best.places.length));
    return {
      fits: true,
      layout: {
        ...best,
        get limitedBy() {
          return limitedBy();
        },
      },
    };
  }
  const nearest = sizes
    .flatMap((size) => {
      const broken = refused.get(size);
      return broken === undefined ? [] : [{ size, ...broken }];
    })
    .sort((a, b) => STAGES.indexOf(b.rule) - STAGES.indexOf(a.rule) || bulk(a.size) - bulk(b.size))[0];
  const wouldFit = madeToMeasure(
    place,
    rules,
    thickness,
    (size) => 'places' in tryInsert(place, size, rules, thickness),
  );
  return {
    fits: false,
    fault: {
      code: 'joint.nothing-fits',
      ...(nearest === undefined ? {} : { nearest }),
      ...(wouldFit === undefined ? {} : { wouldFit }),
    },
  };
}

/** Rules in the order in which a size is held against them: one that breaks a later rule comes nearer. */
const STAGES: readonly RuleName[] = [
  'mostThicknessShare',
  'leastThickness',
  'wall',
  'contact',
  'lengthShare',
  'leastDepth',
  'depthShare',
  'bottomWall',
  'leastCount',
];

type Laid = Omit<JointLayout, 'limitedBy'>;

/** Groups of sizes with the same figure, the least figure first; in a group as they stand in the list. */
function groupsBy(
  sizes: readonly InsertSize[],
  figure: (size: InsertSize) => number,
): Iterable<InsertSize[]> {
  const groups = new Map<number, InsertSize[]>();
  for (const size of sizes.toSorted((a, b) => figure(a) - figure(b))) {
    const of = figure(size);
    const group = groups.get(of);
    if (group === undefined) groups.set(of, [size]);
    else group.push(size);
  }
  return groups.values();
}

const glued = ({ glue }: Laid): number => Math.min(glue[0].longGrain, glue[1].longGrain);
const bulk = ({ thickness, width, length }: InsertSize): number => thickness * width * length;

function tryInsert(place: JointPlace, size: InsertSize, rules: FitRules, thickness: number): Laid | Broken {
  const most = rules.mostThicknessShare * thickness;
  if (size.thickness > most + RESIDUE_TOLERANCE)
    return { rule: 'mostThicknessShare', measured: size.thickness, limit: most };
  if (size.thickness < rules.leastThickness - RESIDUE_TOLERANCE)
    return { rule: 'leastThickness', measured: size.thickness, limit: rules.leastThickness };
  const { places, rows } = mostPlaces(place, size, rules, thickness);
  if (places.length === 0) return whyNone(place, size, rules);
  const depths = depthsOfInsert(size.length, size.thickness, place.behind, rules);
  if ('rule' in depths) return depths;
  if (places.length < rules.leastCount)
    return { rule: 'leastCount', measured: places.length, limit: rules.leastCount };
  const glue = [0, 1].map((i) => glueArea(places, depths.into[i]!, place.grain[i]!));
  const [first, second] = glue as [JointLayout['glue'][0], JointLayout['glue'][1]];
  return { size, places, rows, ...depths, thickness, glue: [first, second] };
}

function mostPlaces(
  { contact }: JointPlace,
  size: InsertSize,
  rules: FitRules,
  thickness: number,
): { readonly places: readonly InsertPlace[]; readonly rows: 1 | 2 } {
  const one = rowsOfPlaces(contact, size, rules, 1, thickness);
  if (thickness < rules.twoRowsFrom - RESIDUE_TOLERANCE) return { places: one, rows: 1 };
  const two = rowsOfPlaces(contact, size, rules, 2, thickness);
  return two.length > one.length ? { places: two, rows: 2 } : { places: one, rows: 1 };
}

/** The rules that bound the number, each taken away in turn. */
const TAKEN_AWAY: readonly (readonly [RuleName, Partial<FitRules>])[] = [
  ['lengthShare', { lengthShare: Infinity }],
  ['spacing', { spacing: () => 0 }],
  ['shoulder', { shoulder: () => 0 }],
  ['wall', { wall: 0, shoulder: () => 0 }],
];

/** The first rule without which one more would fit; where several forbid it, the first that does so by itself. */
function whatLimits(
  place: JointPlace,
  size: InsertSize,
  rules: FitRules,
  thickness: number,
  count: number,
): RuleName {
  const holdsMore = (without: Partial<FitRules>): boolean =>
    mostPlaces(place, size, { ...rules, ...without }, thickness).places.length > count;
  const decides = TAKEN_AWAY.find(([, without]) => holdsMore(without));
  if (decides !== undefined) return decides[0];
  const alone = TAKEN_AWAY.find(([name]) => {
    const others = TAKEN_AWAY.filter(([other]) => other !== name).map(([, without]) => without);
    return !holdsMore(Object.assign({}, ...others, keptBy(name, rules)));
  });
  const all = TAKEN_AWAY.map(([, without]) => without);
  return alone !== undefined && holdsMore(Object.assign({}, ...all)) ? alone[0] : 'contact';
}

function keptBy(name: RuleName, rules: FitRules): Partial<FitRules> {
  const { lengthShare, spacing, shoulder, wall } = rules;
  switch (name) {
    case 'lengthShare':
      return { lengthShare };
    case 'spacing':
      return { spacing };
    case 'shoulder':
      return { shoulder };
    default:
      return { wall };
  }
}

/** Which rule leaves no place at all for a size: its walls, its length as a share of the joint's, or the room in the joint itself. */
function whyNone({ contact }: JointPlace, size: InsertSize, rules: FitRules): Broken {
  const wall = (thicknessOfContact(contact) - size.thickness) / 2;
  if (wall < rules.wall - RESIDUE_TOLERANCE) return { rule: 'wall', measured: wall, limit: rules.wall };
  const room = roomAlong(contact, size.thickness, rules);
  if (room === undefined || room.width < size.width - 2 * RESIDUE_TOLERANCE)
    return { rule: 'contact', measured: room?.width ?? 0, limit: size.width };
  return { rule: 'lengthShare', measured: size.width / room.long, limit: rules.lengthShare };
}
