import { describe, expect, test } from 'vitest';
import type { Mark, Scene, TextMark } from '../../../src/drawing/api.ts';
import { boxOfText, uprightBounds } from '../../../src/drawing/layout/oriented-box.ts';
import { basePicture, pictorialOf } from '../../../src/drawing/title/base-pictures.ts';
import type { Picture } from '../../../src/drawing/title/picture.ts';
import { type PlateOptions, platesOf } from '../../../src/drawing/title/plate.ts';
import { standingOf } from '../../forms/standing-bases.ts';

const options: PlateOptions = {
  lengths: { unit: 'mm', decimals: 1 },
  width: 190,
  height: 250,
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
    [190, 250],
    [170, 240],
    [277, 180],
    [400, 277],
  ])('of %d × %d mm has a recommended scale, and everything on it', (width, height) => {
    const plates = platesOf([[[[front]]]], { ...options, width, height });
    expect(plates).toHaveLength(1);
    const [{ scene, scale }] = plates as [(typeof plates)[number]];
    expect(RECOMMENDED).toContain(scale);
    expect(scene.box.maxX - scene.box.minX).toBeLessThanOrEqual(width + 1e-6);
    expect(scene.box.maxY - scene.box.minY).toBeLessThanOrEqual(height + 1e-6);
    // The top is drawn as long as the scale says.
    const [paper, world] = scale.split(':').map(Number) as [number, number];
    expect(widthOf(scene, 'phantom')).toBeCloseTo((base.top.length * paper) / world, 6);
    expect(texts(scene).map(({ text }) => text)).toContain(scale);
  });

  test('is shared out where that makes it larger, and not where it does not', () => {
    const ways: readonly (readonly (readonly (readonly Picture[])[])[])[] = [
      [[[front, left], [plan]]],
      [[[front], [plan]], [[left]]],
    ];
    const small = platesOf(ways, options);
    expect(small.map(({ scale }) => scale)).toEqual(['1:20', '1:20']);
    expect(small.map(({ scene }) => texts(scene).some(({ text }) => text === '1/2'))).toEqual([true, false]);
    expect(platesOf(ways.slice(0, 1), options)[0]!.scale).toBe('1:50');
    expect(platesOf(ways, { ...options, width: 400, height: 270 })).toHaveLength(1);
  });

  test('sets views of one thing under and beside each other: front over plan, side at the height of the front', () => {
    const [plate] = platesOf([[[[front, left], [plan]]]], { ...options, width: 400, height: 277 });
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
    const [plate] = platesOf([[[[pictorialOf(base.parts)]]]], {
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
    const frame = plate!.scene.marks.find((mark) => mark.kind === 'path' && mark.role === 'border')!;
    if (frame.kind !== 'path') throw new Error('the frame is drawn');
    const xs = frame.edges.map(({ from }) => from.x);
    // 180 mm wide (ISO 7200, from memory).
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(180, 9);
    for (const text of texts(plate!.scene)) {
      const { minX, maxX, maxY } = uprightBounds(boxOfText(text));
      if (maxY > Math.max(...frame.edges.map(({ from }) => from.y))) continue;
      expect(minX).toBeGreaterThanOrEqual(Math.min(...xs));
      expect(maxX).toBeLessThanOrEqual(Math.max(...xs));
    }
  });
});
