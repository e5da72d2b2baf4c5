import { beforeAll, describe, expect, test } from 'vitest';
import { loadSolids, type Solids } from '../../../src/base/index.ts';
import {
  type Computed,
  compute,
  cutListCsv,
  metaOf,
  resolvePaper,
  shopBookOf,
} from '../../../src/design/index.ts';
import { layBook } from '../../../src/print/book/lay-book.ts';
import { type BookBlock, type BookChapter, renderShopBook, type ShopBook } from '../../../src/print/index.ts';
import { BASE_FORMS } from '../../forms/forms.ts';
import { FONTS } from '../../print/support/prints.ts';
import { readPages } from '../../print/support/read-pdf.ts';
import { sampleDesign } from '../sample-design.ts';
import { readCsv } from './read-csv.ts';

const MM_PER_INCH = 25.4;
/** Of a board foot, 144 in³. */
const MM3_PER_BOARD_FOOT = 144 * MM_PER_INCH ** 3;

let solids: Solids;
beforeAll(async () => {
  solids = await loadSolids();
});

const computedOnes = new Map<string, Computed>();

/** A base form as it comes, in a unit; A4 for millimetres and Letter for inches. */
function computedOf(form: string, unit: 'mm' | 'in' = 'mm'): Computed {
  const key = `${form} ${unit}`;
  const before = computedOnes.get(key);
  if (before !== undefined) return before;
  const computed = compute(sampleDesign(form, ['leg'], unit), { solids, wanted: { patterns: [] } });
  if (!computed.ok) throw new Error(computed.problems.map(({ message }) => message).join('\n'));
  computedOnes.set(key, computed.value);
  return computed.value;
}

const books = new Map<Computed, ShopBook>();

function bookOf(computed: Computed): ShopBook {
  const book = books.get(computed) ?? shopBookOf(computed);
  books.set(computed, book);
  return book;
}

const chapterOf = (computed: Computed, title: string): BookChapter => {
  const found = bookOf(computed).chapters.find((chapter) => chapter.title === title);
  if (found === undefined) throw new Error(`no chapter ${title}`);
  return found;
};

type Table = Extract<BookBlock, { kind: 'table' }>;
const tablesOf = ({ blocks }: BookChapter): readonly Table[] =>
  blocks.filter((each) => each.kind === 'table');

const headingsOf = ({ blocks }: BookChapter): readonly string[] =>
  blocks.flatMap((each) => (each.kind === 'heading' ? [each.text] : []));

/** A printed length as a reader of the page takes it, mm: `3132 mm`, `28 3/4 in`, `7/8 in`; the unit may follow on a later figure. */
function readPrinted(text: string, unit: string): number {
  const parts = text.replace(/ (mm|in)$/, '').split(' ');
  const value = parts.reduce((sum, part) => {
    const [above, below = '1'] = part.split('/');
    return sum + Number(above) / Number(below);
  }, 0);
  return unit === 'mm' ? value : value * MM_PER_INCH;
}

