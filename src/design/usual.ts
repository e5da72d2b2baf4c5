import { USUAL_DOWELS, USUAL_LOOSE_TENONS } from '../materials/index.ts';
import { SAFE_MARGIN, USUAL_OVERLAP } from '../print/index.ts';
import type { Design, TypedPaper, TypedTooling } from './design-schema.ts';

type Units = Design['units'];
type Guide = TypedTooling['guide'];

/** How lengths are usually printed: whole millimetres, or 1/32 in (common practice: what a maker marks to). */
export function usualUnits(unit: Units['length']): Units {
  return unit === 'mm' ? { length: 'mm', decimals: 1 } : { length: 'in', nearest: '1/32' };
}

/**
 * What a maker without a workshop file begins with: a half-inch flush-trim bit with its bearing at the shank, hand-held,
 * the template above; 6 mm board for it (all common practice).
 */
export function usualTooling(unit: Units['length']): TypedTooling {
  const metric = unit === 'mm';
  return {
    machine: 'hand-held',
    cutter: {
      name: metric ? 'flush trim 12.7 × 38 mm' : 'flush trim 1/2 × 1 1/2 in',
      diameter: metric ? '12.7 mm' : '1/2 in',
      cuttingLength: metric ? '38 mm' : '1 1/2 in',
    },
    guide: {
      kind: 'bearing',
      name: metric ? 'bearing 12.7 mm' : 'bearing 1/2 in',
      diameter: metric ? '12.7 mm' : '1/2 in',
      at: 'shank',
    },
    templateThickness: metric ? '6 mm' : '1/4 in',
    runOn: metric ? '40 mm' : '1 1/2 in',
    sawAllowance: metric ? '1.5 mm' : '1/16 in',
    cutters: [],
    blades: [
      { name: metric ? '6 mm blade' : '1/4 in blade', width: metric ? '6 mm' : '1/4 in' },
      { name: metric ? '13 mm blade' : '1/2 in blade', width: metric ? '13 mm' : '1/2 in' },
    ],
  };
}

/** A bushing that most base plates take, and that a template of 6 mm carries (common practice). */
export function usualBushing(unit: Units['length']) {
  const metric = unit === 'mm';
  return {
    kind: 'bushing',
    name: metric ? 'bushing 17 mm' : 'bushing 5/8 in',
    outsideDiameter: metric ? '17 mm' : '5/8 in',
    barrelLength: metric ? '5 mm' : '3/16 in',
  } as const satisfies Guide;
}

/** A guide of a kind for the cutter in hand: a bearing as large as the cutter, or the usual bushing. */
export function guideFor(kind: Guide['kind'], cutter: TypedTooling['cutter'], unit: Units['length']): Guide {
  return kind === 'bushing'
    ? usualBushing(unit)
    : { kind: 'bearing', diameter: cutter.diameter, at: 'shank' };
}

/** Sizes to begin with for paper that goes by no name: a sheet a little larger than A3, a roll of two feet. */
export function unnamedPaper(kind: 'sheet' | 'roll', unit: Units['length']): TypedPaper['size'] {
  const metric = unit === 'mm';
  return kind === 'sheet'
    ? { width: metric ? '330 mm' : '13 in', height: metric ? '480 mm' : '19 in' }
    : { roll: metric ? '610 mm' : '24 in', longest: metric ? '3000 mm' : '120 in' };
}

/** A4 or Letter with margins that nearly every office printer can keep. */
export function usualPaper(unit: Units['length']): TypedPaper {
  const margin = `${SAFE_MARGIN} mm`;
  return {
    size: unit === 'mm' ? 'A4' : 'Letter',
    orientation: 'fewest',
    margins: { top: margin, right: margin, bottom: margin, left: margin },
    overlap: `${USUAL_OVERLAP} mm`,
  };
}

/** Species of a base of which nothing is said. */
export const USUAL_WOOD = 'white oak';

/** What bases are made of and with where nothing else is said, written out for a maker to change. */
export function usualBase(): NonNullable<Design['base']> {
  return {
    wood: USUAL_WOOD,
    looseTenons: USUAL_LOOSE_TENONS.map(({ thickness, width, length }) => ({
      thickness: `${thickness} mm`,
      width: `${width} mm`,
      length: `${length} mm`,
    })),
    dowels: USUAL_DOWELS.map(({ diameter, length }) => ({
      diameter: `${diameter} mm`,
      length: `${length} mm`,
    })),
    saw: { swing: { left: '45°', right: '45°' }, tilt: { left: '45°', right: '0°' } },
  };
}
