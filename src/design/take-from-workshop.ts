import { fail, nearestName, ok, type Problem, type Result } from '../core/index.ts';
import { type LengthUnit, parseLength } from '../measure/index.ts';
import { withUnits as withUnitsOf } from './change-units.ts';
import type { Design, TypedLength, TypedPaper, TypedTooling } from './design-schema.ts';
import { workshopWoodSchema } from './wood-schema.ts';
import type { Workshop } from './workshop-schema.ts';

/** Which of the workshop's things a design uses, by name; the first of each list where none is named. */
export interface Choice {
  readonly cutter?: string | undefined;
  readonly guide?: string | undefined;
  readonly printer?: string | undefined;
}

/** What a design begins with from a workshop. */
export interface Taken {
  readonly tooling: TypedTooling;
  readonly paper: TypedPaper;
  readonly base?: TypedBase;
  readonly wood?: NonNullable<Design['wood']>;
  readonly site?: string;
}

type TypedBase = NonNullable<Design['base']>;

/**
 * The tooling, the paper and what bases are made of and with, of a workshop, copied for a design: a later change in the workshop changes no design. A bare
 * number gets the workshop's unit, because the design's may be another. `usual` is the paper where the workshop has none.
 */
export function takeFromWorkshop(workshop: Workshop, choice: Choice, usual: TypedPaper): Result<Taken> {
  const cutter = pick(workshop.cutters, choice.cutter, 'cutter');
  const guide = pick(workshop.guides, choice.guide, 'guide');
  const printer = pickPrinter(workshop, choice.printer);
  if (!cutter.ok || !guide.ok || !printer.ok) {
    return fail(...[cutter, guide, printer].flatMap((each) => (each.ok ? [] : each.problems)));
  }
  const { machine, templateThickness, runOn, sawAllowance, cutters, blades } = workshop;
  const tooling = {
    machine,
    cutter: cutter.value,
    guide: guide.value,
    templateThickness,
    runOn,
    sawAllowance,
    cutters,
    blades,
  };
  const unit = workshop.units.length;
  const { calibration, ...paper } = withUnits(workshop.paper ?? usual, unit);
  const corrected = printer.value === undefined ? calibration : printer.value.calibration;
  const printed = printer.value && corrected ? { ...corrected, printer: printer.value.name } : corrected;
  return ok({
    tooling: withUnits(tooling, unit),
    paper: printed ? { ...paper, calibration: printed } : paper,
    ...(workshop.base === undefined ? {} : { base: takenBase(workshop.base, unit) }),
    ...(workshop.wood === undefined ? {} : { wood: withUnitsOf(workshopWoodSchema, workshop.wood, unit) }),
    ...(workshop.site === undefined ? {} : { site: workshop.site }),
  });
}

/** Angles of the saw have no unit to give. */
function takenBase({ looseTenons, dowels, ...rest }: TypedBase, unit: LengthUnit): TypedBase {
  const sized = { ...(looseTenons && { looseTenons }), ...(dowels && { dowels }) };
  return { ...rest, ...withUnits(sized, unit) };
}

/** What of a workshop holds for a form that draws these parts: woods of other parts are left out. */
export function baseForParts(base: TypedBase, parts: readonly string[]): TypedBase {
  const { woods = {}, ...rest } = base;
  const own = Object.entries(woods).filter(([part]) => parts.includes(part));
  return own.length === 0 ? rest : { ...rest, woods: Object.fromEntries(own) };
}

function pickPrinter(workshop: Workshop, name: string | undefined) {
  if (name === undefined && workshop.printers.length === 0) return ok(undefined);
  return pick(workshop.printers, name, 'printer');
}

function pick<T extends { readonly name: string }>(
  from: readonly T[],
  name: string | undefined,
  what: string,
): Result<T> {
  const found = name === undefined ? from[0] : from.find((each) => each.name === name);
  return found ? ok(found) : fail(unknownTool(name ?? '', what, from));
}

function unknownTool(name: string, what: string, from: readonly { readonly name: string }[]): Problem {
  const names = from.map((each) => each.name);
  const near = nearestName(name, names);
  const expected = near ? `"${near}"` : `one of: ${names.join(', ') || 'none'}`;
  return {
    code: 'workshop.unknown-tool',
    message: `The workshop has no ${what} called "${name}": expected ${expected}.`,
    found: name,
    expected,
  };
}

/** Names of everything in tooling, paper and lists of tenons and dowels that is a length; other numbers are factors. */
const LENGTHS: ReadonlySet<string> = new Set([
  'diameter',
  'thickness',
  'length',
  'cuttingLength',
  'shank',
  'outsideDiameter',
  'barrelLength',
  'width',
  'height',
  'roll',
  'longest',
  'templateThickness',
  'runOn',
  'sawAllowance',
  'top',
  'right',
  'bottom',
  'left',
  'overlap',
]);

function withUnits<T>(value: T, unit: LengthUnit): T {
  if (Array.isArray(value)) return value.map((each) => withUnits(each, unit)) as T;
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([name, each]) => [
    name,
    LENGTHS.has(name) ? withUnit(each as TypedLength, unit) : withUnits(each, unit),
  ]);
  return Object.fromEntries(entries) as T;
}

/** A length that reads otherwise in the other unit had none of its own. */
function withUnit(typed: TypedLength, unit: LengthUnit): TypedLength {
  const read = (as: LengthUnit) => parseLength(String(typed), { unit: as });
  const [mm, inches] = [read('mm'), read('in')];
  const bare = !(mm.ok && inches.ok && mm.value === inches.value);
  return bare ? `${typed} ${unit}` : typed;
}