describe.each(BASE_FORMS.map(({ name }) => name))('the shop book of %s', (form) => {
  test('has its chapters in the order of work', () => {
    const titles = bookOf(computedOf(form)).chapters.map(({ title }) => title);
    const wanted = [
      'The base',
      'Parts and marks',
      'Cut list',
      'What the checks say',
      'Before cutting',
      'Each part',
      'Marking out the joints',
      'Saw settings',
      'Gluing up',
      'The top and the feet',
      'By hand',
      'How it stands',
      'What must be exact',
    ];
    const said = computedOf(form).findings.some(({ severity }) => severity !== 'note');
    // Chapters of the wood and of the design itself stand between and after these.
    expect(titles.filter((title) => wanted.includes(title))).toEqual(
      wanted.filter((title) => said || title !== 'What the checks say'),
    );
  });

  test('names every piece by its part and its mark, and every joint', () => {
    const computed = computedOf(form);
    const { base, made, joints } = computed.base!;
    const [pieces] = tablesOf(chapterOf(computed, 'Parts and marks'));
    expect(pieces!.rows).toHaveLength(base.parts.length);
    for (const { label, members } of made) {
      const marks = pieces!.rows.filter(([name]) => name === label).map(([, mark]) => mark);
      expect(marks.toSorted()).toEqual(members.map(({ mark }) => mark || '–').toSorted());
    }
    const headings = headingsOf(chapterOf(computed, 'Marking out the joints'));
    const names = new Set(joints.joints.map(({ name }) => name));
    expect(headings).toHaveLength(names.size);
    for (const { name, label } of joints.joints) {
      const count = joints.joints.filter((each) => each.name === name).length;
      expect(headings).toContain(`${label} (${count} ×)`);
    }
  });

  test('shows every part on a plate of its own', () => {
    const computed = computedOf(form);
    const drawn = chapterOf(computed, 'Each part').blocks.flatMap((each) =>
      each.kind === 'plate'
        ? [each.scene.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))]
        : [],
    );
    for (const { label } of computed.base!.made) {
      expect(drawn.some((texts) => texts.some((text) => text === `${label}, face side`))).toBe(true);
    }
  });

  test('sets the saw in the order of fewest changes, every cut once', () => {
    const computed = computedOf(form);
    const { order } = computed.base!;
    const [settings] = tablesOf(chapterOf(computed, 'Saw settings'));
    expect(settings!.rows.map(([number]) => number)).toEqual(order.groups.map((_, at) => `${at + 1}`));
    const cuts = settings!.rows.flatMap(([, , , all]) => all!.split('\n'));
    expect(new Set(cuts).size).toBe(cuts.length);
    // The printed settings themselves say how often the saw is changed, beginning square.
    const changes = (column: number, square: string): number =>
      [square, ...settings!.rows.map((row) => row[column]!)].filter(
        (now, at, all) => at > 0 && now !== all[at - 1],
      ).length;
    expect(changes(1, 'square')).toBe(order.swingChanges);
    expect(changes(2, 'upright')).toBe(order.tiltChanges);
  });

  test.each(['mm', 'in'] as const)('adds up in %s: totals are the sums of the printed figures', (unit) => {
    const computed = computedOf(form, unit);
    const [list, totals] = tablesOf(chapterOf(computed, 'Cut list'));
    const sums = new Map<string, { length: number; volume: number }>();
    for (const row of list!.rows) {
      const [part, pieces, , , rough, inAll] = row as readonly [
        string,
        string,
        string,
        string,
        string,
        string,
      ];
      const count = pieces.split(' + ').reduce((sum, each) => sum + Number(each), 0);
      const [thickness, width, length] = rough.split(' × ').map((each) => readPrinted(each, unit)) as [
        number,
        number,
        number,
      ];
      expect(readPrinted(inAll, unit)).toBeCloseTo(count * length, 9);
      const key = `${part.split('\n')[1]} ${thickness.toFixed(6)}`;
      const sum = sums.get(key) ?? { length: 0, volume: 0 };
      sums.set(key, {
        length: sum.length + count * length,
        volume: sum.volume + count * thickness * width * length,
      });
    }
    expect(totals!.rows).toHaveLength(sums.size);
    for (const [wood, thickness, length, volume] of totals!.rows as readonly [
      string,
      string,
      string,
      string,
    ][]) {
      const sum = sums.get(`${wood} ${readPrinted(thickness, unit).toFixed(6)}`)!;
      expect(readPrinted(length, unit)).toBeCloseTo(sum.length, 9);
      const [printed, per, last] =
        unit === 'mm'
          ? [volume.replace(' m³', ''), 1e9, 4]
          : [volume.replace(' board feet', ''), MM3_PER_BOARD_FOOT, 2];
      // Half a step of the last printed digit.
      expect(Math.abs(Number(printed) - sum.volume / per)).toBeLessThan(0.5001 * 10 ** -last);
    }
  });

  test.each(['mm', 'in'] as const)('has a cut list for a spreadsheet in %s that says the same', (unit) => {
    const computed = computedOf(form, unit);
    const { list } = computed.base!;
    const [head, ...rows] = readCsv(cutListCsv(computed.base!, { lengths: computed.lengths }));
    expect(head!.slice(6)).toEqual(
      ['finished', 'rough'].flatMap((kind) =>
        ['thickness', 'width', 'length'].map((size) => `${kind} ${size} (${unit})`),
      ),
    );
    expect(rows).toHaveLength(list.length);
    const [printed] = tablesOf(chapterOf(computed, 'Cut list'));
    const per = unit === 'mm' ? 1 : MM_PER_INCH;
    for (const [at, row] of rows.entries()) {
      expect(row).toHaveLength(head!.length);
      const { label, count, hands, wood, finished } = list[at]!;
      expect(row.slice(0, 4)).toEqual([label, `${count}`, `${hands.left}`, `${hands.right}`]);
      expect(row[5]).toBe(wood);
      const figures = row.slice(6).map((each) => Number(each) * per);
      for (const [i, size] of [finished.thickness, finished.width, finished.length].entries()) {
        expect(Math.abs(figures[i]! - size)).toBeLessThan(0.0501);
      }
      const rough = printed!.rows[at]![4]!.split(' × ').map((each) => readPrinted(each, unit));
      for (const [i, size] of rough.entries()) {
        expect(figures[3 + i]!).toBeCloseTo(size, 9);
        // Rough is never smaller than finished.
        expect(size).toBeGreaterThan(figures[i]! - 0.0501);
      }
    }
  });
});

