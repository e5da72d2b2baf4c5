import { fail, ok, type Result } from '../core/index.ts';
import type { LengthUnit } from '../measure/index.ts';
import type { Blade, Cutter, Guide, Tooling } from '../routing/index.ts';
import type { TypedTooling } from './design-schema.ts';
import { type MeasureReader, measureReader } from './typed-measures.ts';

/** Ranges that refuse slips of the keyboard and hostile figures; what is unwise is for the checks to say. mm. */
export const RANGES = {
  diameter: { least: 1, most: 200 },
  cuttingLength: { least: 1, most: 300 },
  barrelLength: { least: 0.5, most: 100 },
  width: { least: 1, most: 100 },
  templateThickness: { least: 1, most: 100 },
  runOn: { least: 0, most: 500 },
  allowance: { least: 0, most: 200 },
} as const;

/** The tooling in mm, or every length of it that cannot be used; problem paths begin with `tooling.`. */
export function resolveTooling(typed: TypedTooling, unit: LengthUnit): Result<Tooling> {
  const reader = measureReader(unit);
  const tooling: Tooling = {
    machine: typed.machine,
    cutter: readCutter(typed.cutter, 'tooling.cutter', reader),
    guide: readGuide(typed.guide, 'tooling.guide', reader),
    templateThickness: reader.length(
      typed.templateThickness,
      'tooling.templateThickness',
      RANGES.templateThickness,
    ),
    runOn: reader.length(typed.runOn, 'tooling.runOn', RANGES.runOn),
    sawAllowance: reader.length(typed.sawAllowance, 'tooling.sawAllowance', RANGES.allowance),
    ...(typed.endAllowance === undefined
      ? {}
      : { endAllowance: reader.length(typed.endAllowance, 'tooling.endAllowance', RANGES.allowance) }),
    cutters: typed.cutters.map((cutter, at) => readCutter(cutter, `tooling.cutters.${at}`, reader)),
    blades: typed.blades.map((blade, at) => readBlade(blade, `tooling.blades.${at}`, reader)),
  };
  return reader.problems.length > 0 ? fail(...reader.problems) : ok(tooling);
}

export function readCutter(typed: TypedTooling['cutter'], path: string, reader: MeasureReader): Cutter {
  return {
    ...named(typed.name),
    diameter: reader.length(typed.diameter, `${path}.diameter`, RANGES.diameter),
    cuttingLength: reader.length(typed.cuttingLength, `${path}.cuttingLength`, RANGES.cuttingLength),
    ...(typed.shank === undefined
      ? {}
      : { shank: reader.length(typed.shank, `${path}.shank`, RANGES.diameter) }),
  };
}

export function readGuide(typed: TypedTooling['guide'], path: string, reader: MeasureReader): Guide {
  if (typed.kind === 'bearing') {
    const diameter = reader.length(typed.diameter, `${path}.diameter`, RANGES.diameter);
    return { kind: 'bearing', ...named(typed.name), diameter, at: typed.at };
  }
  return {
    kind: 'bushing',
    ...named(typed.name),
    outsideDiameter: reader.length(typed.outsideDiameter, `${path}.outsideDiameter`, RANGES.diameter),
    barrelLength: reader.length(typed.barrelLength, `${path}.barrelLength`, RANGES.barrelLength),
  };
}

export function readBlade(typed: TypedTooling['blades'][number], path: string, reader: MeasureReader): Blade {
  return { ...named(typed.name), width: reader.length(typed.width, `${path}.width`, RANGES.width) };
}

function named(name: string | undefined): { readonly name?: string } {
  return name === undefined ? {} : { name };
}
