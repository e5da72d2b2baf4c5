import type { FigureToSet, Finding } from '../../core/index.ts';
import { USUAL_DOWELS } from '../../materials/index.ts';
import { formatLength } from '../../measure/index.ts';
import type { Design } from '../design-schema.ts';
import { lengthStyleOf } from '../length-style.ts';
import { usualBase } from '../usual.ts';

const mm = (value: number): string => `${Number(value.toFixed(3))} mm`;

/** Where nothing of the maker's list fits: the list with a piece made to measure that does; for a bit that is too short, one that is long enough. */
export function toolToMake(design: Design, finding: Finding): FigureToSet | undefined {
  const { fits } = finding;
  if (finding.code === 'routing.cutter-too-short') return longerCutter(design, finding);
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

/** A bit that cuts as far as the plan of depths asks for at least, to the next round figure. */
function longerCutter(design: Design, { limit }: Finding): FigureToSet | undefined {
  if (limit === undefined) return undefined;
  const step = design.units.length === 'mm' ? 1 : 25.4 / 16;
  const long = step * Math.ceil(limit.value / step - 1e-9);
  const shown = formatLength(long, lengthStyleOf(design));
  return {
    path: 'tooling.cutter.cuttingLength',
    value: mm(long),
    words: `Length that the bit cuts: ${shown}`,
  };
}

/** A tenon is sawn and rounded to any size; a dowel is bought, of a diameter that is sold. */
export function isEasilyMade({ fits }: Finding): boolean {
  return fits?.kind !== 'dowel' || USUAL_DOWELS.some(({ diameter }) => diameter === fits.thickness);
}
