import { describe, expect, test } from 'vitest';
import type { Mark, Scene, TextMark } from '../../../src/drawing/api.ts';
import { boxOfText, uprightBounds } from '../../../src/drawing/layout/oriented-box.ts';
import { boundsOfMarks } from '../../../src/drawing/scene/bounds-of-marks.ts';
import { basePicture, pictorialOf } from '../../../src/drawing/title/base-pictures.ts';
import { type PlateOptions, type PlateWay, platesOf } from '../../../src/drawing/title/plate.ts';
import { projectionSymbol } from '../../../src/drawing/title/projection-symbol.ts';
import { sheetFrame } from '../../../src/drawing/title/sheet-frame.ts';
import { standingOf } from '../../forms/standing-bases.ts';

const options: PlateOptions = {
  lengths: { unit: 'mm', decimals: 1 },
  page: { width: 210, height: 297 },
  title: {
    title: 'Reading room: long table',
    documentType: 'General arrangement',
    number: '1',
    revision: 'B',
    date: '2026-11-25',
  },
};

/** ISO 5455, as republished in drawing handbooks: 1, 2 and 5 and their tenfolds. */
const RECOMMENDED = [
  '50:1',
  '20:1',
  '10:1',
  '5:1',
  '2:1',
  '1:1',
  '1:2',
  '1:5',
  '1:10',
  '1:20',
  '1:50',
  '1:100',
];

const texts = ({ marks }: Scene): readonly TextMark[] =>
  marks.filter((mark: Mark): mark is TextMark => mark.kind === 'text');

const base = standingOf('shallow-v-trestle');
const pictures = {
  front: basePicture(base, 'front'),
  left: basePicture(base, 'left'),
  plan: basePicture(base, 'plan'),
};
const { front, left, plan } = pictures;

/** How much of the world a picture's figure is on paper. */
function widthOf({ marks }: Scene, role: string): number {
  const xs = marks.flatMap((mark) =>
    mark.kind === 'path' && mark.role === role ? mark.edges.flatMap(({ from, to }) => [from.x, to.x]) : [],
  );
  return Math.max(...xs) - Math.min(...xs);
}

