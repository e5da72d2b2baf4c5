import type { Design } from '../design-schema.ts';

/** What deflating looks back over, in bytes. */
const WINDOW = 32_768;

/**
 * The text of a dictionary for links: designs as they begin, the likeliest last, where looking back is cheapest. Of designs of one form in other
 * units all is kept but the form's text, which the last one has. Throws when it is too long to be looked back over.
 */
export function dictionaryText(designs: readonly Design[]): string {
  const texts = designs.map((design, at) =>
    JSON.stringify(at === designs.length - 1 ? design : { ...design, form: { ...design.form, text: [] } }),
  );
  const text = texts.join('');
  if (new TextEncoder().encode(text).length > WINDOW) throw new RangeError('a dictionary is at most 32 KiB');
  return text;
}
