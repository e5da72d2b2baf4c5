import type { Frame, Vec } from '../../geometry/index.ts';
import type { ParameterValue } from '../api.ts';
import type { Form } from '../form/form.ts';
import type { HandleSpec } from '../schema/handle.ts';

/** Axes that a handle of a base is seen along: x to the right, y up in the picture. */
export type Seen = Pick<Frame, 'origin' | 'x' | 'y'>;

/** A parameter that follows a handle, with its range in internal units. */
export interface Mover {
  readonly name: string;
  readonly least: number;
  readonly most: number;
}

/** A handle taken hold of: what of its form has to be made to know where it is, and whether the checks hold. */
export interface Grip {
  readonly form: Form;
  readonly name: string;
  readonly spec: HandleSpec;
  readonly order: readonly string[];
  /** Every parameter as it was when the handle was taken hold of. */
  readonly values: Readonly<Record<string, ParameterValue>>;
  readonly movers: readonly Mover[];
}

/** A form with some numbers, as far as one handle is concerned. */
export interface Look {
  /** Where the handle is: in the part's plane, or in the picture that it is pulled in. */
  readonly at: Vec;
  /** Its way along the directions in which it is pulled, mm. */
  readonly ways: readonly number[];
  /** By how much each comparison of a check holds; below 0 where it does not. Of those that do not apply, Infinity. */
  readonly slacks: readonly number[];
  /** What the checks say that hold, but hardly. */
  readonly tight: readonly string[];
  /** From a target back to the handle along each of its ways, mm. */
  readonly waysFrom: (target: Vec) => readonly number[];
  /** What the checks say that do not hold, comparisons or not. */
  readonly broken: boolean;
}

/** Where a pull has led. */
export interface Pulled {
  /** Every parameter in force, internal units: those that follow changed, the rest as they were. */
  readonly values: Readonly<Record<string, ParameterValue>>;
  /** Where the handle is now, in the plane or picture that it was pulled in. */
  readonly at: Vec;
  /** How far that is from where it was pulled to, mm; of a handle with a direction of its own, along that direction. */
  readonly off: number;
  /** Nearer than 0.01 mm: otherwise this is the nearest that its parameters reach within their ranges and the form's checks. */
  readonly reached: boolean;
  /** What it stands against: parameters at an end of their range, and what the checks say that hardly hold. */
  readonly kept: { readonly parameters: readonly string[]; readonly checks: readonly string[] };
}

/** Parameters that follow, as shares of their ranges, with what comes of them. */
export interface Standing {
  readonly shares: readonly number[];
  readonly look: Look;
  /** From the target back to the handle along each of its ways, mm. */
  readonly gaps: readonly number[];
  /** What is to be least, mm². */
  readonly worth: number;
}

/** One pull: what it starts from, where to, and how shares of ranges are looked at. */
export interface Pull {
  readonly grip: Grip;
  readonly start: readonly number[];
  readonly valuesAt: (shares: readonly number[]) => Readonly<Record<string, ParameterValue>>;
  readonly look: (shares: readonly number[], stepless: boolean) => Look | undefined;
  /** Nothing where the point cannot be made. */
  readonly stand: (shares: readonly number[]) => Standing | undefined;
}
