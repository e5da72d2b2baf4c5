import type { z } from 'zod';
import { type LengthUnit, parseLength } from '../measure/index.ts';
import { describeForm, type Form } from '../sketch/index.ts';
import { typedThickness } from './board-schema.ts';
import { changeEach } from './change-each.ts';
import { type Design, designSchema } from './design-schema.ts';
import { typedLength } from './strict-schema.ts';
import { usualUnits } from './usual.ts';

type Typed = Design['parameters'];

/**
 * The design in another unit: what it prints and what a bare number means. Every length stays what it is: one that was typed without a unit
 * is given the one that it had, the others stay as they were typed.
 */
export function changeUnits(design: Design, form: Form, unit: LengthUnit): Design {
  const before = design.units.length;
  if (before === unit) return design;
  const length = (typed: unknown): unknown => withUnit(typed, before);
  const changed = withUnits(designSchema, design, before);
  const lengths = new Set(
    describeForm(form)
      .parameters.filter(({ kind }) => kind === 'length')
      .map(({ name }) => name),
  );
  const parameters = (typed: Typed): Typed =>
    Object.fromEntries(
      Object.entries(typed).map(([name, own]) => [
        name,
        lengths.has(name) ? (length(own) as Typed[string]) : own,
      ]),
    );
  const measured = changed.measured.parameters;
  const cut = changed.cut;
  return {
    ...changed,
    units: usualUnits(unit),
    parameters: parameters(changed.parameters),
    measured: {
      ...changed.measured,
      ...(measured === undefined ? {} : { parameters: parameters(measured) }),
    },
    ...(cut === undefined
      ? {}
      : {
          cut: Object.fromEntries(
            Object.entries(cut).map(([part, decided]) => [
              part,
              {
                ...decided,
                parameters: parameters(decided.parameters),
                ...(decided.measured.parameters === undefined
                  ? {}
                  : {
                      measured: {
                        ...decided.measured,
                        parameters: parameters(decided.measured.parameters),
                      },
                    }),
              },
            ]),
          ),
        }),
  };
}

/** A value of a schema in which every length that was typed without a unit has this one. */
export function withUnits<T>(schema: z.core.$ZodType, value: T, unit: LengthUnit): T {
  const length = (typed: unknown): unknown => withUnit(typed, unit);
  // A rough board is also sold by quarters of an inch, which have no unit: `6/4`.
  const thickness = (typed: unknown): unknown => (String(typed).includes('/') ? typed : length(typed));
  const wanted = new Map<typeof typedLength, (typed: unknown) => unknown>([
    [typedLength, length],
    [typedThickness, thickness],
  ]);
  return changeEach(schema, value, wanted) as T;
}

/** A bare length means one thing in one unit and another in the other; one with a unit the same in both. */
function withUnit(typed: unknown, unit: LengthUnit): unknown {
  if (typeof typed !== 'string' && typeof typed !== 'number') return typed;
  const read = (as: LengthUnit) => parseLength(String(typed), { unit: as });
  const [own, other] = [read(unit), read(unit === 'mm' ? 'in' : 'mm')];
  const isBare = own.ok && own.value !== 0 && !(other.ok && other.value === own.value);
  return isBare ? `${typed} ${unit}` : typed;
}
