import table from '../../../shared/links/dictionaries.json';

/**
 * What links leave out because both ends know it: by number, kept for ever, so that the oldest link can still be read. A new form or
 * a new version of one may bring another number; none is ever changed or taken out.
 */
export const DICTIONARIES: readonly Uint8Array[] = table.dictionaries.map((text) =>
  new TextEncoder().encode(text),
);