describe('figures of the shop book stand under their own heads', () => {
  const table = computedOf.bind(undefined, 'raked-table', 'mm');
  const textsOf = (title: string): string =>
    chapterOf(table(), title)
      .blocks.flatMap((each) =>
        each.kind === 'text'
          ? [each.text]
          : each.kind === 'list'
            ? each.items
            : each.kind === 'table'
              ? each.rows.flat()
              : [],
      )
      .join('\n');
  const mm = (cell: string): number => Number(cell.replace(/ mm$/, ''));

  test('fixings of the top: along and across as the aprons stand, slots across the grain with more room the way that the top moves more', () => {
    const [points] = tablesOf(chapterOf(table(), 'The top and the feet'));
    const said = textsOf('The top and the feet');
    const [, narrower, wider] = /([\d.]+) mm narrower and ([\d.]+) mm wider/.exec(said)!.map(Number) as [
      number,
      number,
      number,
    ];
    expect(points!.rows.length).toBeGreaterThan(8);
    const rows = points!.rows.map(([through, ...cells]) => ({ through: through!, cells }));
    // A long apron runs along the table at one distance from the middle, the front one on the sitter's side; an end apron across it.
    const front = rows.filter(({ through }) => through === 'Long apron F').map(({ cells }) => cells.map(mm));
    const left = rows.filter(({ through }) => through === 'End apron L').map(({ cells }) => cells.map(mm));
    expect(new Set(front.map(([, across]) => across)).size).toBe(1);
    expect(front[0]![1]).toBeLessThan(-100);
    expect(new Set(front.map(([along]) => along)).size).toBe(front.length);
    expect(new Set(left.map(([along]) => along)).size).toBe(1);
    expect(left[0]![0]).toBeLessThan(-100);
    for (const { cells } of rows) {
      const across = mm(cells[1]!);
      const [width, length] = cells[2]!.replace(' mm', '').split(' × ').map(Number) as [number, number];
      // ISO 273, medium: 6.6 mm for M6. The slot is as long as that and both rooms.
      expect(width).toBe(6.6);
      const [inwards, outwards] = [mm(cells[3]!), mm(cells[4]!)];
      expect(Math.abs(width + inwards + outwards - length)).toBeLessThan(0.11);
      // A screw in the top goes outwards as the top swells and inwards as it shrinks.
      if (Math.abs(across) > 100) expect(outwards > inwards).toBe(wider > narrower);
    }
  });

  test('clamps open wider than the wood between them by at least two cauls, in sizes that are sold', () => {
    const steps = textsOf('Gluing up');
    const clamps = [...steps.matchAll(/open at least (\d+) mm.*?\(wood to wood ([\d.]+) mm\)/g)];
    expect(clamps.length).toBeGreaterThan(1);
    for (const [, opening, wood] of clamps) {
      expect(Number(opening) % 10).toBe(0);
      // Flat cauls are 18 mm thick, and so are wedges where they are thinnest.
      expect(Number(opening) - Number(wood)).toBeGreaterThanOrEqual(36);
      expect(Number(opening) - Number(wood)).toBeLessThan(36 + 2 * 15 + 10);
    }
  });

  test('what tips it, in newtons, is the weight of its kilograms', () => {
    const [, kilograms, newtons] = /(\d+) kg \((\d+) N\)/.exec(textsOf('How it stands'))!.map(Number) as [
      number,
      number,
      number,
    ];
    // Standard gravity, 9.80665 m/s² (ISO 80000-3); the kilograms are printed whole.
    expect(Math.abs(newtons - kilograms * 9.80665)).toBeLessThan(5.5);
  });

  test('an error is no likelier than its worst, and a foot is farther from a joint than its gap is wide', () => {
    const [joints] = tablesOf(chapterOf(table(), 'What must be exact'));
    for (const [label, across, toFoot, ...errors] of joints!.rows) {
      const [gapWorst, gapLikely, footWorst, footLikely] = errors.map(mm) as [number, number, number, number];
      expect(mm(toFoot!), label).toBeGreaterThan(mm(across!));
      expect(gapWorst, label).toBeGreaterThan(gapLikely);
      expect(footWorst, label).toBeGreaterThan(footLikely);
      // Half a degree over the way to the foot is most of what the foot is off: 0.0087 of it.
      expect(footLikely / mm(toFoot!)).toBeGreaterThan(0.0085);
    }
  });

  test('what is light is said in grams, or in ounces with the grams beside them', () => {
    expect(textsOf('Parts and marks')).toMatch(/about \d+ g stay of it once dry/);
    const pieces = chapterOf(computedOf('raked-table', 'in'), 'Parts and marks').blocks;
    const said = pieces.flatMap((each) => (each.kind === 'text' ? [each.text] : [])).join(' ');
    const [, ounces, grams] = /about ([\d.]+) oz \((\d+) g\)/.exec(said)!.map(Number) as [
      number,
      number,
      number,
    ];
    // 16 ounces in the pound of 0.453 592 37 kg: 28.35 g each.
    expect(Math.abs(ounces * 28.349523125 - grams)).toBeLessThan(2);
  });
});

