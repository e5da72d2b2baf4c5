import { z } from 'zod';
import { directionSpec, spaceSpec } from './base.ts';
import { byHead } from './by-head.ts';
import { complain } from './complaint.ts';
import { expression, pointOrCoordinates, scalar } from './expression.ts';
import { nameText, oneOf, words } from './names.ts';
import { mapOf } from './shapes.ts';

/** `outline.corner`. */
const cornerRef = scalar('a corner, written outline.corner').transform((source, context) => {
  const match = /^([a-z][a-z0-9_]*)\.([a-z][a-z0-9_]*)$/.exec(source.text);
  if (match !== null) return { kind: 'corner' as const, outline: match[1]!, corner: match[2]!, source };
  const expected = 'outline.corner';
  const found = source.text.slice(0, 40);
  const message = `"${found}" names no corner of an outline: write ${expected}`;
  context.issues.push(
    complain(source, { code: 'form.corner', message, found, expected, place: source.place }),
  );
  return z.NEVER;
});

const common = {
  label: words,
  moves: z
    .array(nameText, { error: 'a list of parameters' })
    .min(1, { error: 'at least one parameter' })
    .max(6, { error: 'at most six parameters' }),
  when: expression('flag').optional(),
};

/** A point that can be pulled: of a part's plane, or of the base as it is seen in some views. */
export const handleSpec = byHead('a handle', {
  part: mapOf({
    ...common,
    part: nameText,
    at: pointOrCoordinates.optional(),
    corner: cornerRef.optional(),
    along: expression('angle').optional(),
  }).refine(({ at, corner }) => (at === undefined) !== (corner === undefined), {
    error: 'a handle with one of at and corner',
  }),
  views: mapOf({
    ...common,
    views: z
      .array(oneOf('front', 'side', 'plan'), { error: 'front, side, plan, or some of them in [ ]' })
      .min(1, { error: 'at least one view' }),
    at: spaceSpec,
    along: directionSpec.optional(),
  }),
});

export type HandleSpec = z.output<typeof handleSpec>;
