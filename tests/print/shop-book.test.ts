import { describe, expect, test } from 'vitest';
import type { Scene } from '../../src/drawing/index.ts';
import { layBook } from '../../src/print/book/lay-book.ts';
import { renderShopBook, type ShopBook } from '../../src/print/index.ts';
import { paperNamed, paperOf } from '../../src/print/papers.ts';
import { FONTS } from './support/prints.ts';
import { type PrintedPage, readPages } from './support/read-pdf.ts';

const META = {
  design: 'Bench',
  revision: 'A',
  date: '2026-03-09',
  lengths: { unit: 'mm', decimals: 1 },
  cautions: [],
} as const;

const textOfPages = async (bytes: Uint8Array): Promise<readonly (readonly string[])[]> =>
  (await readPages(bytes)).map(({ texts }) => texts.map(({ text }) => text));

/** Width in mm of the widest wide outline on a page. */
const widest = ({ paths }: PrintedPage): number =>
  Math.max(
    ...paths.flatMap(({ lines }) =>
      lines.map((points) => Math.max(...points.map(({ x }) => x)) - Math.min(...points.map(({ x }) => x))),
    ),
  ) *
  (25.4 / 72);

const PAPER = paperOf(paperNamed('A4')!);

const PLATE: Scene = {
  box: { minX: 0, minY: 0, maxX: 100, maxY: 40 },
  marks: [
    {
      kind: 'path',
      role: 'part',
      closed: true,
      edges: [
        [0, 0, 100, 0],
        [100, 0, 100, 40],
        [100, 40, 0, 40],
        [0, 40, 0, 0],
      ].map(([x, y, u, v]) => ({
        kind: 'line',
        from: { x: x!, y: y! },
        to: { x: u!, y: v! },
        tag: { id: 'side', role: 'left' },
      })),
    },
    {
      kind: 'text',
      role: 'dimension',
      text: 'plate 3⁄8 in',
      at: { x: 50, y: 18 },
      height: 3.5,
      angle: 0,
      align: 'middle',
      weight: 'semibold',
    },
  ],
};

const book = (chapters: ShopBook['chapters']): ShopBook => ({
  title: 'Shop book of the bench',
  about: 'Two panels and a stretcher.',
  chapters,
});

const rows = (count: number) => Array.from({ length: count }, (_, at) => [`part ${at + 1}`, `${at + 1} mm`]);

describe('the shop book', () => {
  test('shows the head of a table again on every page that it runs on to, and every row once', async () => {
    const bytes = await renderShopBook(
      book([
        {
          title: 'Cut list',
          newPage: true,
          blocks: [
            {
              kind: 'table',
              columns: [{ head: 'Part' }, { head: 'Length', align: 'right' }],
              rows: rows(90),
            },
          ],
        },
      ]),
      PAPER,
      META,
      FONTS,
    );
    const pages = await textOfPages(bytes);
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) expect(page.filter((text) => text === 'Length')).toHaveLength(1);
    const found = pages.flat().filter((text) => /^part \d+$/.test(text));
    expect(found).toEqual(rows(90).map(([name]) => name));
  });

  test('keeps a heading with what it stands over', () => {
    const seen = new Set<number>();
    for (let lines = 0; lines < 30; lines++) {
      const before = Array.from(
        { length: lines },
        (_, at) => ({ kind: 'text', text: `before ${at}` }) as const,
      );
      const pages = layBook(
        book([
          {
            title: 'Order of work',
            newPage: true,
            blocks: [
              { kind: 'room', lines: 16 },
              ...before,
              { kind: 'heading', text: 'Glue-up' },
              { kind: 'text', text: 'Two frames first.' },
            ],
          },
        ]),
        PAPER,
        META,
      );
      const textsOf = (at: number) => pages[at]!.items.map((item) => (item.kind === 'text' ? item.text : ''));
      const on = pages.findIndex((_, at) => textsOf(at).includes('Glue-up'));
      expect(textsOf(on), `${lines} lines before`).toContain('Two frames first.');
      seen.add(on);
    }
    expect([...seen]).toEqual([0, 1]);
  });

  test('draws pictures at their own size with their text as text', async () => {
    const bytes = await renderShopBook(
      book([
        {
          title: 'Views',
          newPage: true,
          blocks: [{ kind: 'drawing', scene: PLATE, caption: 'Plate' }],
        },
      ]),
      PAPER,
      META,
      FONTS,
    );
    const [page] = await readPages(bytes);
    const texts = page!.texts.map(({ text }) => text);
    expect(texts).toContain('Plate');
    expect(texts.some((text) => text.includes('plate'))).toBe(true);
    const plate = page!.paths.filter(({ width }) => Math.abs(width - 0.35) < 0.001);
    expect(widest({ ...page!, paths: plate })).toBeCloseTo(100, 3);
  });

  test('gives the same bytes for the same input', async () => {
    const input = book([{ title: 'Views', newPage: true, blocks: [{ kind: 'drawing', scene: PLATE }] }]);
    const [a, b] = await Promise.all([1, 2].map(() => renderShopBook(input, PAPER, META, FONTS)));
    expect(Buffer.from(a!).equals(Buffer.from(b!))).toBe(true);
  });
});
