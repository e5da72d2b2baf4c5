import { deflateSync } from 'fflate';
import { sha256 } from '../../core/index.ts';
import { type Design, designSchema } from '../design-schema.ts';
import { DICTIONARIES } from './dictionaries.ts';

/** Bytes before the packed text: number of the dictionary, check of the text, length of what follows. */
export const HEAD = { dictionary: 1, check: 4, length: 3 } as const;

/**
 * A design in as few bytes as may be: its text without blanks, its names in the order of the schema, deflated (RFC 1951) against whichever of the
 * numbered dictionaries leaves least. The same design always gives the same bytes. A design that breaks its own schema throws.
 */
export function packDesign(design: Design): Uint8Array {
  const text = JSON.stringify(designSchema.parse(design));
  const bytes = new TextEncoder().encode(text);
  let packed: Uint8Array | undefined;
  let number = 0;
  for (const [at, dictionary] of DICTIONARIES.entries()) {
    const tried = deflateSync(bytes, { level: 9, mem: 8, dictionary });
    if (packed !== undefined && tried.length >= packed.length) continue;
    packed = tried;
    number = at;
  }
  if (packed === undefined) throw new RangeError('there are no dictionaries');
  const { length } = packed;
  const head = [number, ...checkOf(text), length >> 16, (length >> 8) & 0xff, length & 0xff];
  return Uint8Array.from([...head, ...packed]);
}

/** The first four bytes of the SHA-256 of a text. */
export function checkOf(text: string): readonly number[] {
  const digest = sha256(text);
  return [0, 2, 4, 6].map((at) => Number.parseInt(digest.slice(at, at + 2), 16));
}
