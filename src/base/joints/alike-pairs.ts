import {
  ANGLE_TOLERANCE,
  directionToFrame,
  POSITION_TOLERANCE,
  pointToFrame,
  type Similarity,
  STAY,
  transformRegion,
  type Vec3,
} from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import { otherHand } from '../stand/other-hand.ts';
import type { Pocket } from './api.ts';
import { keyOfRegions } from './key-of-regions.ts';

/** How the second part of a pair stands to the first: the same for pairs that are mirror images of each other. */
export interface Stance {
  /** Both shapes, and whether the parts are of one hand. */
  readonly shapes: string;
  /** In the first part's frame, as if that were left: where the second one's origin lies (mm), and its y and z axes. */
  readonly origin: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
}

/** Asks how pairs of the parts of one base stand, those with what halved joints take out of them. */
export function stancesOf(
  parts: readonly PlacedPart[],
  pocketsOf: (part: string) => readonly Pocket[],
): (a: PlacedPart, b: PlacedPart) => Stance {
  const shapes = shapesOf(parts, pocketsOf);
  return (a, b) => {
    const own = (v: Vec3): Vec3 => (a.hand === 'right' ? { x: -v.x, y: v.y, z: v.z } : v);
    return {
      shapes: `${shapes.get(a.id)} ${shapes.get(b.id)} ${a.hand === b.hand}`,
      origin: own(pointToFrame(a.frame, b.frame.origin)),
      y: own(directionToFrame(a.frame, b.frame.y)),
      z: own(directionToFrame(a.frame, b.frame.z)),
    };
  };
}

/** What tells apart the shapes of parts, by identity: the same for copies, of the other hand as well, that lose the same to pockets. */
function shapesOf(
  parts: readonly PlacedPart[],
  pocketsOf: (part: string) => readonly Pocket[],
): ReadonlyMap<string, string> {
  const kinds: { readonly place: string; readonly drawn: PlacedPart['drawn'] }[] = [];
  const named = parts.map((part): readonly [string, string] => {
    const { id, place, drawn } = part;
    const known = kinds.findIndex(
      (kind) => kind.place === place && (kind.drawn === drawn || otherHand(kind.drawn) === drawn),
    );
    if (known < 0) kinds.push({ place, drawn });
    const kind = known < 0 ? kinds.length - 1 : known;
    return [id, [kind, ...pocketsOf(id).map((pocket) => keyOfPocket(pocket, part))].join('|')];
  });
  return new Map(named);
}

const TURN_OVER: Similarity = { ...STAY, mirrored: true };

function keyOfPocket({ region, fromZ, toZ }: Pocket, { hand }: PlacedPart): string {
  const own = hand === 'right' ? region.map((each) => transformRegion(each, TURN_OVER)) : region;
  return [fromZ, toZ].map((z) => Math.round(z * 1e5)).join(' ') + keyOfRegions(own);
}

/** Do two pairs stand alike, or as mirror images of each other? */
export function standAlike(a: Stance, b: Stance): boolean {
  return (
    a.shapes === b.shapes &&
    isNear(a.origin, b.origin, POSITION_TOLERANCE) &&
    isNear(a.y, b.y, ANGLE_TOLERANCE) &&
    isNear(a.z, b.z, ANGLE_TOLERANCE)
  );
}

const isNear = (a: Vec3, b: Vec3, by: number): boolean =>
  Math.abs(a.x - b.x) <= by && Math.abs(a.y - b.y) <= by && Math.abs(a.z - b.z) <= by;
