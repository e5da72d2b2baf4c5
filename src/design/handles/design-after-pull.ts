import { describeForm, type Pulled } from '../../sketch/index.ts';
import { typedFigure } from '../cures/typed-figure.ts';
import type { Design } from '../design-schema.ts';
import type { HeldHandle } from './hold-handle.ts';

/** The design with the parameters that followed a pull, as a maker would type them; the rest stays as it was typed. */
export function designAfterPull({ design, grip }: HeldHandle, { values }: Pulled): Design {
  const followed = describeForm(grip.form).parameters.flatMap((parameter) => {
    const value = values[parameter.name];
    if (!('least' in parameter) || typeof value !== 'number' || value === grip.values[parameter.name])
      return [];
    return [[parameter.name, typedFigure(parameter, value, design.units.length).typed] as const];
  });
  return { ...design, parameters: { ...design.parameters, ...Object.fromEntries(followed) } };
}
