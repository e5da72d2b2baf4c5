import { add3, areaOfRegions, pointToWorld, scale3, type Vec3 } from '../../geometry/index.ts';
import { GLUE_SPREAD, type Wood, woodCalled } from '../../materials/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Joint, JointWork } from '../joints/api.ts';
import type { MeasuredBase } from '../solids/index.ts';

/** What joints put into a base. */
export interface JoineryMass {
  /** Loose tenons and dowels, kg; weighed in with the base. */
  readonly loose: number;
  /** What they are reckoned in. */
  readonly looseWood: string;
  /** What glue leaves behind once it is dry, kg: an estimate that is not weighed in. */
  readonly glue: number;
  /** All glued faces, mm². */
  readonly glued: number;
}

/** Loose tenons and dowels as they are sold: common practice. */
const LOOSE_WOOD = 'American beech';
/** kg/m³ to kg/mm³. */
const PER_MM3 = 1e-9;

/**
 * Weights with what joints take out of parts and put in: mortises and holes out, tenons of the parts' own wood and loose ones in. Loose tenons
 * are reckoned with round edges, as the cutter leaves their mortises. Centres of mass move with it: what is taken or put sits at the
 * mouth of its mortise.
 */
export function withJoinery(
  bare: MeasuredBase,
  joints: readonly Joint[],
  parts: readonly PlacedPart[],
  woodOf: (part: PlacedPart) => Wood,
): { readonly measured: MeasuredBase; readonly joinery: JoineryMass } {
  const looseWood = woodCalled(LOOSE_WOOD)!;
  const partOf = new Map(parts.map((part) => [part.id, part]));
  const changes = joints
    .flatMap(({ sides }) => sides)
    .flatMap(({ part, work }) =>
      work.map((each) => ({
        part,
        volume: volumeOf(each),
        at: each.kind === 'pocket' ? undefined : pointToWorld(partOf.get(part)!.frame, each.own.origin),
      })),
    );
  const weighed = bare.parts.map((each) => {
    const own = changes.filter(({ part }) => part === each.part);
    const volume = each.volume + own.reduce((sum, change) => sum + change.volume, 0);
    const moment = own.reduce(
      (sum, change) => (change.at === undefined ? sum : add3(sum, scale3(change.at, change.volume))),
      scale3(each.centre, each.volume),
    );
    const density = woodOf(partOf.get(each.part)!).density;
    return { ...each, volume, mass: volume * PER_MM3 * density, centre: scale3(moment, 1 / volume) };
  });
  const loose = joints.map((joint) => ({
    mass: volumeOfLoose(joint) * PER_MM3 * looseWood.density,
    at: joint.contact?.frame.origin ?? bare.centre,
  }));
  const pieces: readonly { readonly mass: number; readonly at: Vec3 }[] = [
    ...weighed.map(({ mass, centre }) => ({ mass, at: centre })),
    ...loose,
  ];
  const mass = pieces.reduce((sum, each) => sum + each.mass, 0);
  const moment = pieces.reduce((sum, each) => add3(sum, scale3(each.at, each.mass)), { x: 0, y: 0, z: 0 });
  const glued = joints.reduce((sum, { glue }) => sum + glue.area, 0);
  return {
    measured: { parts: weighed, mass, centre: scale3(moment, 1 / mass) },
    joinery: {
      loose: loose.reduce((sum, each) => sum + each.mass, 0),
      looseWood: looseWood.name,
      glue: (glued * 1e-6 * GLUE_SPREAD.grams.value * GLUE_SPREAD.solids.value) / 1000,
      glued,
    },
  };
}

/** mm³ more of a part; pockets are taken out of its solid already. */
function volumeOf(work: JointWork): number {
  switch (work.kind) {
    case 'mortise':
    case 'hole':
      return -areaOfRegions([work.outline]) * work.depth;
    case 'tenon':
      return areaOfRegions([work.outline]) * work.length;
    case 'pocket':
      return 0;
    default:
      return work satisfies never;
  }
}

/** mm³ of all loose tenons or dowels of a joint. */
function volumeOfLoose({ loose }: Joint): number {
  if (loose === undefined) return 0;
  if (loose.kind === 'dowel')
    return loose.count * (Math.PI / 4) * loose.size.diameter ** 2 * loose.size.length;
  const { thickness, width, length } = loose.size;
  const section = thickness * (width - thickness) + (Math.PI / 4) * thickness ** 2;
  return loose.count * section * length;
}
