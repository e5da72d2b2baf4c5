import type { Vec } from '../../geometry/index.ts';
import type { ParameterValue } from '../api.ts';
import { evaluateForm } from '../evaluate/evaluate-form.ts';
import type { Grip, Mover, Pulled, Seen } from './api.ts';
import { pulledTo } from './pull-handle.ts';
import { pullOf } from './pull-of.ts';

/** What figures are rounded to, by kind: mm, rad, shares. */
export interface Steps {
  readonly length: number;
  readonly angle: number;
  readonly ratio: number;
}

/** Parts of the way that are tried until one makes a sound form. */
const PARTS: readonly number[] = [1, 0.75, 0.5, 0.25, 0.1, 0];

/**
 * The end of a pull in figures that a maker would type: of those that follow each is at the step above or below, as brings the handle nearest
 * to its target while the whole form can be drawn; what hardly changed stays as it was. Where the form cannot be drawn there, part of the
 * way. Nothing when it could not be drawn before the pull either.
 */
export function settleHandle(
  grip: Grip,
  pulled: Pulled,
  target: Vec,
  steps: Steps,
  options: { readonly seen?: Seen; readonly thickness?: Readonly<Record<string, number>> } = {},
): Pulled | undefined {
  const { movers, form } = grip;
  const pull = pullOf(grip, target, options.seen);
  const isSound = (values: Readonly<Record<string, ParameterValue>>): boolean =>
    evaluateForm(form, values, { thickness: options.thickness ?? {} }).ok;
  for (const part of PARTS) {
    const choices = movers.map((mover) => {
      const from = grip.values[mover.name] as number;
      const to = from + part * ((pulled.values[mover.name] as number) - from);
      return figuresNear(to, from, mover, stepOf(mover, grip, steps));
    });
    const standings = combinations(choices).flatMap((figures) => {
      const shares = figures.map((figure, i) => {
        const { least, most } = movers[i]!;
        return figure === grip.values[movers[i]!.name] ? pull.start[i]! : (figure - least) / (most - least);
      });
      const there = pull.stand(shares);
      return there === undefined || there.look.broken ? [] : [{ there, figures }];
    });
    standings.sort((a, b) => a.there.worth - b.there.worth);
    for (const { there, figures } of standings) {
      const exact = Object.fromEntries(movers.map(({ name }, i) => [name, figures[i]!]));
      const values = { ...grip.values, ...exact };
      if (isSound(values)) return { ...pulledTo(there, pull), values };
    }
  }
  return undefined;
}

function stepOf({ name }: Mover, { form }: Grip, steps: Steps): number {
  const { kind } = form.data.parameters[name]!;
  return kind === 'angle' ? steps.angle : kind === 'length' ? steps.length : steps.ratio;
}

/** The steps on both sides of a figure, within its range; the figure that it was, where it changed by less than half a step. */
function figuresNear(to: number, from: number, { least, most }: Mover, step: number): readonly number[] {
  if (Math.abs(to - from) < step / 2) return [from];
  const below = Math.floor(to / step);
  const near = [below * step, (below + 1) * step].map((each) => Math.min(most, Math.max(least, each)));
  return [...new Set(near)];
}

function combinations(choices: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return choices.reduce<readonly (readonly number[])[]>(
    (all, choice) => all.flatMap((each) => choice.map((figure) => [...each, figure])),
    [[]],
  );
}
