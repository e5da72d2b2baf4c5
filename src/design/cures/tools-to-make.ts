import type { FigureToSet, Finding } from '../../core/index.ts';
import { USUAL_DOWELS } from '../../materials/index.ts';
import { formatLength } from '../../measure/index.ts';
import type { Design } from '../design-schema.ts';
import { lengthStyleOf } from '../length-style.ts';
import { usualBase } from '../usual.ts';

const mm = (value: number): string => `${Number(value.toFixed(3))} mm`;

/** Where nothing of the maker's list fits: the list with a piece made to measure that does. */
export function toolToMake(design: Design, { fits }: Finding): FigureToSet | undefined {
  if (fits === undefined) return undefined;
  const { base = {} } = design;
  const say = (value: number): string => formatLength(value, lengthStyleOf(design));
  if (fits.kind === 'dowel') {
    const own = { diameter: mm(fits.thickness), length: mm(fits.length) };
    return {
      path: 'base.dowels',
      value: [...(base.dowels ?? usualBase().dowels ?? []), own],
      words: `Dowels made to measure: ${say(fits.thickness)} by ${say(fits.length)}`,
    };
  }
  const own = { thickness: mm(fits.thickness), width: mm(fits.width), length: mm(fits.length) };
  return {
    path: 'base.looseTenons',
    value: [...(base.looseTenons ?? usualBase().looseTenons ?? []), own],
    words: `Loose tenons made to measure: ${[fits.thickness, fits.width, fits.length].map(say).join(' × ')}`,
  };
}

/** A tenon is sawn and rounded to any size; a dowel is bought, of a diameter that is sold. */
export function isEasilyMade({ fits }: Finding): boolean {
  return fits?.kind !== 'dowel' || USUAL_DOWELS.some(({ diameter }) => diameter === fits.thickness);
}
