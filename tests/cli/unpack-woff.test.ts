import { readFileSync } from 'node:fs';
import { parse } from 'opentype.js/dist/opentype.mjs';
import { describe, expect, it } from 'vitest';
import { unpackWoff } from '../../src/cli/unpack-woff.ts';

describe('the lettering unpacked', () => {
  it('is the font that an independent reader finds in the packed file', () => {
    const file = new URL('../../shared/fonts/IBMPlexSansCondensed-Regular.woff', import.meta.url);
    const woff = new Uint8Array(readFileSync(file));
    const plain = unpackWoff(woff);
    // Every sfnt begins with its version, 0x00010000 or "OTTO" (OpenType specification, "Organization of an OpenType font").
    expect([0x00010000, 0x4f54544f]).toContain(new DataView(plain.buffer).getUint32(0));
    const [packed, unpacked] = [parse(woff.buffer), parse(plain.buffer as ArrayBuffer)];
    for (const letter of 'Rg8½°Ø') {
      const shapes = [packed, unpacked].map((font) => font.charToGlyph(letter).getPath(0, 0, 1000).commands);
      expect(shapes[0]!.length).toBeGreaterThan(3);
      expect(shapes[1]).toEqual(shapes[0]);
    }
  });

  it('refuses a file that is none', () => {
    expect(() => unpackWoff(new Uint8Array(64))).toThrow('not a WOFF file');
  });
});
