/** One letter of a text and how it is set. */
export interface SetCharacter {
  readonly character: string;
  readonly as: 'plain' | 'numerator' | 'denominator';
}

const FRACTION_SLASH = '\u2044';
const FRACTION = /(\d+)\u2044(\d+)/g;

/**
 * Letters of a text with the numerals of its fractions told apart: digits that touch a fraction slash (U+2044) are
 * raised or lowered, all else is plain.
 */
export function setCharacters(text: string): readonly SetCharacter[] {
  const set: SetCharacter[] = [];
  const push = (part: string, as: SetCharacter['as']): void => {
    for (const character of part) set.push({ character, as });
  };
  let done = 0;
  for (const found of text.matchAll(FRACTION)) {
    push(text.slice(done, found.index), 'plain');
    push(found[1]!, 'numerator');
    push(FRACTION_SLASH, 'plain');
    push(found[2]!, 'denominator');
    done = found.index + found[0].length;
  }
  push(text.slice(done), 'plain');
  return set;
}

/**
 * A length as it is set on paper: `28 3/4"` becomes 28, a thin space, a fraction with a true fraction slash and a
 * double prime; `2' 4"` gets its prime. Text without fractions or inch marks comes back unchanged.
 */
export function setFractions(text: string): string {
  return text
    .replace(/(\d)[ -](\d+)\/(\d+)/g, `$1\u2009$2${FRACTION_SLASH}$3`)
    .replace(/(^|[^\d/])(\d+)\/(\d+)(?![\d/])/g, `$1$2${FRACTION_SLASH}$3`)
    .replace(/(\d)"/g, '$1\u2033')
    .replace(/(\d)'/g, '$1\u2032');
}