describe('a plate', () => {
  test.each([
    [210, 297],
    [215.9, 279.4],
    [297, 420],
    [420, 594],
  ])('on paper of %d × %d mm has a recommended scale, and everything within its frame', (width, height) => {
    const plates = platesOf([{ plates: [[[front]]] }], { ...options, page: { width, height } });
    expect(plates).toHaveLength(1);
    const [{ scene, scale }] = plates as [(typeof plates)[number]];
    expect(RECOMMENDED).toContain(scale);
    expect(scene.box).toEqual({ minX: 0, minY: 0, maxX: width, maxY: height });
    for (const mark of scene.marks.filter(({ role }) => role === 'visible' || role === 'phantom')) {
      const { minX, minY, maxX, maxY } = boundsOfMarks([mark]);
      expect(minX).toBeGreaterThan(20);
      expect(maxX).toBeLessThan(width - 10);
      expect(minY).toBeGreaterThan(10);
      expect(maxY).toBeLessThan(height - 10);
    }
    // The top is drawn as long as the scale says.
    const [paper, world] = scale.split(':').map(Number) as [number, number];
    expect(widthOf(scene, 'phantom')).toBeCloseTo((base.top.length * paper) / world, 6);
    expect(texts(scene).map(({ text }) => text)).toContain(scale);
  });

  test('is shared out or laid on its side where that makes it larger, and not where it does not', () => {
    const together: PlateWay = { plates: [[[front, left], [plan]]] };
    const apart: PlateWay = { plates: [[[front], [plan]], [[left]]] };
    const small = platesOf([together, apart], options);
    expect(small.map(({ scale }) => scale)).toEqual(['1:20', '1:20']);
    expect(small.map(({ scene }) => texts(scene).some(({ text }) => text === '1/2'))).toEqual([true, false]);
    expect(platesOf([together], options)[0]!.scale).toBe('1:50');
    const large = { ...options, page: { width: 420, height: 594 } };
    expect(platesOf([together, apart], large)).toHaveLength(1);
    const [lying] = platesOf([{ plates: [[[front]]], lying: true }], options);
    expect(lying!.scene.box).toEqual({ minX: 0, minY: 0, maxX: 297, maxY: 210 });
  });

  // ISO 5457, from memory: 20 mm at the left, 10 mm elsewhere; fields of 50 mm from the middles; A4 above and at the right alone.
  test('has the frame, the centring marks and the grid references of ISO 5457', () => {
    const gridOf = (width: number, height: number) => {
      const marks = sheetFrame({ width, height });
      const frame = boundsOfMarks([marks.find(({ role }) => role === 'border')!]);
      expect(frame).toEqual({ minX: 20, minY: 10, maxX: width - 10, maxY: height - 10 });
      const heavy = marks.flatMap((mark) =>
        mark.kind === 'path' && mark.role === 'border' && mark.edges.length === 1 ? mark.edges : [],
      );
      expect(heavy).toHaveLength(4);
      for (const { from, to } of heavy) {
        const upright = Math.abs(from.x - to.x) < 1e-9;
        expect(upright ? from.x : from.y).toBeCloseTo(upright ? width / 2 : height / 2, 9);
      }
      return marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
    };
    // As the standard's own table says of A4: 4 fields across and 6 down.
    expect(gridOf(210, 297).join(' ')).toBe('1 2 3 4 A B C D E F');
    // A3 has 8 by 6 on all four sides.
    const large = gridOf(420, 297);
    expect(large.filter((text) => text === '8')).toHaveLength(2);
    expect(large.filter((text) => text === 'F')).toHaveLength(2);
    expect(large).not.toContain('9');
    expect(large).not.toContain('G');
  });

  test('has the sign of first-angle projection where its views are laid out so', () => {
    const circles = (projected: boolean) => {
      const [plate] = platesOf([{ plates: [[[front]]] }], {
        ...options,
        title: { ...options.title, projected },
      });
      return plate!.scene.marks.flatMap((mark) =>
        mark.kind === 'path' && mark.edges.length === 1 && mark.edges[0]!.kind === 'arc' && mark.closed
          ? mark.edges
          : [],
      );
    };
    expect(circles(false)).toHaveLength(0);
    const rings = circles(true);
    expect(rings).toHaveLength(2);
    // The rings show the cone from its small end, at the left: they stand at its right.
    const cone = projectionSymbol({ x: 0, y: 0 }, 1).find(
      (mark) => mark.kind === 'path' && mark.edges.length === 4,
    )!;
    if (cone.kind !== 'path') throw new Error('the cone is drawn');
    const heights = new Map<number, number>();
    for (const { from } of cone.edges) heights.set(from.x, Math.max(heights.get(from.x) ?? 0, from.y));
    const [near, far] = [...heights].toSorted(([a], [b]) => a - b);
    expect(near![1]).toBeLessThan(far![1]);
    expect(far![0]).toBeLessThan(0);
  });

  test('sets views of one thing under and beside each other: front over plan, side at the height of the front', () => {
    const [plate] = platesOf([{ plates: [[[front, left], [plan]]] }], {
      ...options,
      page: { width: 420, height: 594 },
    });
    const boxes = plate!.scene.marks.flatMap((mark) => {
      if (mark.kind !== 'path' || mark.role !== 'phantom') return [];
      const points = mark.edges.map(({ from }) => from);
      const xs = points.map(({ x }) => x);
      const ys = points.map(({ y }) => y);
      return [{ left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) }];
    });
    const [first, side, above] = boxes as [(typeof boxes)[0], (typeof boxes)[0], (typeof boxes)[0]];
    expect(above.left).toBeCloseTo(first.left, 9);
    expect(above.right).toBeCloseTo(first.right, 9);
    expect(side.high).toBeCloseTo(first.high, 9);
    expect(side.left).toBeGreaterThan(first.right);
    expect(above.high).toBeLessThan(first.low);
  });

  test('has the fields that ISO 7200 asks of a title block (as reprinted), within its frame', () => {
    const [plate] = platesOf([{ plates: [[[pictorialOf(base.parts)]]] }], {
      ...options,
      title: { ...options.title, owner: 'The joinery' },
    });
    const said = texts(plate!.scene).map(({ text }) => text);
    for (const field of [
      'Title',
      'Document type',
      'Owner',
      'Identification number',
      'Date of issue',
      'Created by',
      'Approved by',
      'Sheet',
      'Rev.',
      'Language',
    ]) {
      expect(said).toContain(field);
    }
    for (const value of [
      'Reading room: long table',
      'General arrangement',
      'The joinery',
      '2026-11-25',
      '1/1',
      'B',
    ]) {
      expect(said).toContain(value);
    }
    const frame = plate!.scene.marks.filter((mark) => mark.kind === 'path' && mark.role === 'border').at(-1)!;
    if (frame.kind !== 'path') throw new Error('the frame is drawn');
    const xs = frame.edges.map(({ from }) => from.x);
    // 180 mm wide (ISO 7200, from memory).
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(180, 9);
    for (const text of texts(plate!.scene)) {
      const { minX, maxX, maxY } = uprightBounds(boxOfText(text));
      // Above it and beside it stand other things.
      if (maxY > Math.max(...frame.edges.map(({ from }) => from.y)) || minX > Math.max(...xs)) continue;
      expect(minX).toBeGreaterThanOrEqual(Math.min(...xs));
      expect(maxX).toBeLessThanOrEqual(Math.max(...xs));
    }
  });
});
