import { z } from 'zod';
import { nearestName } from '../core/index.ts';

/**
 * An object whose unknown names are refused, each with the nearest known one. The message of every schema in this
 * folder is what was *expected*; `problemsOfSchema` puts it beside what was found.
 */
export function strictObject<Shape extends z.core.$ZodLooseShape>(shape: Shape) {
  const known = Object.keys(shape);
  return z.strictObject(shape, {
    error: (issue) => (issue.code === 'unrecognized_keys' ? unknownNames(issue.keys, known) : undefined),
  });
}

/** One line for each unknown name, in the order of the names. */
function unknownNames(names: readonly string[], known: readonly string[]): string {
  return names
    .map((name) => {
      const near = nearestName(name, known);
      return near ? `"${near}"` : `one of: ${known.join(', ')}`;
    })
    .join('\n');
}

/** Names of ours and the maker's: one line of text, not endless. */
export const nameText = z
  .string()
  .min(1, { error: 'a name' })
  .max(120, { error: 'a name of at most 120 characters' })
  // A name stands in title blocks and file lists: no line breaks or other control characters.
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is refused; \p{Cc} would need a flag that JSON Schema lacks.
  .regex(/^[^\u0000-\u001f\u007f-\u009f]*$/, { error: 'a name on one line' })
  .meta({ id: 'name' });

const LENGTH = 'a length such as "730 mm", "28 3/4 in" or a bare number';
/** A length as typed: text with or without a unit, or a bare number in the file's own unit. */
export const typedLength = z.union([z.string().max(64), z.number()], { error: LENGTH });

/** A parameter's value as typed: what kind of value each takes is for the form to say. */
export const typedValue = z.union([z.string().max(64), z.number(), z.boolean()], {
  error: 'a text in double quotes of at most 64 characters, a number, true or false',
});

/** A day by ISO 8601, that is in the calendar. */
export const dayText = z.iso.date({ error: 'a day as year-month-day, such as "2026-03-09"' });

/** How lengths are printed, and what a bare number means. */
export const unitsSchema = z.discriminatedUnion(
  'length',
  [
    strictObject({ length: z.literal('mm'), decimals: z.int().min(0).max(3) }),
    strictObject({ length: z.literal('in'), nearest: z.enum(['1/16', '1/32', '1/64']) }),
  ],
  {
    error:
      '{ "length": "mm", "decimals": 0 to 3 } or { "length": "in", "nearest": "1/16", "1/32" or "1/64" }',
  },
);

/** The address of a site, without anything behind `#`. */
export const siteText = z
  .string()
  .max(200, { error: 'an address of at most 200 characters' })
  .regex(/^https?:\/\/[\x21\x22\x24-\x7e]+$/, { error: 'an address such as "https://example.org/legs/"' });
