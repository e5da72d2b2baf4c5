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
/** What is not there, as levellers of 0 mm, is hardly meant: counts as so many figures. */
const NOT_THERE = 3;
/** Reaching a tenth as far counts as much as so many other figures that go along. */
const SHORT = 1.5;
const SIDES = ['front', 'left', 'plan'] as const;

/** A driver with what speaks for and against it. */
interface Weighed extends Driver {
  /** How far the other figures of the drawings go along, each as a share of what this one does, one at most. */
  readonly disturbs: number;
  readonly isThere: boolean;
  /** Change of the figure over the whole range of the parameter, if it went on as it begins. */
  readonly reach: number;
}

/**
 * The parameters that each figure of a picture follows, by the figure's name: found by computing again with each parameter a little changed. The
 * figure's own parameter stands first, then that which leaves most of the other figures as they are, here and in the views of the base:
 * who types the height of a rail means the rail, not the table. Nothing of a design that cannot be used.
 */
export function driversOf(
  design: Design,
  of: PictureOf,
  memo: Memo = new Map(),
): ReadonlyMap<string, readonly Driver[]> {
  const form = formOfDesign(design);
  const before = figuresOf(design, of, memo);
  if (!form.ok || before === undefined) return new Map();
  const others = SIDES.filter((side) => !('side' in of && of.side === side));
  const otherFigures = (changed: Design): ReadonlyMap<string, number> =>
    new Map(
      others.flatMap((side) =>
        [...(figuresOf(changed, { side }, memo)?.values ?? [])].map(
          ([name, value]) => [`${side} ${name}`, value] as const,
        ),
      ),
    );
  const beside = otherFigures(design);
  const drivers = new Map<string, Weighed[]>();
  for (const parameter of describeForm(form.value).parameters) {
    if (!('least' in parameter) || parameter.kind === 'count') continue;
    if (Object.hasOwn(design.measured.parameters ?? {}, parameter.name)) continue;
    const value = before.parameters[parameter.name] as number;
    const moved = nudged(design, of, parameter, value, memo);
    if (moved === undefined) continue;
    const changesIn = (from: ReadonlyMap<string, number>, to: ReadonlyMap<string, number>) =>
      [...from].map(([name, value]) => ({
        name,
        value,
        change: Math.abs((to.get(name) ?? value) - value) / moved.by,
      }));
    const own = changesIn(before.values, moved.figures.values);
    const all = [...own, ...changesIn(beside, otherFigures(moved.design))];
    for (const { name, value: figure, change } of own) {
      if (change < FOLLOWS) continue;
      const itself = Math.abs(figure - value) < SAME && Math.abs(change - 1) < FOLLOWS;
      const weighed = {
        parameter: parameter.name,
        label: parameter.label,
        itself,
        disturbs: all.reduce((sum, each) => sum + Math.min(1, each.change / change), -1),
        isThere: value !== 0 || parameter.least !== 0,
        reach: change * (parameter.most - parameter.least),
      };
      drivers.set(name, [...(drivers.get(name) ?? []), weighed]);
    }
  }
  return new Map([...drivers].map(([name, each]) => [name, fittestFirst(each)]));
}

/** What is the figure itself first; then by what a change disturbs, and by how far short the parameter's range falls of that of others. */
function fittestFirst(drivers: readonly Weighed[]): readonly Driver[] {
  const farthest = Math.max(...drivers.map(({ reach }) => reach));
  const cost = ({ itself, isThere, disturbs, reach }: Weighed): number =>
    itself ? -1 : disturbs + SHORT * Math.log10(farthest / reach) + (isThere ? 0 : NOT_THERE);
  return drivers
    .toSorted((a, b) => cost(a) - cost(b))
    .map(({ parameter, label, itself }) => ({ parameter, label, itself }));
}

function nudged(design: Design, of: PictureOf, parameter: NumericParameter, value: number, memo: Memo) {
  const by = NUDGE * (parameter.most - parameter.least);
  for (const way of [1, -1]) {
    const to = value + way * by;
    if (to < parameter.least || to > parameter.most) continue;
    const typed = typedFigure(parameter, to, design.units.length);
    const changed = withParameter(design, parameter.name, typed.typed);
    const figures = figuresOf(changed, of, memo);
    if (figures !== undefined) return { design: changed, figures, by: Math.abs(typed.value - value) };
  }
  return undefined;
}

export function withParameter(design: Design, name: string, typed: string | number): Design {
  return { ...design, parameters: { ...design.parameters, [name]: typed } };
}
