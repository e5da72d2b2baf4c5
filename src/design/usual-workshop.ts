import type { LengthUnit } from '../measure/index.ts';
import { usualBase, usualBushing, usualPaper, usualTooling, usualUnits } from './usual.ts';
import { WORKSHOP_VERSION, type Workshop } from './workshop-schema.ts';

/** A workshop to make one's own: what a maker usually has, each thing with a name, no printer measured yet. */
export function usualWorkshop(unit: LengthUnit): Workshop {
  const { machine, cutter, guide, templateThickness, runOn, sawAllowance, blades } = usualTooling(unit);
  const metric = unit === 'mm';
  return {
    'legwright-workshop': WORKSHOP_VERSION,
    units: usualUnits(unit),
    machine,
    cutters: [
      { ...cutter, name: cutter.name ?? 'cutter' },
      {
        name: metric ? 'spiral 8 × 25 mm' : 'spiral 3/8 × 1 in',
        diameter: metric ? '8 mm' : '3/8 in',
        cuttingLength: metric ? '25 mm' : '1 in',
      },
    ],
    guides: [{ ...guide, name: guide.name ?? 'guide' }, usualBushing(unit)],
    blades: blades.map((blade) => ({ ...blade, name: blade.name ?? 'blade' })),
    templateThickness,
    runOn,
    sawAllowance,
    printers: [],
    paper: usualPaper(unit),
    base: usualBase(),
  };
}
