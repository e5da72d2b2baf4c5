import { USUAL_WOOD_TYPED } from '../materials/index.ts';
import type { LengthUnit } from '../measure/index.ts';
import type { TypedWood } from './design-schema.ts';

type TypedPlan = NonNullable<TypedWood['resaw']>[number];
type TypedBoard = NonNullable<TypedWood['boards']>[number];
type TypedRoom = NonNullable<NonNullable<TypedWood['climate']>['room']>;
type TypedPatchPlace = NonNullable<TypedWood['patches']>[number];

/** A board resawn in half, with usual losses to be changed to the saw and planer in hand. */
export function usualResawPlan(name: string, unit: LengthUnit): TypedPlan {
  const { sawn, outer, show, back, ...plan } = USUAL_WOOD_TYPED.resaw[unit];
  return { name, ...plan, planing: { sawn, outer }, lastPlaning: { show, back } };
}

/** A board, or a sheet for templates, to begin with. */
export function usualBoard(name: string, kind: 'board' | 'sheet', unit: LengthUnit): TypedBoard {
  const sizes = USUAL_WOOD_TYPED[kind][unit];
  return kind === 'sheet' ? { name, kind, ...sizes } : { name, ...sizes };
}

/** A heated room over a year. */
export function usualRoom(): TypedRoom {
  const { dry, damp } = USUAL_WOOD_TYPED.room;
  return { dry, damp };
}

/** Moisture content of wood as joiners use it. */
export const USUAL_MADE: string = USUAL_WOOD_TYPED.room.made;

/** A patch to begin with; what to cut it with is left out where the design has a bushing of its own. */
export function usualPatch(name: string, unit: LengthUnit, hasBushing: boolean): TypedPatchPlace {
  const { cutter, bushing, along, across } = USUAL_WOOD_TYPED.patch;
  return {
    name,
    shape: 'boat',
    along: along[unit],
    across: across[unit],
    ...(hasBushing ? {} : { cutter, bushing }),
  };
}
