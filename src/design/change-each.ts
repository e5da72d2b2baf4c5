import type { z } from 'zod';

type Schema = z.core.$ZodType;
/** Of a schema, what leads on to the values inside; as zod 4 describes itself. */
interface Described {
  readonly type: string;
  readonly shape?: Readonly<Record<string, Schema>>;
  readonly innerType?: Schema;
  readonly valueType?: Schema;
  readonly element?: Schema;
  readonly items?: readonly Schema[];
  readonly options?: readonly Schema[];
}

/**
 * A value of a schema with every value that stands where one of `wanted` does changed; all else is the very same. Of a choice between schemas
 * the first that the value satisfies counts.
 */
export function changeEach(
  schema: Schema,
  value: unknown,
  wanted: ReadonlyMap<Schema, (typed: unknown) => unknown>,
): unknown {
  const change = wanted.get(schema);
  if (change !== undefined) return change(value);
  const described = schema._zod.def as unknown as Described;
  if (described.type === 'optional' && described.innerType !== undefined)
    return changeEach(described.innerType, value, wanted);
  if (value === null || typeof value !== 'object') return value;
  const inside = (inner: Schema | undefined, own: unknown): unknown =>
    inner === undefined ? own : changeEach(inner, own, wanted);
  const members = (schemaOf: (key: string) => Schema | undefined): unknown =>
    Object.fromEntries(Object.entries(value).map(([key, own]) => [key, inside(schemaOf(key), own)]));
  const places = value as readonly unknown[];
  switch (described.type) {
    case 'object':
      return members((key) => described.shape?.[key]);
    case 'record':
      return members(() => described.valueType);
    case 'array':
      return places.map((own) => inside(described.element, own));
    case 'tuple':
      return places.map((own, at) => inside(described.items?.[at], own));
    case 'union':
      return inside(
        described.options?.find((option) => (option as z.ZodType).safeParse(value).success),
        value,
      );
    default:
      return value;
  }
}
