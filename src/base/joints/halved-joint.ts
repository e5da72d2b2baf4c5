import type { Finding } from '../../core/index.ts';
import {
  add3,
  areaOfRegions,
  boundsOfRegions,
  CONTACT_AREA,
  CONTACT_TOLERANCE,
  CONTACT_TURN,
  cross3,
  dot3,
  type Frame,
  intersectRegions,
  length3,
  POSITION_TOLERANCE,
  pointToWorld,
  type Region,
  scale3,
  transformRegion,
} from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import { similarityTo } from '../contact/similarity-to.ts';
import type { Joint, Pocket } from './api.ts';
import { cornersOfPocket } from './corners-of-pocket.ts';
import type { Shop } from './shop.ts';

/** Two parts that cross with their faces parallel. */
export interface Crossing {
  readonly id: string;
  readonly sketch: { readonly name: string; readonly label: string };
  readonly a: PlacedPart;
  readonly b: PlacedPart;
}

/** Heights along the first part's face normal, mm. */
interface Slab {
  readonly low: number;
  readonly high: number;
}

/**
 * The joint of two parts that cross in parallel planes: the wood that they share is parted half way, each losing the half that looks at the other.
 * Which is the lower, seen square to the first part's face, the middles of their thicknesses say; of two that lie level the first is.
 * Nothing where they do not cross, or where their faces are not parallel.
 */
export function halvedJoint(
  { id, sketch, a, b }: Crossing,
  shop: Shop,
): (Pick<Joint, 'sides' | 'glue' | 'findings'> & { readonly frame: Frame }) | undefined {
  if (length3(cross3(a.frame.z, b.frame.z)) > CONTACT_TURN) return undefined;
  const [slabA, slabB] = [slabOf(a, a.frame), slabOf(b, a.frame)];
  const shared = { low: Math.max(slabA.low, slabB.low), high: Math.min(slabA.high, slabB.high) };
  if (shared.high - shared.low < CONTACT_TOLERANCE) return undefined;
  const to = similarityTo(b.frame, a.frame);
  const region = intersectRegions(
    a.silhouette,
    b.silhouette.map((each) => transformRegion(each, to)),
  );
  const area = areaOfRegions(region);
  if (area < CONTACT_AREA) return undefined;
  const parting = (shared.low + shared.high) / 2;
  const isLower = middleOf(slabA) <= middleOf(slabB) + POSITION_TOLERANCE;
  const [lostA, lostB] = isLower
    ? [
        { low: parting, high: slabA.high },
        { low: slabB.low, high: parting },
      ]
    : [
        { low: slabA.low, high: parting },
        { low: parting, high: slabB.high },
      ];
  const back = similarityTo(a.frame, b.frame);
  const pockets = [
    pocketOf(id, a, region, lostA, a.frame, shop),
    pocketOf(
      id,
      b,
      region.map((each) => transformRegion(each, back)),
      lostB,
      a.frame,
      shop,
    ),
  ] as const;
  const sides = [
    { part: a.id, work: [pockets[0]] },
    { part: b.id, work: [pockets[1]] },
  ] as const;
  const findings = [
    ...thinned(sketch.label, a, pockets[0], shop),
    ...thinned(sketch.label, b, pockets[1], shop),
  ];
  // The floors are faces of both parts, their fibres along them; what stands across the grain at the shoulders is not counted.
  const frame = frameOfCrossing(a.frame, region, parting, isLower);
  return { sides, glue: { area, longGrain: 1 }, findings, frame };
}

/** Between which heights over the first part's face plane a part lies. */
function slabOf({ frame, drawn }: PlacedPart, over: Frame): Slab {
  const top = dot3(over.z, add3(frame.origin, scale3(over.origin, -1)));
  const bottom = top - drawn.thickness * Math.sign(dot3(frame.z, over.z));
  return { low: Math.min(top, bottom), high: Math.max(top, bottom) };
}

const middleOf = ({ low, high }: Slab): number => (low + high) / 2;

function pocketOf(
  joint: string,
  part: PlacedPart,
  region: readonly Region[],
  lost: Slab,
  over: Frame,
  { cutter }: Shop,
): Pocket {
  const { low, high } = slabOf(part, over);
  // Depths under the part's own face side.
  const isUp = dot3(part.frame.z, over.z) > 0;
  const [fromZ, toZ] = isUp ? [lost.high - high, lost.low - high] : [low - lost.low, low - lost.high];
  const corners = cornersOfPocket(region, part.silhouette, cutter / 2);
  return { kind: 'pocket', joint, region, fromZ, toZ, corners };
}

/** Is enough of a part left? */
function thinned(label: string, part: PlacedPart, { fromZ, toZ }: Pocket, shop: Shop): readonly Finding[] {
  const { say, tenonRules } = shop;
  const depth = fromZ - toZ;
  const left = part.drawn.thickness - depth;
  if (left >= tenonRules.bottomWall - CONTACT_TOLERANCE) return [];
  return [
    {
      code: left <= 0 ? 'joint.breaks-through' : 'joint.wall-thin',
      severity: left <= 0 ? 'stop' : 'caution',
      part: part.drawn.name,
      edges: [],
      message: `${label}: the halving, ${say(depth)} deep, leaves ${say(Math.max(0, left))} of ${part.label}.`,
      measured: { value: left, unit: 'mm' },
      limit: { value: tenonRules.bottomWall, unit: 'mm' },
      cure: `${say(tenonRules.bottomWall - left)} more thickness, or as much less overlap, would leave ${say(tenonRules.bottomWall)}.`,
    },
  ];
}

/** Where the halves lie on each other: z from the first part's into the second's, x along the longer way of the crossing. */
function frameOfCrossing(over: Frame, region: readonly Region[], level: number, isLower: boolean): Frame {
  const box = boundsOfRegions(region);
  const at = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2, z: level };
  const x = box.maxY - box.minY > box.maxX - box.minX + POSITION_TOLERANCE ? over.y : over.x;
  const z = isLower ? over.z : scale3(over.z, -1);
  return { origin: pointToWorld(over, at), x, y: cross3(z, x), z };
}
