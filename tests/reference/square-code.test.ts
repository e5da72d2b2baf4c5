import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import jsqr from 'jsqr';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  compute,
  type Design,
  metaOf,
  printOf,
  readDesign,
  readLink,
  resolvePaper,
  shopBookOf,
  writeDesign,
} from '../../src/design/index.ts';
import { renderPatternPdf, renderShopBook } from '../../src/print/index.ts';
import { type SquareCode, squareCodes, widthOfCode } from '../../src/print/square-code/square-codes.ts';
import { FONTS } from '../print/support/prints.ts';

/** Drawing pages and reading them takes its time. */
const PATIENCE = 240_000;

/*
 * What is printed is read as a telephone would: the page drawn by poppler's pdftoppm, an independent PDF reader, and the code in the picture decoded by jsqr, an
 * independent reader of ISO/IEC 18004.
 */

/** Modules of 0.5 mm are about six dots wide. */
const DPI = 300;
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'legwright-code-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function demo(name: string): Design {
  const read = readDesign(readFileSync(new URL(`../../demo/${name}.json`, import.meta.url), 'utf8'), name);
  if (!read.ok) throw new Error(name);
  return read.value.design;
}

function picture(pdf: Uint8Array, page: number): PNG {
  const file = join(folder, 'page.pdf');
  writeFileSync(file, pdf);
  execFileSync('pdftoppm', [
    '-r',
    `${DPI}`,
    '-png',
    '-f',
    `${page}`,
    '-l',
    `${page}`,
    '-singlefile',
    file,
    join(folder, 'page'),
  ]);
  return PNG.sync.read(readFileSync(join(folder, 'page.png')));
}

/** The code in one half of a page, from the top: looked for a band at a time, because the reader takes one code in a picture. */
function codeIn(png: PNG, half: 'left' | 'right'): string | undefined {
  const band = Math.round((66 * DPI) / 25.4);
  const width = Math.floor(png.width / 2);
  const left = half === 'left' ? 0 : png.width - width;
  for (let top = 0; top + band <= png.height; top += Math.round(band / 3)) {
    const part = new Uint8ClampedArray(4 * width * band);
    for (let row = 0; row < band; row++) {
      const from = 4 * ((top + row) * png.width + left);
      part.set(png.data.subarray(from, from + 4 * width), 4 * row * width);
    }
    const found = jsqr(part, width, band, { inversionAttempts: 'dontInvert' });
    if (found !== null && found.data !== '') return found.data;
  }
  return undefined;
}

/** What a code reads as, five dots a module. */
function textOf(code: SquareCode): string {
  const [dots, white] = [5, 4];
  const size = (code.length + 2 * white) * dots;
  const data = new Uint8ClampedArray(4 * size * size).fill(255);
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      const isDark = code[Math.floor(y / dots) - white]?.[Math.floor(x / dots) - white] ?? false;
      if (isDark) data.fill(0, 4 * (y * size + x), 4 * (y * size + x) + 3);
    }
  }
  return jsqr(data, size, size)!.data;
}

async function printed(design: Design) {
  const computed = compute(design);
  if (!computed.ok) throw new Error(JSON.stringify(computed.problems));
  const { value } = computed;
  const [first] = value.patterns;
  return { value, pdf: await renderPatternPdf([printOf(value, first!)], metaOf(value), FONTS) };
}

describe('the square code of a pattern', () => {
  it.each([
    ['desk-knee-leg', 'A4', {}, /^legwright:#design=1\./],
    [
      'desk-foot-rail',
      'Letter',
      { site: 'https://example.org/legs/' },
      /^https:\/\/example\.org\/legs\/#design=1\./,
    ],
  ] as const)(
    'on the first sheet of %s holds its design, on %s',
    async (name, size, site, start) => {
      const base = demo(name);
      const design = { ...base, paper: { ...base.paper, size }, ...site };
      const { value, pdf } = await printed(design);
      const text = codeIn(picture(pdf, 1), 'right');
      expect(text).toMatch(start);
      const read = readLink(text!);
      expect(read.ok && writeDesign(read.value.design)).toBe(writeDesign({ ...design, grids: value.grids }));
    },
    PATIENCE,
  );

  it('becomes several where one is too small, and none where they would be too many', () => {
    // Signs that nothing packs: more than one code of this width holds.
    const noise = Array.from({ length: 1100 }, (_, at) =>
      ((at * 7919 + at * at * 31) % 36).toString(36),
    ).join('');
    const long = `legwright:#design=1.${noise}`;
    const codes = squareCodes(long, 62);
    expect(codes).toHaveLength(2);
    for (const code of codes) expect(widthOfCode(code)).toBeLessThanOrEqual(62);
    const pieces = codes.map((code) => /#part=(\d)-2-[0-9a-f]{4}\.(.*)$/.exec(textOf(code))!);
    expect(`legwright:#design=${pieces.map((piece) => piece[2]).join('')}`).toBe(long);
    expect(pieces.map((piece) => piece[1])).toEqual(['1', '2']);
    expect(squareCodes(`${long}${noise.repeat(4)}`, 62)).toEqual([]);
    expect(squareCodes(long, 10)).toEqual([]);
  });

  it(
    'stands in the shop book as well',
    async () => {
      const design = demo('reader-stool');
      const computed = compute(design, { wanted: { patterns: [] } });
      if (!computed.ok) throw new Error('reader-stool');
      const paper = resolvePaper(design.paper, design.units.length);
      if (!paper.ok) throw new Error('paper');
      const { value } = computed;
      const pdf = await renderShopBook(shopBookOf(value), paper.value, metaOf(value), FONTS);
      const pages = Number(
        /Pages:\s+(\d+)/.exec(execFileSync('pdfinfo', [join(folder, writeBook(pdf))]).toString())![1],
      );
      const read = readLink(codeIn(picture(pdf, pages), 'left')!);
      expect(read.ok && read.value.design.name).toBe(design.name);
    },
    PATIENCE,
  );
});

function writeBook(pdf: Uint8Array): string {
  writeFileSync(join(folder, 'book.pdf'), pdf);
  return 'book.pdf';
}
