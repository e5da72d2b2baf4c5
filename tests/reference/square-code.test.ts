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
import { type PrintMeta, renderPatternPdf, renderShopBook } from '../../src/print/index.ts';
import { FONTS } from '../print/support/prints.ts';

/*
 * What is printed is read as a telephone would: the page drawn by poppler's pdftoppm, an independent PDF reader, and the code in the picture decoded by jsqr, an
 * independent reader of ISO/IEC 18004.
 */

/** Modules of 0.5 mm are about four dots wide. */
const DPI = 200;
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

/** Every code on a page, from the top: it is looked at a band at a time, because the reader takes one code in a picture. */
function codesIn(png: PNG): readonly string[] {
  const band = Math.round((66 * DPI) / 25.4);
  const texts = new Set<string>();
  for (let top = 0; top < png.height; top += Math.round(band / 4)) {
    const height = Math.min(band, png.height - top);
    const part = png.data.subarray(4 * png.width * top, 4 * png.width * (top + height));
    const found = jsqr(new Uint8ClampedArray(part), png.width, height, { inversionAttempts: 'dontInvert' });
    if (found !== null) texts.add(found.data);
  }
  return [...texts];
}

async function printed(design: Design, more: Partial<PrintMeta> = {}) {
  const computed = compute(design);
  if (!computed.ok) throw new Error(JSON.stringify(computed.problems));
  const { value } = computed;
  const [first] = value.patterns;
  const meta = { ...metaOf(value), ...more };
  return { value, pdf: await renderPatternPdf([printOf(value, first!)], meta, FONTS) };
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
  ] as const)('on the first sheet of %s holds its design, on %s', async (name, size, site, start) => {
    const base = demo(name);
    const design = { ...base, paper: { ...base.paper, size }, ...site };
    const { value, pdf } = await printed(design);
    const texts = codesIn(picture(pdf, 1));
    expect(texts).toHaveLength(1);
    expect(texts[0]).toMatch(start);
    const read = readLink(texts[0]!);
    expect(read.ok && writeDesign(read.value.design)).toBe(writeDesign({ ...design, grids: value.grids }));
  });

  it('becomes several where one is too small, and words where none will do', async () => {
    const design = demo('lamp-table-leg');
    // Signs that nothing packs: a quarter more than one code of the widest kind holds.
    const noise = Array.from({ length: 1100 }, (_, at) =>
      ((at * 7919 + at * at * 31) % 36).toString(36),
    ).join('');
    const long = `legwright:#design=1.${noise}`;
    const { pdf } = await printed(design, { link: long });
    const texts = codesIn(picture(pdf, 1));
    expect(texts).toHaveLength(2);
    const pieces = texts.map((text) => /#part=(\d)-2-[0-9a-f]{4}\.(.*)$/.exec(text)!);
    const whole = pieces.toSorted((a, b) => a[1]!.localeCompare(b[1]!)).map((piece) => piece[2]);
    expect(`legwright:#design=${whole.join('')}`).toBe(long);
    const { pdf: none } = await printed(design, { link: `${long}${noise.repeat(4)}` });
    expect(codesIn(picture(none, 1))).toEqual([]);
  });

  it('stands in the shop book as well', async () => {
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
    const texts = codesIn(picture(pdf, pages));
    const read = readLink(texts[0]!);
    expect(read.ok && read.value.design.name).toBe(design.name);
  });
});

function writeBook(pdf: Uint8Array): string {
  writeFileSync(join(folder, 'book.pdf'), pdf);
  return 'book.pdf';
}