test('a book in inches has no millimetre in it but of stock that is sold so, nor a book in millimetres an inch', () => {
  const bought = /^(?:\d+ loose tenons? of|\d+ dowels? of|mortise|hole Ø) [\d.]+\.0(?: × [\d.]+\.0)* mm/;
  for (const [unit, other] of [
    ['in', /\d (?:mm|cm²|m³)\b/],
    ['mm', /\d (?:in|in²|board feet)\b/],
  ] as const) {
    const texts = [
      'Cut list',
      'Marking out the joints',
      'Saw settings',
      'The top and the feet',
      'What must be exact',
    ].flatMap((title) =>
      chapterOf(computedOf('raked-table', unit), title).blocks.flatMap((each) => {
        if (each.kind === 'table') return each.rows.flat();
        if (each.kind === 'list') return each.items;
        return each.kind === 'text' ? [each.text] : [];
      }),
    );
    expect(texts.length).toBeGreaterThan(50);
    expect(texts.filter((text) => other.test(text.replace(bought, '')))).toEqual([]);
  }
});

describe('the printed book', () => {
  test.each([
    ['raked-table', 'mm'],
    ['crossed-base', 'in'],
  ] as const)(
    'of %s in %s has all its words within its margins, no page empty, plates at their scale',
    async (form, unit) => {
      const computed = computedOf(form, unit);
      const paper = resolvePaper(computed.design.paper, unit);
      if (!paper.ok) throw new Error('paper');
      const pages = await readPages(
        await renderShopBook(bookOf(computed), paper.value, metaOf(computed), FONTS),
      );
      for (const { width, height, texts, label } of pages) {
        // Plates may lie on their long side.
        const size = [width, height].map(Math.round).toSorted((a, b) => a - b);
        expect(size).toEqual(unit === 'mm' ? [595, 842] : [612, 792]);
        // Above, below and between the running lines.
        expect(texts.length, `page ${label}`).toBeGreaterThan(5);
        for (const { text, at, angle, width: long, size } of texts) {
          const [c, s] = [Math.cos(angle), Math.sin(angle)];
          const corners = [
            [0, 0],
            [long, 0],
            [long, 0.7 * size],
            [0, 0.7 * size],
          ].map(([u, v]) => ({ x: at.x + c * u! - s * v!, y: at.y + s * u! + c * v! }));
          for (const { x, y } of corners) {
            expect(x, text).toBeGreaterThan(10);
            expect(x, text).toBeLessThan(width - 10);
            expect(y, text).toBeGreaterThan(10);
            expect(y, text).toBeLessThan(height - 10);
          }
        }
      }
      const all = pages.flatMap(({ texts }) => texts.map(({ text }) => text));
      for (const { title } of bookOf(computed).chapters) expect(all).toContain(title);
      // Title blocks of ISO 7200 are 180 mm wide: nothing on the pages was made smaller.
      const wide = pages.flatMap(({ paths }) =>
        paths.flatMap(({ lines }) =>
          lines.map((points) => {
            const xs = points.map(({ x }) => x);
            return ((Math.max(...xs) - Math.min(...xs)) * MM_PER_INCH) / 72;
          }),
        ),
      );
      const blocks = wide.filter((each) => Math.abs(each - 180) < 0.01);
      const plates = bookOf(computed).chapters.flatMap((chapter) =>
        ['The base', 'Each part'].includes(chapter.title)
          ? chapter.blocks.filter(({ kind }) => kind === 'plate')
          : [],
      );
      expect(blocks.length).toBeGreaterThanOrEqual(plates.length);
    },
  );
});

