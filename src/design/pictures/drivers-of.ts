import { describeForm } from '../../sketch/index.ts';
import { type NumericParameter, typedFigure } from '../cures/typed-figure.ts';
import type { Design } from '../design-schema.ts';
import { formOfDesign } from '../form-of-design.ts';
import type { Memo } from '../memo.ts';
import { figuresOf } from './figures-of.ts';
import type { PictureOf } from './picture-of.ts';

/** A parameter that a figure of a drawing follows. */
export interface Driver {
  readonly parameter: string;
  readonly label: string;
  /** The figure is the parameter itself: typing it sets it. */
  readonly itself: boolean;
}

/** Share of its range by which a parameter is moved to see what follows it. */
const NUDGE = 1e-3;
/** A figure follows where it changes by more than this share of what the parameter does; mm and rad alike. */
const FOLLOWS = 1e-4;
const SAME = 1e-6;

/**
 * The parameters that each figure of a picture follows, by the figure's name: found by computing again with each parameter a little changed. The
 * figure's own parameter stands first. Nothing of a design that cannot be used.
 */
export function driversOf(
  design: Design,
  of: PictureOf,
  memo: Memo = new Map(),
): ReadonlyMap<string, readonly Driver[]> {
  const form = formOfDesign(design);
  const before = figuresOf(design, of, memo);
  if (!form.ok || before === undefined) return new Map();
  const drivers = new Map<string, Driver[]>();
  for (const parameter of describeForm(form.value).parameters) {
    if (!('least' in parameter) || parameter.kind === 'count') continue;
    if (Object.hasOwn(design.measured.parameters ?? {}, parameter.name)) continue;
    const value = before.parameters[parameter.name] as number;
    const moved = nudged(design, of, parameter, value, memo);
    if (moved === undefined) continue;
    for (const [name, figure] of before.values) {
      const change = Math.abs((moved.figures.get(name) ?? figure) - figure) / moved.by;
      if (change < FOLLOWS) continue;
      const itself = Math.abs(figure - value) < SAME && Math.abs(change - 1) < FOLLOWS;
      const driver = { parameter: parameter.name, label: parameter.label, itself };
      const others = drivers.get(name) ?? [];
      drivers.set(name, itself ? [driver, ...others] : [...others, driver]);
    }
  }
  return drivers;
}

function nudged(design: Design, of: PictureOf, parameter: NumericParameter, value: number, memo: Memo) {
  const by = NUDGE * (parameter.most - parameter.least);
  for (const way of [1, -1]) {
    const to = value + way * by;
    if (to < parameter.least || to > parameter.most) continue;
    const typed = typedFigure(parameter, to, design.units.length);
    const moved = figuresOf(withParameter(design, parameter.name, typed.typed), of, memo);
    if (moved !== undefined) return { figures: moved.values, by: Math.abs(typed.value - value) };
  }
  return undefined;
}

export function withParameter(design: Design, name: string, typed: string | number): Design {
  return { ...design, parameters: { ...design.parameters, [name]: typed } };
}
