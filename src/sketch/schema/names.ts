import { z } from 'zod';
import { isReserved } from '../expression/words.ts';
import { complain } from './complaint.ts';
import { scalar } from './expression.ts';
import { namesOf } from './shapes.ts';

const NAME = /^[a-z][a-z0-9_]{0,39}$/;

/** A text that names something of the form, such as an outline. */
export const nameText = scalar('a name').transform((source, context) => {
  if (NAME.test(source.text)) return source;
  const message = `"${source.text.slice(0, 40)}" cannot be a name: names are small letters, digits and _, a letter first`;
  context.issues.push(
    complain(source, { code: 'form.name', message, found: source.text.slice(0, 40), place: source.place }),
  );
  return z.NEVER;
});

/** Named things that expressions mention, so that words of the language cannot be their names. */
export function namedInExpressions<T extends z.ZodType>(item: T) {
  return namesOf(item, 'a map of names').superRefine((map, context) => {
    for (const name of Object.keys(map)) {
      if (!isReserved(name)) continue;
      const message = `"${name}" has a meaning in expressions, so nothing can be called by it`;
      context.addIssue({ ...complain(map, { code: 'form.name', message, found: name }), path: [name] });
    }
  });
}

/** Words for the maker: a title, a label, a line of help. */
export const words = scalar('a line of text').transform((source, context) => {
  const text = source.text.trim();
  if (text.length > 0 && text.length <= 400) return text;
  const message = text === '' ? 'a line of text is missing' : 'the text has more than 400 characters';
  context.issues.push(
    complain(source, { code: 'form.text', message, expected: 'a line of text', place: source.place }),
  );
  return z.NEVER;
});

/** One of a few words. */
export function oneOf<const T extends readonly string[]>(...options: T) {
  return scalar(`one of ${options.join(', ')}`).transform((source, context): T[number] => {
    if (options.includes(source.text)) return source.text;
    const expected = `one of ${options.join(', ')}`;
    const message = `"${source.text.slice(0, 40)}" is not ${expected}`;
    context.issues.push(
      complain(source, {
        code: 'form.word',
        message,
        found: source.text.slice(0, 40),
        expected,
        place: source.place,
      }),
    );
    return z.NEVER;
  });
}
