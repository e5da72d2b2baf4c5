import type { Problem } from '../../core/index.ts';
import { formatLength, RAD_PER_DEGREE } from '../../measure/index.ts';
import type { Lying, ToLay } from '../../wood/index.ts';
import type { Design, TypedWood } from '../design-schema.ts';
import { measureReader } from '../typed-measures.ts';
import { angleAt } from './resolve-boards.ts';

type TypedPlacement = NonNullable<TypedWood['placements']>[number];

export interface ReadPlacement {
  readonly lying: Lying;
  readonly typed: TypedPlacement;
}

const PLACE = { least: 0, most: 20_000 };

/** Decimals of mm and of degrees: a tenth of what counts as lying over something. */
const DECIMALS = 3;
const ANGLE_DECIMALS = 4;

/**
 * Placements as typed, each of the first thing to lay that it can mean: the same part, on a board that it may come from, by the pieces where
 * they are named. One that means nothing keeps its part's name, so that the check can say so.
 */
export function readPlacements(
  { wood = {}, units }: Pick<Design, 'wood' | 'units'>,
  toLay: readonly ToLay[],
): { readonly placements: readonly ReadPlacement[]; readonly problems: readonly Problem[] } {
  const reader = measureReader(units.length);
  const problems: Problem[] = [];
  const taken = new Set<string>();
  const placements = (wood.placements ?? []).map((typed, at): ReadPlacement => {
    const path = `wood.placements.${at}`;
    const candidates = toLay.filter(
      ({ id, part, boards }) => part === typed.part && boards.includes(typed.board) && !taken.has(id),
    );
    const named = candidates.find(({ pieces }) => typed.pieces?.join() === pieces.join());
    const id = (named ?? candidates[0])?.id ?? `${typed.part}, which is not wanted there`;
    taken.add(id);
    const lying: Lying = {
      id,
      board: typed.board,
      at: { x: reader.length(typed.x, `${path}.x`, PLACE), y: reader.length(typed.y, `${path}.y`, PLACE) },
      turned: angleAt(typed.turned ?? 0, `${path}.turned`, problems),
      mirrored: typed.mirrored ?? false,
    };
    return { lying, typed };
  });
  return { placements, problems: [...problems, ...reader.problems] };
}

/** A place as it is kept in a design: rounded, in the design's millimetres or in inches as decimals never are, so always in mm. */
export function typedPlacement(
  { id, board, at, turned, mirrored }: Lying,
  toLay: readonly ToLay[],
): TypedPlacement {
  const { part, pieces } = toLay.find((each) => each.id === id)!;
  const degrees = Number((turned / RAD_PER_DEGREE).toFixed(ANGLE_DECIMALS));
  return {
    board,
    part,
    pieces: [...pieces],
    x: inMm(at.x),
    y: inMm(at.y),
    ...(degrees === 0 ? {} : { turned: `${degrees}°` }),
    ...(mirrored ? { mirrored } : {}),
  };
}

function inMm(mm: number): string {
  return formatLength(Math.max(0, mm), { unit: 'mm', decimals: DECIMALS });
}
