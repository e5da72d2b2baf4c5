import { fail, ok, type Result } from '../../core/index.ts';
import { RAD_PER_DEGREE } from '../../measure/index.ts';
import { describeForm } from '../../sketch/index.ts';
import { coarsestNear, type NumericParameter, typedFigure } from '../cures/typed-figure.ts';
import type { Design } from '../design-schema.ts';
import { formOfDesign } from '../form-of-design.ts';
import type { Memo } from '../memo.ts';
import { withParameter } from './drivers-of.ts';
import { figuresOf } from './figures-of.ts';
import type { PictureOf } from './picture-of.ts';

/** A figure of a picture that is to come to a value (mm or rad) by changing one parameter alone. */
export interface WantedFigure {
  readonly of: PictureOf;
  readonly name: string;
  /** How it is shown: a solved parameter need be no finer than tells. */
  readonly kind: 'length' | 'radius' | 'angle';
  readonly parameter: string;
  readonly target: number;
}

/** A figure is sought to this share of what is shown of it: a parameter is typed with six decimals, which of a ratio is some thousandths of a millimetre. */
const SOUGHT = 1 / 20;
const TRIALS = 24;

/**
 * What to type for a parameter so that a figure of a drawing comes to a target: by the rule of false position between the ends of the
 * parameter's range. Problems: `figure.out-of-reach`, where no value of the parameter brings it there.
 */
export function solveFigure(
  design: Design,
  { of, name, kind, parameter: called, target }: WantedFigure,
  memo: Memo = new Map(),
): Result<string | number> {
  const form = formOfDesign(design);
  if (!form.ok) return form;
  const parameter = describeForm(form.value).parameters.find((each) => each.name === called);
  const now = figuresOf(design, of, memo)?.parameters[called];
  if (parameter === undefined || !('least' in parameter) || typeof now !== 'number') {
    throw new RangeError(`no figure to solve for: ${called}`);
  }
  const typedAt = (value: number) => typedFigure(parameter, value, design.units.length).typed;
  const offAt = (value: number): number | undefined => {
    const figure = figuresOf(withParameter(design, called, typedAt(value)), of, memo)?.values.get(name);
    return figure === undefined ? undefined : figure - target;
  };
  const shown = shownTo(kind, design);
  const found = between(parameter, now, offAt, SOUGHT * shown);
  if (found !== undefined) {
    const shows = (value: number): boolean => Math.abs(offAt(value) ?? Infinity) < shown;
    return ok(typedAt(coarsestNear(parameter, found, design.units.length, shows) ?? found));
  }
  const message = `${parameter.label} alone does not bring it there.`;
  return fail({ code: 'figure.out-of-reach', message, path: `parameters.${called}` });
}

/**
 * Nearer than this, mm or rad, a figure is shown as what was typed: of a degree to a hundredth, of a millimetre to the decimals of the
 * design, though never to less than a tenth.
 */
function shownTo(kind: WantedFigure['kind'], { units }: Design): number {
  if (kind === 'angle') return 0.45 * 0.01 * RAD_PER_DEGREE;
  const decimals = units.length === 'mm' ? Math.max(1, units.decimals) : 1;
  return 0.45 * 10 ** -decimals;
}

/** From what it is now towards both ends of the range, in growing steps until the sign changes, then closing in. */
function between(
  { least, most }: NumericParameter,
  now: number,
  offAt: (value: number) => number | undefined,
  near: number,
): number | undefined {
  const start = offAt(now);
  if (start === undefined) return undefined;
  if (Math.abs(start) < near) return now;
  for (const end of [most, least]) {
    let [inner, innerOff] = [now, start];
    for (const share of [0.03, 0.1, 0.3, 1]) {
      const outer = now + share * (end - now);
      const outerOff = offAt(outer);
      if (outerOff === undefined) break;
      if (Math.sign(outerOff) !== Math.sign(innerOff))
        return closeIn(inner, innerOff, outer, outerOff, offAt, near);
      [inner, innerOff] = [outer, outerOff];
    }
  }
  return undefined;
}

/** The Illinois form of false position: the end that stays counts half, so that both ends close in. */
function closeIn(
  a: number,
  aOff: number,
  b: number,
  bOff: number,
  offAt: (value: number) => number | undefined,
  near: number,
): number | undefined {
  let [low, lowOff, high, highOff] = [a, aOff, b, bOff];
  for (let trial = 0; trial < TRIALS; trial++) {
    const at = (low * highOff - high * lowOff) / (highOff - lowOff);
    const off = offAt(at);
    if (off === undefined) return undefined;
    if (Math.abs(off) < near) return at;
    if (Math.sign(off) === Math.sign(highOff)) lowOff /= 2;
    else [low, lowOff] = [high, highOff];
    [high, highOff] = [at, off];
  }
  return undefined;
}
