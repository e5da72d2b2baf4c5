import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { deflateSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import dictionaries from '../../../shared/links/dictionaries.json';
import { sha256 } from '../../../src/core/index.ts';
import { type Design, designLink, readDesign, readLink, writeDesign } from '../../../src/design/index.ts';
import { fromBase64url, toBase64url } from '../../../src/design/link/base64url.ts';
import { dictionaryText } from '../../../src/design/link/dictionary-text.ts';
import { packDesign } from '../../../src/design/link/pack-design.ts';
import { linkParts } from '../../../src/print/index.ts';
import { sampleDesign } from '../sample-design.ts';

const DEMO = new URL('../../../demo/', import.meta.url);
const DEMOS = readdirSync(DEMO)
  .filter((name) => name.endsWith('.json'))
  .map((name): readonly [string, Design] => {
    const read = readDesign(readFileSync(new URL(name, DEMO), 'utf8'), name);
    if (!read.ok) throw new Error(name);
    return [name, read.value.design];
  });

function designIn(text: string): Design {
  const read = readLink(text);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return read.value.design;
}

const codesOf = (text: string): readonly string[] => {
  const read = readLink(text);
  return read.ok ? [] : read.problems.map(({ code }) => code);
};

const leg = sampleDesign('splayed-leg', ['leg']);

describe('a link', () => {
  it.each(DEMOS)(
    'holds %s whole, in fewer than 700 signs, or 1,500 with the wood planned and cauls laid',
    (_, design) => {
      const link = designLink(design);
      expect(writeDesign(designIn(link))).toBe(writeDesign(design));
      expect(link.length).toBeLessThan(design.wood === undefined ? 700 : 1500);
      expect(link).toMatch(/^legwright:#design=1\.[A-Za-z0-9_-]+$/);
    },
  );

  it('holds any setting, any words, a form of any text', () => {
    const text = fc.string({ unit: 'grapheme', maxLength: 30 }).filter((each) => !/\p{Cc}/u.test(each));
    const setting = fc.record({
      name: text.filter((each) => each.length > 0),
      height: fc.double({ min: 0, max: 1e6, noNaN: true }),
      lines: fc.array(fc.tuple(fc.nat(100), text), { maxLength: 5 }),
    });
    fc.assert(
      fc.property(setting, fc.constantFrom('mm' as const, 'in' as const), ({ name, height, lines }, unit) => {
        const design = sampleDesign('curved-leg', ['leg'], unit);
        const changed: Design = {
          ...design,
          name,
          parameters: { ...design.parameters, overall_height: height, own: name },
          form: {
            ...design.form,
            text: lines.reduce((all, [at, line]) => all.with(at, line), design.form.text),
          },
        };
        expect(designIn(designLink(changed))).toEqual(changed);
      }),
      { numRuns: 40 },
    );
  });

  it('leads to the site of the design, and is read from a whole address that mail has broken', () => {
    const link = designLink(leg, 'https://example.org/legs/#shape');
    expect(link.startsWith('https://example.org/legs/#design=1.')).toBe(true);
    expect(designIn(`Have a look:\n${link.replace(/(.{60})/g, '$1\r\n ')}`)).toEqual(leg);
  });

  it('is read from its parts in any order, and tells which are missing', () => {
    const link = designLink(leg);
    const parts = linkParts(link, 90);
    expect(parts.length).toBeGreaterThan(2);
    expect(Math.max(...parts.map(({ length }) => length))).toBeLessThanOrEqual(120);
    expect(designIn(parts.toReversed().join('\n'))).toEqual(leg);
    expect(designIn(parts.join(''))).toEqual(leg);
    expect(linkParts(link, link.length)).toEqual([link]);
    const missing = readLink([parts[0], ...parts.slice(2)].join(' '));
    expect(missing.ok ? '' : missing.problems[0]!.message).toBe(
      `This design is held in ${parts.length} codes, and code 2 is missing: scan every one of them.`,
    );
    const other = linkParts(designLink({ ...leg, name: 'Other' }), 90);
    expect(codesOf([other[0], ...parts.slice(1)].join('\n'))).toEqual(['link.parts']);
  });

  it('that is damaged, cut or newer has one clear problem', () => {
    const link = designLink(leg);
    const { length } = link;
    const at = link.indexOf('=1.') + 3;
    for (let sign = at; sign < length; sign++) {
      const changed = link.slice(0, sign) + (link[sign] === 'A' ? 'B' : 'A') + link.slice(sign + 1);
      const codes = codesOf(changed);
      // The last sign may carry bits that no byte needs.
      if (codes.length === 0) expect(sign).toBe(length - 1);
      else expect(codes).toEqual([expect.stringMatching(/^link\.(damaged|cut|newer)$/)]);
      expect(codesOf(link.slice(0, sign))).toEqual(['link.cut']);
    }
    expect(codesOf(link.replace('design=1.', 'design=2.'))).toEqual(['link.newer']);
    expect(codesOf('https://example.org/legs/')).toEqual(['link.none']);
    expect(codesOf('')).toEqual(['link.none']);
    expect(codesOf(`${link}AAAA`)).toEqual(['link.damaged']);
    const unknown = packDesign(leg).with(0, 250);
    expect(codesOf(`#design=1.${toBase64url(unknown)}`)).toEqual(['link.newer']);
  });

  it('does not unpack without end', () => {
    const bomb = deflateSync(new Uint8Array(40_000_000), { level: 9 });
    const { length } = bomb;
    const bytes = Uint8Array.from([0, 0, 0, 0, 0, length >> 16, (length >> 8) & 255, length & 255, ...bomb]);
    expect(codesOf(`#design=1.${toBase64url(bytes)}`)).toEqual(['link.damaged']);
  });
});

describe('the dictionaries of links', () => {
  it('are made of designs as they begin, the text of the form once', () => {
    const [inches, mm] = [sampleDesign('stool-base', ['leg'], 'in'), sampleDesign('stool-base', ['leg'])];
    const text = dictionaryText([inches, mm]);
    expect(text.endsWith(JSON.stringify(mm))).toBe(true);
    expect(text.split('form: stool-base')).toHaveLength(2);
    expect(() => dictionaryText(Array.from({ length: 30 }, () => inches))).toThrow('32 KiB');
  });

  // Links on paper outlive programs: a dictionary that changes or goes makes them unreadable. New ones are added at the end.
  it('are the same for ever', () => {
    expect(dictionaries.dictionaries.map((text) => sha256(text).slice(0, 12))).toEqual([
      '9cad82d03966',
      '926058c379a3',
      '6ad91a9a93d7',
      '500e8e7d9d94',
      '28b5e7a52b52',
      '3a3879c0742b',
      '93cc4dbd9ea0',
      '2aeb1aee392f',
      '89cfb8710a5c',
      '18da26ca579b',
      'dbb7151685a8',
      '9eafbd87cc46',
    ]);
  });
});

describe('the alphabet for addresses', () => {
  it('is that of RFC 4648, as the platform writes it', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 40 }), (bytes) => {
        const text = toBase64url(bytes);
        expect(text).toBe(Buffer.from(bytes).toString('base64url'));
        expect([...fromBase64url(text)]).toEqual([...bytes]);
      }),
    );
  });
});
