import {
  EQUILIBRIUM_SOURCE,
  equilibriumMoisture,
  FIBRE_SATURATION,
  LINEAR_MOISTURE,
  SLOT_PLAY,
  WOOD_SOURCES,
  type Wood,
} from '../../materials/index.ts';

/** How the growth rings lie in a wide board: flat-sawn moves by the tangential figure, quarter-sawn by the radial. */
export type Sawn = 'flat' | 'quarter';

/** Air that wood lives in for long: °C, and relative humidity as a share. */
export interface Climate {
  readonly celsius: number;
  readonly humidity: number;
}

/** ΔD = D · C · (M_F − M_I): size in mm, coefficient for 1 %, moisture contents in %. Wood Handbook FPL-GTR-190, Eq. 13-2; for 6 to 14 %. */
export function movementByCoefficient(size: number, coefficient: number, from: number, to: number): number {
  return size * coefficient * (to - from);
}

/**
 * ΔD = D (M_F − M_I) / (30 (100 %) / S − 30 + M_I) with the shrinkage S as a share: for any moisture content up to that where wood stops to
 * move (what lies above counts as that). Wood Handbook FPL-GTR-190, Eq. 13-3 (formula from memory).
 */
export function movementByShrinkage(size: number, shrinkage: number, from: number, to: number): number {
  const [start, end] = [Math.min(from, FIBRE_SATURATION), Math.min(to, FIBRE_SATURATION)];
  return (size * (end - start)) / (FIBRE_SATURATION / shrinkage - FIBRE_SATURATION + start);
}

export interface WidePart {
  /** Across the grain, mm, as made. */
  readonly width: number;
  readonly wood: Wood;
  readonly sawn: Sawn;
  /** Moisture content as made, %. */
  readonly made: number;
  readonly dry: Climate;
  readonly damp: Climate;
}

/** What a wide part does over the year. */
export interface SeasonalMovement {
  /** Moisture contents it comes to, %. */
  readonly driest: number;
  readonly dampest: number;
  /** By how much it gets narrower, and wider, than it was made, mm; 0 where it never does. */
  readonly shrinks: number;
  readonly swells: number;
  /** From narrowest to widest, mm. */
  readonly range: number;
  /** `coefficient` between 6 and 14 %, otherwise `shrinkage`. */
  readonly method: 'coefficient' | 'shrinkage';
  readonly sources: readonly string[];
}

/**
 * Movement of a wide part through the year, from the moisture content it was made at to those that the driest and the dampest air of
 * the room bring it to. Real boards lie between flat- and quarter-sawn, and a finish slows them: they move less than this.
 */
export function seasonalMovement({ width, wood, sawn, made, dry, damp }: WidePart): SeasonalMovement {
  const ends = [dry, damp].map(({ celsius, humidity }) => equilibriumMoisture(celsius, humidity));
  const [driest, dampest] = [Math.min(...ends), Math.max(...ends)];
  const side = sawn === 'flat' ? 'tangential' : 'radial';
  const isLinear = [driest, dampest, made].every(
    (moisture) => moisture >= LINEAR_MOISTURE.least && moisture <= LINEAR_MOISTURE.most,
  );
  const changeTo = (moisture: number): number =>
    isLinear
      ? movementByCoefficient(width, wood.change[side], made, moisture)
      : movementByShrinkage(width, wood.shrinkage[side], made, moisture);
  const [narrower, wider] = [changeTo(driest), changeTo(dampest)];
  return {
    driest,
    dampest,
    shrinks: Math.max(0, -narrower),
    swells: Math.max(0, wider),
    range: Math.max(0, wider) + Math.max(0, -narrower),
    method: isLinear ? 'coefficient' : 'shrinkage',
    sources: [EQUILIBRIUM_SOURCE, isLinear ? WOOD_SOURCES.change : WOOD_SOURCES.shrinkage],
  };
}

/** A slot across the grain for the screw that holds a top, mm. */
export interface FixingSlot {
  /** Overall, end to end. */
  readonly length: number;
  readonly width: number;
  /** Room beside the screw towards the line that is held still, and away from it, on the day it is made. */
  readonly inwards: number;
  readonly outwards: number;
}

/**
 * The slot in the base for a screw in the top, at a distance (mm) from the line where the top is held still. As the top shrinks the screw comes
 * nearer to that line, as it swells it goes away; a little play is shared between the ends. `hole` is the clearance hole, mm.
 */
export function fixingSlot(
  distance: number,
  width: number,
  { shrinks, swells }: Pick<SeasonalMovement, 'shrinks' | 'swells'>,
  hole: number,
): FixingSlot {
  const share = Math.abs(distance) / width;
  const play = SLOT_PLAY.value / 2;
  const [inwards, outwards] = [share * shrinks + play, share * swells + play];
  return { length: hole + inwards + outwards, width: hole, inwards, outwards };
}
