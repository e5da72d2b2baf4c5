import { readFileSync } from 'node:fs';
import { type Lettering, readLettering } from '../../src/drawing/index.ts';

export function fontBytes(weight: 'Regular' | 'SemiBold'): Uint8Array {
  const file = new URL(`../../shared/fonts/IBMPlexSansCondensed-${weight}.woff`, import.meta.url);
  return new Uint8Array(readFileSync(file));
}

/** The lettering from the fonts that come with the tool. */
export function testLettering(): Lettering {
  return readLettering({ regular: fontBytes('Regular'), semibold: fontBytes('SemiBold') });
}
