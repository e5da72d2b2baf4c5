import { cross, subtract, type Vec } from '../../geometry/index.ts';
import { USUAL_ERRORS } from '../../materials/index.ts';

/** A source of error: what one chance of it does, mm, and how many chances there are. */
export interface Contribution {
  readonly name: string;
  readonly each: number;
  readonly count: number;
}

export interface ErrorBudget {
  readonly contributions: readonly Contribution[];
  /** All errors the same way: their sum, mm. */
  readonly worst: number;
  /** Independent errors: the root of the sum of their squares, mm. */
  readonly likely: number;
}

/** Adds up errors, at worst and as root sum square. */
export function combineErrors(contributions: readonly Contribution[]): ErrorBudget {
  const worst = contributions.reduce((sum, { each, count }) => sum + count * Math.abs(each), 0);
  const squares = contributions.reduce((sum, { each, count }) => sum + count * each * each, 0);
  return { contributions, worst, likely: Math.sqrt(squares) };
}

/** Gap (mm) that an angle (rad) opens at the far side of a joint of this section (mm) when its near side is closed. */
export function gapFromAngle(section: number, angle: number): number {
  return section * Math.tan(Math.abs(angle));
}

/** How far (mm) the end of an arm (mm) moves when it turns by an angle (rad) at the joint: its chord. */
export function shiftFromAngle(arm: number, angle: number): number {
  return 2 * arm * Math.sin(Math.abs(angle) / 2);
}

/** How far a workshop is off: a saw's setting (rad), a length and a template (mm). */
export interface WorkErrors {
  readonly saw: number;
  readonly length: number;
  readonly template: number;
}

export const USUAL_WORK: WorkErrors = {
  saw: USUAL_ERRORS.sawSetting.value,
  length: USUAL_ERRORS.length.value,
  template: USUAL_ERRORS.template.value,
};

export interface ErrorsOfJoint {
  /** Gap at the joint: the saw's angle across its section, and the template's edge. */
  readonly gap: ErrorBudget;
  /** Shift at the foot: the saw's angle at the end of the arm, the length, and the template's edge. */
  readonly foot: ErrorBudget;
}

/** What the errors of a workshop do at one joint: its section across the gap and the arm from it to the foot, mm. */
export function errorsOfJoint(section: number, arm: number, work: WorkErrors = USUAL_WORK): ErrorsOfJoint {
  const template = { name: 'template', each: work.template, count: 1 };
  return {
    gap: combineErrors([{ name: 'saw', each: gapFromAngle(section, work.saw), count: 1 }, template]),
    foot: combineErrors([
      { name: 'saw', each: shiftFromAngle(arm, work.saw), count: 1 },
      { name: 'length', each: work.length, count: 1 },
      template,
    ]),
  };
}

/** Four feet on the floor, mm, in order round the base. */
export type FourFeet = readonly [Vec, Vec, Vec, Vec];

/**
 * Gap under the fourth foot when each of four legs is off in length by up to `off` mm: its height over the plane of the other three
 * is a weighted sum of all four, the weights being where it lies between them. A rectangle has weights of 1, −1, 1, −1: four times
 * `off` at worst, twice as root sum square. Nothing when three of the feet stand in one line.
 */
export function rockFromLegLengths([a, b, c, d]: FourFeet, off: number): ErrorBudget | undefined {
  const whole = cross(subtract(b, a), subtract(c, a));
  if (whole === 0) return undefined;
  const weights = [
    cross(subtract(c, b), subtract(d, b)),
    cross(subtract(a, c), subtract(d, c)),
    cross(subtract(b, a), subtract(d, a)),
  ].map((part) => part / whole);
  return combineErrors(
    [...weights.map((weight) => -weight), 1].map((weight, i) => ({
      name: `leg ${i + 1}`,
      each: weight * off,
      count: 1,
    })),
  );
}
