import type { SawRange } from '../base/index.ts';
import { fail, nearestName, ok, type Problem, type Result } from '../core/index.ts';
import { type DowelSize, type LooseTenonSize, WOODS, type Wood, woodCalled } from '../materials/index.ts';
import { type LengthUnit, parseAngle, RAD_PER_DEGREE } from '../measure/index.ts';
import type { Design } from './design-schema.ts';
import { measureReader } from './typed-measures.ts';
import { USUAL_WOOD } from './usual.ts';
import type { Workshop } from './workshop-schema.ts';

/** What a base is made of and with, in mm, rad and by table. */
export interface BaseSupplies {
  readonly wood: Wood;
  /** By the form's name of the part, where it is of another wood. */
  readonly woods: Readonly<Record<string, Wood>>;
  readonly looseTenons?: readonly LooseTenonSize[];
  readonly dowels?: readonly DowelSize[];
  readonly saw: SawRange;
}

/** Ranges that most mitre saws and table saws reach, common practice. */
const USUAL_SAW: SawRange = {
  swing: { left: 45 * RAD_PER_DEGREE, right: 45 * RAD_PER_DEGREE },
  tilt: { left: 45 * RAD_PER_DEGREE, right: 0 },
};

const SIZES = { least: 1, most: 400 } as const;
const MOST_ANGLE = 89 * RAD_PER_DEGREE;

/** What a design or a workshop says of wood, joinery and saw; usual where it says nothing. Problem paths begin with `base.`. */
export function resolveBase(design: Pick<Design | Workshop, 'base' | 'units'>): Result<BaseSupplies> {
  const { base = {}, units } = design;
  const problems: Problem[] = [];
  const woodAt = (name: string, path: string): Wood => {
    const found = woodCalled(name);
    if (found === undefined) problems.push(unknownWood(name, path));
    return found ?? WOODS[0]!;
  };
  const wood = woodAt(base.wood ?? USUAL_WOOD, 'base.wood');
  const woods = Object.fromEntries(
    Object.entries(base.woods ?? {}).map(([part, name]) => [part, woodAt(name, `base.woods.${part}`)]),
  );
  const lists = readLists(base, units.length, problems);
  const saw = base.saw === undefined ? USUAL_SAW : readSaw(base.saw, problems);
  return problems.length > 0 ? fail(...problems) : ok({ wood, woods, ...lists, saw });
}

type TypedBase = NonNullable<Design['base']>;

function readLists(
  { looseTenons, dowels }: TypedBase,
  unit: LengthUnit,
  problems: Problem[],
): Pick<BaseSupplies, 'looseTenons' | 'dowels'> {
  const reader = measureReader(unit);
  const lists = {
    ...(looseTenons && {
      looseTenons: looseTenons.map((typed, at) => {
        const thickness = reader.length(typed.thickness, `base.looseTenons.${at}.thickness`, SIZES);
        // Its edges are rounded: narrower than thick is no tenon, but figures in the wrong order.
        const widths = { ...SIZES, least: Number.isNaN(thickness) ? SIZES.least : thickness };
        const width = reader.length(typed.width, `base.looseTenons.${at}.width`, widths);
        return {
          thickness,
          width,
          length: reader.length(typed.length, `base.looseTenons.${at}.length`, SIZES),
        };
      }),
    }),
    ...(dowels && {
      dowels: dowels.map(({ diameter, length }, at) => ({
        diameter: reader.length(diameter, `base.dowels.${at}.diameter`, SIZES),
        length: reader.length(length, `base.dowels.${at}.length`, SIZES),
      })),
    }),
  };
  problems.push(...reader.problems);
  return lists;
}

function readSaw(typed: NonNullable<TypedBase['saw']>, problems: Problem[]): SawRange {
  const angle = (value: string | number, path: string): number => {
    const read = parseAngle(String(value));
    const expected = 'an angle from 0° to 89°';
    if (read.ok && read.value >= 0 && read.value <= MOST_ANGLE) return read.value;
    problems.push({
      code: 'design.out-of-range',
      message: `${path}: found ${value}, expected ${expected}.`,
      path,
      found: String(value),
      expected,
    });
    return 0;
  };
  const both = (way: 'swing' | 'tilt') => ({
    left: angle(typed[way].left, `base.saw.${way}.left`),
    right: angle(typed[way].right, `base.saw.${way}.right`),
  });
  return { swing: both('swing'), tilt: both('tilt') };
}

function unknownWood(found: string, path: string): Problem {
  const names = WOODS.map(({ name }) => name);
  const near = nearestName(found, names);
  const expected = near ? `"${near}"` : `one of: ${names.join(', ')}`;
  return {
    code: 'design.unknown-wood',
    message: `There is no wood called "${found}" in the table: expected ${expected}.`,
    path,
    found,
    expected,
  };
}
