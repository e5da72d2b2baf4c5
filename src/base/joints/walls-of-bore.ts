import { add3, RESIDUE_TOLERANCE, STAY, scale3, transformPoint, type Vec3 } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Hollow } from '../contact/without-pockets.ts';
import { type DrilledHole, type WallsLeft, wallsLeft } from '../joint-rules/index.ts';
import type { Bore } from './api.ts';
import { exitOfBore } from './exit-of-bore.ts';
import { drilledPart, holeOfBore } from './hole-of-bore.ts';
import { boreToPocket } from './wood-to-pocket.ts';

/** Least wood round a bore of a part, remembered: copies of a place have the same. */
export type AskWalls = (part: PlacedPart, bore: Bore) => WallsLeft;

/** Asks each bore of a place once for all its copies. Where on the part's surface the wood is least holds for the copy first asked. */
export function rememberedWalls(pocketsOf: (part: string) => readonly Hollow[]): AskWalls {
  const known = new Map<string, WallsLeft>();
  return (part, bore) => {
    const hole = holeOfBore(bore);
    const key = keyOf(part, hole);
    const found = known.get(key) ?? upToExit(wallsLeft(hole, drilledPart(part)), part, bore);
    known.set(key, found);
    return upToPocket(found, bore, pocketsOf(part.id));
  };
}

/** Something that stands into the bore between its ends comes before what lies behind those. */
function upToExit(walls: WallsLeft, part: PlacedPart, bore: Bore): WallsLeft {
  const { reach, on } = exitOfBore(part, bore);
  return endingAt(walls, bore, reach, on);
}

/** A pocket under a bore ends its wood before the part does. */
const upToPocket = (walls: WallsLeft, bore: Bore, pockets: readonly Hollow[]): WallsLeft =>
  endingAt(walls, bore, boreToPocket(bore, pockets), 'pocket');

function endingAt(walls: WallsLeft, { own, depth }: Bore, reach: number, on: string): WallsLeft {
  const wood = reach - depth;
  if (wood >= (walls.bottom?.wood ?? Infinity) - RESIDUE_TOLERANCE) return walls;
  return { ...walls, bottom: { wood, at: add3(own.origin, scale3(own.z, reach)), on } };
}

/** The same for all copies of a place that have the same bore, mirrored ones too: to a hundred-thousandth of a millimetre. */
function keyOf({ place, hand }: PlacedPart, { at, along, depth, radius, slot }: DrilledHole): string {
  const own = (v: Vec3): readonly number[] => {
    const { x, y } = hand === 'right' ? transformPoint(v, { ...STAY, mirrored: true }) : v;
    return [x, y, v.z];
  };
  // A slot runs either way.
  const run = slot === undefined ? [] : own(slot);
  const way = run.find((value) => Math.abs(value) > 1e-5) ?? 1;
  const figures = [...own(at), ...own(along), depth, radius, ...run.map((value) => value * Math.sign(way))];
  return `${place} ${figures.map((value) => Math.round(value * 1e5)).join(' ')}`;
}
