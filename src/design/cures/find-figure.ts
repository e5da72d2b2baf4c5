import type { FigureToSet } from '../../core/index.ts';
import type { DescribedParameter, ParameterValue } from '../../sketch/index.ts';
import type { Design } from '../design-schema.ts';
import { applyFigure } from './apply-figure.ts';
import { type NumericParameter, type TypedFigure, typedBeyond, typedFigure } from './typed-figure.ts';

/** Does a design with this figure do? */
export type Does = (design: Design) => boolean;

/** Halvings between a figure that does and the one that does not: to a thirtieth of the way. */
const HALVINGS = 5;

/**
 * The value of one parameter, as near to what it is now as need be, with which the design does; nothing where its default, both ends of
 * its range and all its options do not.
 */
export function findFigure(
  design: Design,
  parameter: DescribedParameter,
  now: ParameterValue,
  does: Does,
): FigureToSet | undefined {
  const path = `parameters.${parameter.name}`;
  const figure = (value: unknown, shown: string): FigureToSet => ({
    path,
    value,
    words: `${parameter.label}: ${shown}`,
  });
  const works = (value: unknown): boolean => does(applyFigure(design, { path, value }));
  switch (parameter.kind) {
    case 'choice': {
      const option = Object.keys(parameter.options).find((each) => each !== now && works(each));
      return option === undefined ? undefined : figure(option, parameter.options[option]!);
    }
    case 'yes-no':
      return works(now !== true) ? figure(now !== true, now === true ? 'no' : 'yes') : undefined;
    default: {
      const found = nearest(parameter, Number(now), design.units.length, ({ typed }) => works(typed));
      return found === undefined ? undefined : figure(found.typed, String(found.typed));
    }
  }
}

function nearest(
  parameter: NumericParameter,
  now: number,
  unit: Design['units']['length'],
  works: (figure: TypedFigure) => boolean,
): TypedFigure | undefined {
  const far = [parameter.default, parameter.least, parameter.most]
    .filter((value, at, all) => Math.abs(value - now) > 1e-9 && all.indexOf(value) === at)
    .toSorted((a, b) => Math.abs(a - now) - Math.abs(b - now))
    .map((value) => typedFigure(parameter, value, unit))
    .find(works);
  if (far === undefined) return undefined;
  let [best, bad] = [far, now];
  for (let step = 0; step < HALVINGS; step++) {
    const tried = typedBeyond(parameter, (best.value + bad) / 2, bad, best.value, unit);
    if (Math.abs(tried.value - best.value) < 1e-9) break;
    if (works(tried)) best = tried;
    else bad = tried.value;
  }
  return best;
}