describe.each(BASE_FORMS.map(({ name }) => name))('the book of %s as it is read', (form) => {
  const pagesOf = (computed: Computed) => {
    const paper = resolvePaper(computed.design.paper, 'mm');
    if (!paper.ok) throw new Error('paper');
    return layBook(bookOf(computed), paper.value, metaOf(computed));
  };

  test('tells in its contents, and in its bookmarks, on which page each chapter begins', () => {
    const computed = computedOf(form);
    const pages = pagesOf(computed);
    const titles = bookOf(computed).chapters.map(({ title }) => title);
    expect(pages.flatMap(({ begins = [] }) => begins)).toEqual(titles);
    const texts = pages[0]!.items.flatMap((item) => (item.kind === 'text' ? [item] : []));
    for (const title of titles) {
      const line = texts.find(({ text, height }) => text === title && height === 2.5)!;
      const number = texts.find(({ at, align }) => align === 'right' && Math.abs(at.y - line.at.y) < 0.01)!;
      const page = pages[Number(number.text) - 1]!;
      expect(page.begins).toContain(title);
      // The title stands on that page, or in the corner of its plate.
      const said = page.items.flatMap((item) => (item.kind === 'text' ? [item.text] : []));
      expect(
        said.some((text) => text === title || text.endsWith(`· ${title}`)),
        title,
      ).toBe(true);
    }
  });

  test('ends on no page that is near empty', () => {
    const last = pagesOf(computedOf(form)).at(-1)!;
    // Running lines stand below the margin of 16 mm; square codes are fills.
    const heights = last.items
      .flatMap((item) => {
        if (item.kind === 'text') return [item.at.y];
        return item.kind === 'clipped' ? [] : item.edges.map(({ from }) => from.y);
      })
      .filter((y) => y > 16);
    // Two fifths of the page, less what stands in the last strip itself.
    expect(last.height - 20 - Math.min(...heights)).toBeGreaterThan(0.3 * last.height);
  });

  test('calls ends and pieces by short names of the trade', () => {
    const computed = computedOf(form);
    const headings = headingsOf(chapterOf(computed, 'Saw settings'));
    expect(headings.length).toBeGreaterThan(1);
    const words = [...headings, ...computed.base!.made.map(({ label }) => label)];
    expect(words.filter((text) => /\b(\w+) \1\b|_|\bright$/i.test(text))).toEqual([]);
    // No label is a list of other labels.
    const lists = computed.base!.made.filter(({ label }) => label.replace(/ \(.*\)$/, '').includes(','));
    expect(lists).toEqual([]);
  });

  test('never says of a side that the saw does not reach it after setting it there', () => {
    const { blocks } = chapterOf(computedOf(form), 'Saw settings');
    const said = blocks.flatMap((each) => (each.kind === 'list' ? each.items : []));
    expect(said.filter((text) => /does not reach/.test(text))).toEqual([]);
  });

  test('calls stock that is sold in millimetres by them, in inches too', () => {
    const texts = chapterOf(computedOf(form, 'in'), 'Marking out the joints').blocks.flatMap((each) =>
      each.kind === 'text' ? [each.text] : [],
    );
    const stock = texts.flatMap(
      (text) => / of ([^.]*(?:\.\d[^.]*)*) (mm|in)\. Glued/.exec(text)?.slice(1) ?? [],
    );
    // The usual lists are metric: none of their sizes is a fraction of an inch.
    expect(stock.filter((_, at) => at % 2 === 1)).not.toContain('in');
    for (const size of stock.filter((_, at) => at % 2 === 0)) expect(size).toMatch(/^\d+\.0( × \d+\.0)+$/);
  });

  test('weighs in pounds where it measures in inches, the kilograms beside them', () => {
    const [pieces] = tablesOf(chapterOf(computedOf(form, 'in'), 'Parts and marks'));
    for (const row of pieces!.rows) {
      const [, pounds, kilograms] = /^([\d.]+) lb \(([\d.]+) kg\)$/.exec(row[4]!)!;
      // International pound of 1959, exact: 0.453 592 37 kg. Both are printed to two places.
      expect(Math.abs(Number(pounds) * 0.45359237 - Number(kilograms))).toBeLessThan(0.0075);
    }
  });
});
