import { type AirOfYear, type Sawn, type SeasonalMovement, seasonalMovement } from '../../base/index.ts';
import type { Wood } from '../../materials/index.ts';

/** A board of a part, with its wood and how its growth rings lie. */
export interface BoardThatMoves {
  readonly part: string;
  readonly label: string;
  readonly wood: Wood;
  readonly sawn: Sawn;
  /** mm, across the grain: over the face, and through the board. */
  readonly width: number;
  readonly thickness: number;
}

export interface MovingPart extends BoardThatMoves {
  /** Over the face: by the tangential figure when flat-sawn, by the radial one when quarter-sawn. */
  readonly across: SeasonalMovement;
  /** Through the board: by the other figure. */
  readonly through: SeasonalMovement;
}

/**
 * What every part does across the grain over a year, widest movement first. Along the grain wood hardly moves. Real boards lie between flat-
 * and quarter-sawn, and a finish slows them: they move less than this.
 */
export function movementOfParts(
  boards: readonly BoardThatMoves[],
  { dry, damp, made }: AirOfYear,
): readonly MovingPart[] {
  return boards
    .map((board): MovingPart => {
      const { wood, sawn, width, thickness } = board;
      const air = { wood, made, dry, damp };
      return {
        ...board,
        across: seasonalMovement({ ...air, width, sawn }),
        through: seasonalMovement({
          ...air,
          width: thickness,
          sawn: sawn === 'flat' ? 'quarter' : 'flat',
        }),
      };
    })
    .toSorted((a, b) => b.across.range - a.across.range);
}
