import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { boardsChapter } from '../../../src/design/book/boards-chapter.ts';
import { drillingChapter, leafChapter } from '../../../src/design/book/wood-chapters.ts';
import {
  type Computed,
  compute,
  type Design,
  readDesign,
  readResult,
  resultOf,
  writeResult,
} from '../../../src/design/index.ts';
import type { BookBlock, BookChapter } from '../../../src/print/index.ts';

const FILE = 'demo/long-table.json';

let design: Design;
let computed: Computed;

const made = (of: Design): Computed => {
  const found = compute(of, { wanted: { patterns: [], standing: false } });
  if (!found.ok) throw new Error(found.problems.map(({ message }) => message).join('\n'));
  return found.value;
};

beforeAll(() => {
  const read = readDesign(readFileSync(FILE, 'utf8'), FILE);
  if (!read.ok) throw new Error(read.problems[0]!.message);
  design = read.value.design;
  computed = made(design);
});

const tables = ({ blocks }: BookChapter) => blocks.filter((each) => each.kind === 'table');
const textsIn = (blocks: readonly BookBlock[]): string =>
  blocks
    .flatMap((each) => (each.kind === 'text' ? [each.text] : each.kind === 'list' ? each.items : []))
    .join('\n');
const style = () => ({ lengths: computed.lengths });

describe('the leaf map of the shop book', () => {
  it('gives every face of the match its own leaf, in the order of the board, and says how it is turned', () => {
    const chapter = leafChapter(computed.wood!.matches, style());
    const [leaves] = tables(chapter);
    const rows = leaves!.rows;
    expect(rows.map(([piece]) => piece).toSorted()).toEqual(['BL', 'BR', 'FL', 'FR']);
    expect(rows.map((row) => row[3])).toEqual(['1', '2', '3', '4']);
    // Mates opened like a book show the two faces that met at the saw.
    expect(rows.map((row) => row[4])).toEqual([
      'its lower face',
      'its upper face',
      'its lower face',
      'its upper face',
    ]);
    expect(new Set(rows.map((row) => row[5])).size).toBe(1);
  });

  it('tells what was taken between mates: a kerf, and of both faces what sawing leaves to plane', () => {
    const [, drift] = tables(leafChapter(computed.wood!.matches, style()));
    const mates = drift!.rows.filter(([, kind]) => kind === 'mates');
    // By hand from the plan in the file: 1.3 + 2 × (0.8 + 1.6 / 2 + 0.5) mm.
    expect(mates.map((row) => row[2])).toEqual(['5.5 mm', '5.5 mm']);
  });

  it('has nothing to say of a base without leaves', () => {
    expect(leafChapter([], style()).blocks).toEqual([]);
  });
});

describe('drilling the top', () => {
  it('leaves what the top is thick less the depth, and names each hole of the pattern', () => {
    const chapter = drillingChapter(computed.wood!, computed.base!, style());
    const { depth, left, rows } = computed.wood!.inserts!;
    expect(depth + left).toBeCloseTo(28, 9);
    const [holes] = tables(chapter);
    expect(holes!.rows).toHaveLength(rows.reduce((sum, row) => sum + row.holes.length, 0));
    expect(textsIn(chapter.blocks)).toContain('M6 inserts');
  });
});

describe('the boards of the shop book', () => {
  it('counts what is cut into whole: volume and price by hand', () => {
    const chapter = boardsChapter(computed, style());
    const [account, offcuts] = tables(chapter);
    // 2150 × 235 × 50.8 mm in board feet of 12 × 12 × 1 in, at 7.80 a foot.
    const feet = (2150 * 235 * 50.8) / (25.4 ** 3 * 144);
    expect(account!.rows).toEqual([
      [
        'A',
        '2150.0 × 235.0 × 50.8 mm',
        'BL, FL, FR, BR',
        expect.stringMatching(/^\d+\.\d %$/),
        feet.toFixed(2),
        ((2150 * 235 * 50.8) / 1e9).toFixed(4),
        `${(feet * 7.8).toFixed(2)} EUR`,
      ],
    ]);
    expect(offcuts!.rows[0]![0]).toBe('A');
    expect(textsIn(chapter.blocks)).toMatch(/Not touched: B\./);
    expect(textsIn(chapter.blocks)).toMatch(/arm \(FL, BL, FR, BR\): there is no place yet\./);
    expect(chapter.blocks.filter(({ kind }) => kind === 'drawing')).toHaveLength(1);
  });

  it('says of a part that lies over a knot that nothing may be cut', () => {
    const [placement] = design.wood!.placements!;
    const wood = { ...design.wood, placements: [{ ...placement!, x: '1100 mm', y: '120 mm' }] };
    const chapter = boardsChapter(made({ ...design, wood }), style());
    expect(textsIn(chapter.blocks)).toMatch(/STOP: leg 1 lies over a knot of A by \d+ mm²\./);
  });

  it('stays away where no boards are named', () => {
    const { boards: _, placements: __, bookmatch: ___, resaw: ____, ...wood } = design.wood!;
    expect(boardsChapter(made({ ...design, wood }), style()).blocks).toEqual([]);
  });
});

describe('the wood in a result', () => {
  it('says where every leaf lies on its board, so that another program can lay it again', () => {
    const text = writeResult(resultOf(computed));
    const read = readResult(text, 'result.json');
    expect(read.ok).toBe(true);
    const { wood, base } = JSON.parse(text);
    const [match] = wood.matches;
    expect(match.leaves.map(({ leaf }: { leaf: number }) => leaf)).toEqual([1, 2, 3, 4]);
    const [board] = wood.boards;
    for (const {
      piece,
      toBoard: [a, b, c, d, e, f],
    } of match.leaves) {
      const placed = base.placed.find(({ id }: { id: string }) => id === piece);
      for (const { from } of placed.face[0].outer) {
        const [x, y] = [a * from[0] + c * from[1] + e, b * from[0] + d * from[1] + f];
        // On the board, and in the box of what is laid there for all four.
        expect(x).toBeGreaterThan(159);
        expect(x).toBeLessThan(160 + 720);
        expect(y).toBeGreaterThan(39);
        expect(y).toBeLessThan(40 + 90);
      }
    }
    expect(board.laid).toHaveLength(1);
    // Mates are turned over from each other.
    const signs = match.leaves.map(({ toBoard: [a, b, c, d] }: { toBoard: number[] }) =>
      Math.sign(a! * d! - b! * c!),
    );
    expect(signs).toEqual([-signs[1], signs[1], -signs[3], signs[3]]);
  });
});
