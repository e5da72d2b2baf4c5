import { z } from 'zod';
import { baseSpec } from './base.ts';
import { complain } from './complaint.ts';
import { checkSpec, openingSpec, outlineSpec, partSpec, planeSpec, pointSpec } from './construction.ts';
import { expression, scalar } from './expression.ts';
import { handleSpec } from './handle.ts';
import { namedInExpressions, words } from './names.ts';
import { parameter } from './parameter.ts';
import { mapOf, namesOf } from './shapes.ts';

const matching = (pattern: RegExp, expected: string) =>
  scalar(expected).transform((source, context): string => {
    if (pattern.test(source.text)) return source.text;
    const found = source.text.slice(0, 40);
    context.issues.push(
      complain(source, {
        code: 'form.word',
        message: `"${found}" is not ${expected}`,
        found,
        expected,
        place: source.place,
      }),
    );
    return z.NEVER;
  });

const grammar = matching(/^[123]$/, 'a grammar that is read: 1, 2 for a base, or 3 for handles').transform(
  Number,
);
const version = matching(/^[1-9]\d{0,5}$/, 'a whole number from 1').transform(Number);

/** A form file as data: expressions read, kinds and references not yet checked. README.md gives the grammar in words. */
export const formSchema = mapOf({
  form: matching(/^[a-z][a-z0-9]*(?:-[a-z0-9]+){0,8}$/, 'a name in small letters with hyphens'),
  grammar,
  version,
  title: words,
  about: words,
  parameters: namedInExpressions(parameter),
  values: namedInExpressions(expression('anything')).optional(),
  points: namedInExpressions(pointSpec).optional(),
  planes: namedInExpressions(planeSpec).optional(),
  outlines: namesOf(outlineSpec, 'a map of outlines'),
  openings: namesOf(openingSpec, 'a map of openings').optional(),
  parts: namesOf(partSpec, 'a map of parts'),
  base: baseSpec.optional(),
  handles: namesOf(handleSpec, 'a map of handles').optional(),
  checks: z.array(checkSpec, { error: 'a list of checks' }).optional(),
});

export type FormData = z.output<typeof formSchema>;
