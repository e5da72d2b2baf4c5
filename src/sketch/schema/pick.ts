import { z } from 'zod';

/**
 * The schema that an input is meant for, chosen by looking at it, so that a mistake is reported against what was meant
 * (a union reports that nothing fits).
 */
export function pick<const T extends readonly z.ZodType[]>(schemas: T, choose: (input: unknown) => number) {
  return z.unknown().transform((input, context): z.output<T[number]> => {
    const result = schemas[choose(input)]!.safeParse(input);
    if (result.success) return result.data as z.output<T[number]>;
    for (const issue of result.error.issues) context.issues.push({ ...issue, input } as never);
    return z.NEVER;
  });
}
