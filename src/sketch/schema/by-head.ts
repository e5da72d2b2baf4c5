import { z } from 'zod';
import { isScalar } from '../source/place.ts';
import { complain } from './complaint.ts';

/**
 * A map whose shape is told by which of the heads (keys) it has: `{ line: … }` or `{ arc: … }`. The first head present
 * decides, so that a mistake is reported against the shape that was meant and no other.
 */
export function byHead<const T extends Readonly<Record<string, z.ZodType>>>(what: string, shapes: T) {
  return z.unknown().transform((input, context): z.output<T[keyof T]> => {
    const heads = Object.keys(shapes);
    const isMap = typeof input === 'object' && input !== null && !Array.isArray(input) && !isScalar(input);
    const head = isMap ? heads.find((each) => Object.hasOwn(input, each)) : undefined;
    if (head === undefined) {
      const expected = `a map with ${heads.join(', ')}`;
      context.issues.push(
        complain(input, { code: 'form.shape', message: `${what} is ${expected}`, expected }),
      );
      return z.NEVER;
    }
    const result = shapes[head]!.safeParse(input);
    if (result.success) return result.data as z.output<T[keyof T]>;
    for (const issue of result.error.issues) context.issues.push({ ...issue, input } as never);
    return z.NEVER;
  });
}
