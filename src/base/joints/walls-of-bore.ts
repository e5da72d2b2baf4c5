import { add3, RESIDUE_TOLERANCE, scale3 } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Hollow } from '../contact/without-pockets.ts';
import { type WallsLeft, wallsLeft } from '../joint-rules/index.ts';
import type { Bore } from './api.ts';
import { exitOfBore } from './exit-of-bore.ts';
import { drilledPart, holeOfBore } from './hole-of-bore.ts';
import { boreToPocket } from './wood-to-pocket.ts';

/** Least wood round a bore of a part, remembered. */
export type AskWalls = (part: PlacedPart, bore: Bore) => WallsLeft;

/** Asks for each bore once. */
export function rememberedWalls(pocketsOf: (part: string) => readonly Hollow[]): AskWalls {
  const known = new WeakMap<Bore, WallsLeft>();
  return (part, bore) => {
    const found =
      known.get(bore) ??
      upToPocket(
        upToExit(wallsLeft(holeOfBore(bore), drilledPart(part)), part, bore),
        bore,
        pocketsOf(part.id),
      );
    known.set(bore, found);
    return found;
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
