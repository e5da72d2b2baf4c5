import type { Problem } from '../../core/index.ts';
import { areaOfRegions } from '../../geometry/index.ts';
import { formatLength, RAD_PER_DEGREE } from '../../measure/index.ts';
import {
  accountOfBoard,
  checkPatchPlace,
  offcutAt,
  type PatchPlace,
  type PatchPlaceFault,
} from '../../wood/index.ts';
import type { Design, TypedWood } from '../design-schema.ts';
import type { DesignLayout } from '../lay/lay-design.ts';
import { angleAt } from '../lay/resolve-boards.ts';
import { measureReader } from '../typed-measures.ts';
import { type ResolvedPatch, resolvePatch } from './resolve-patch.ts';

type TypedPatchPlace = NonNullable<TypedWood['patches']>[number];

/** Where the plug of a patch is to be cut, and what is wrong with that. */
export interface PlacedPatch {
  readonly board: string;
  readonly place: PatchPlace;
  readonly faults: readonly PatchPlaceFault[];
}

/** A patch of a design; problems where it cannot be read. */
export interface DesignPatch {
  readonly typed: TypedPatchPlace;
  readonly resolved?: ResolvedPatch;
  readonly placed?: PlacedPatch;
  readonly problems: readonly Problem[];
}

const PLACE = { least: 0, most: 20_000 };
/** Decimals of mm and of degrees. */
const DECIMALS = 3;
const ANGLE_DECIMALS = 4;

/**
 * The patches of a design with the place of each on its board, checked against what is left of it there. One that names no place lies in
 * the middle of its board, along its grain.
 */
export function patchesOfDesign(design: Design, layout: DesignLayout): readonly DesignPatch[] {
  return (design.wood?.patches ?? []).map((typed, at): DesignPatch => {
    const path = `wood.patches.${at}`;
    const resolved = resolvePatch(design, typed, `${path}.`);
    if (!resolved.ok) return { typed, problems: resolved.problems };
    const account = accountFor(layout, typed.board);
    if (account === undefined) return { typed, resolved: resolved.value, problems: [] };
    const { board } = account;
    const reader = measureReader(design.units.length);
    const problems: Problem[] = [];
    const centre = {
      x: typed.x === undefined ? board.length / 2 : reader.length(typed.x, `${path}.x`, PLACE),
      y: typed.y === undefined ? board.width / 2 : reader.length(typed.y, `${path}.y`, PLACE),
    };
    const turned =
      typed.turned === undefined ? board.grain : angleAt(typed.turned, `${path}.turned`, problems);
    const all = [...reader.problems, ...problems];
    if (all.length > 0) return { typed, resolved: resolved.value, problems: all };
    const { patch, tooling } = resolved.value;
    const place = { at: centre, turned };
    const offcut = offcutAt(account.offcuts, centre);
    const faults: readonly PatchPlaceFault[] =
      offcut === undefined
        ? [{ kind: 'off-the-offcut', at: centre, measured: areaOfRegions(patch.plug), limit: 0 }]
        : checkPatchPlace(patch, place, {
            board,
            offcut,
            cutter: tooling.cutter,
            grainWithin: layout.search.rules.grainWithin,
          });
    return {
      typed,
      resolved: resolved.value,
      placed: { board: board.name, place, faults },
      problems: [],
    };
  });
}

/** Of the board named, else of the first one of solid wood. */
function accountFor({ boards, account, search }: DesignLayout, name: string | undefined) {
  const board = boards.find((each) =>
    name === undefined ? each.board.kind === 'board' : each.board.name === name,
  )?.board;
  if (board === undefined) return undefined;
  return account.boards.find((each) => each.board === board) ?? accountOfBoard(board, [], search.rules);
}

/** A place for a plug as it is kept in a design. */
export function typedPatchPlace({ at, turned }: PatchPlace): Pick<TypedPatchPlace, 'x' | 'y' | 'turned'> {
  const inMm = (mm: number): string => formatLength(Math.max(0, mm), { unit: 'mm', decimals: DECIMALS });
  return {
    x: inMm(at.x),
    y: inMm(at.y),
    turned: `${Number((turned / RAD_PER_DEGREE).toFixed(ANGLE_DECIMALS))}°`,
  };
}
