import {
  areaOfRegions,
  centroidOfRegions,
  intersectRegions,
  LAY_AREA,
  LAY_TURN,
  offsetRegions,
  type Region,
  STAY,
  subtractRegions,
  transformPoint,
  transformRegion,
} from '../../geometry/index.ts';
import type { Board } from '../boards/api.ts';
import { offTheGrain } from '../boards/off-the-grain.ts';
import type { Patch, PatchPlace, PatchPlaceFault } from './api.ts';

/** The plug where it is to be cut, in the board's plane. */
export function plugAt({ plug, centre, grain }: Patch, { at, turned }: PatchPlace): readonly Region[] {
  const turn = turned - grain;
  const moved = transformPoint(centre, { ...STAY, turn });
  const shift = { x: at.x - moved.x, y: at.y - moved.y };
  return plug.map((region) => transformRegion(region, { ...STAY, turn, shift }));
}

/**
 * Everything that is wrong with a place for the plug, chosen by hand over the board's offcut: plug off the offcut, over a defect, its grain
 * off the board's; `little-support` when only the groove round it, a cutter wide, runs off, so that the plug is held on fewer sides
 * while it is cut and tears out there.
 */
export function checkPatchPlace(
  patch: Patch,
  place: PatchPlace,
  {
    board,
    offcut,
    cutter,
    grainWithin,
  }: {
    readonly board: Pick<Board, 'kind' | 'grain' | 'defects'>;
    readonly offcut: Region;
    /** Diameter, mm. */
    readonly cutter: number;
    readonly grainWithin: number;
  },
): readonly PatchPlaceFault[] {
  const faults: PatchPlaceFault[] = [];
  const plug = plugAt(patch, place);
  const add = (kind: PatchPlaceFault['kind'], regions: readonly Region[]): boolean => {
    const measured = areaOfRegions(regions);
    if (measured <= LAY_AREA) return false;
    faults.push({ kind, at: centroidOfRegions(regions), measured, limit: 0 });
    return true;
  };
  const isOff = add('off-the-offcut', subtractRegions(plug, [offcut]));
  if (!isOff) add('little-support', subtractRegions(offsetRegions(plug, cutter), [offcut]));
  for (const { region } of board.defects) add('over-a-defect', intersectRegions(plug, [region]));
  const off = offTheGrain(board, { grain: patch.grain }, place);
  if (off > grainWithin + LAY_TURN) faults.push({ kind: 'off-the-grain', measured: off, limit: grainWithin });
  return faults;
}
